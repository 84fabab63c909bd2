import type { RecordOf } from "../../../src/study/schema/records.ts";

export type Reading = RecordOf<"reading">;
type Result = Reading["result"];

/** A reading that is one typed number in the grid: how it is called, stored and read back. */
export interface ReadingColumn {
  kind: "turbidity" | "filtrate-tss" | "drained" | "cst" | "cake-ts" | "floc-grade";
  label: string;
  unit(series: RecordOf<"series">): string;
  /** whether ">x" and "<x" make sense here */
  censorable: boolean;
  value(result: Result): number | null;
  result(
    value: number,
    censored: "above" | "below" | null,
    series: RecordOf<"series">,
    before: Result | null,
  ): Result;
}

const plain = () => null;

/** The grid's reading columns, in the order a jar is read. A new plain reading is one entry here and one in the schema. */
export const readingColumns: ReadingColumn[] = [
  {
    kind: "turbidity",
    label: "turbidity",
    unit: (series) => series.turbidityUnit,
    censorable: true,
    value: (result) => (result.kind === "turbidity" ? result.value : plain()),
    result: (value, censored, _series, before) => ({
      kind: "turbidity",
      value,
      censored,
      dilution: before?.kind === "turbidity" ? before.dilution : 1,
    }),
  },
  {
    kind: "filtrate-tss",
    label: "filtrate TSS",
    unit: () => "mg/L",
    censorable: true,
    value: (result) => (result.kind === "filtrate-tss" ? result.mgPerL : plain()),
    result: (value, censored) => ({ kind: "filtrate-tss", mgPerL: value, censored }),
  },
  {
    kind: "drained",
    label: "drained",
    unit: (series) => `mL at ${series.protocol.drainS ?? "?"} s`,
    censorable: false,
    value: (result) => (result.kind === "drained" ? result.ml : plain()),
    result: (value, _censored, series, before) => ({
      kind: "drained",
      ml: value,
      atS: before?.kind === "drained" ? before.atS : (series.protocol.drainS ?? 10),
    }),
  },
  {
    kind: "cst",
    label: "CST",
    unit: () => "s",
    censorable: false,
    value: (result) => (result.kind === "cst" ? result.seconds : plain()),
    result: (value) => ({ kind: "cst", seconds: value }),
  },
  {
    kind: "cake-ts",
    label: "cake TS",
    unit: () => "%",
    censorable: false,
    value: (result) => (result.kind === "cake-ts" ? result.pct : plain()),
    result: (value) => ({ kind: "cake-ts", pct: value }),
  },
  {
    kind: "floc-grade",
    label: "floc",
    unit: () => "1 to 5",
    censorable: false,
    value: (result) => (result.kind === "floc-grade" ? result.grade : plain()),
    result: (value) => ({ kind: "floc-grade", grade: value }),
  },
];

/** Our own words for the floc grades. */
export const flocWords: Record<number, string> = {
  1: "no floc, cloudy",
  2: "pin floc, still cloudy",
  3: "small floc, hazy water",
  4: "clear water between firm floc",
  5: "large firm floc, clear at once",
};

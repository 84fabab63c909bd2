import { bad, good, type Outcome } from "../../outcome.ts";
import { parseReading, writeNumber, type DecimalMark, type TypedReading } from "../../units/number-entry.ts";
import type { SimpleCommand } from "../commands.ts";
import type { Reading } from "../derive/jars.ts";
import type { RecordOf } from "../schema/records.ts";

type Result = Reading["result"];
type Series = RecordOf<"series">;

/** One number of a reading as it is typed: which reading, which of its fields, and how it is called. */
export interface ReadingColumn {
  key: string;
  kind: Result["kind"];
  field: string;
  label: string;
  unit(series: Series): string;
  /** whether ">x" and "<x" make sense here */
  censorable: boolean;
  /** what the run mode asks in one line, and the standard behind it */
  ask: string;
  standard: string;
}

const fixed = (unit: string) => () => unit;

/** Every number of a reading that the grid or the run mode takes, in the order a jar is read. */
export const readingColumns: ReadingColumn[] = [
  {
    key: "floc-grade",
    kind: "floc-grade",
    field: "grade",
    label: "floc",
    unit: fixed("1 to 5"),
    censorable: false,
    ask: "Look at the floc",
    standard: "our own words, no standard",
  },
  {
    key: "drained",
    kind: "drained",
    field: "ml",
    label: "drained",
    unit: (series) => `mL at ${series.protocol.drainS ?? "?"} s`,
    censorable: false,
    ask: "Read the drained volume",
    standard: "EN 14701-4:2018",
  },
  {
    key: "turbidity",
    kind: "turbidity",
    field: "value",
    label: "turbidity",
    unit: (series) => series.turbidityUnit,
    censorable: true,
    ask: "Invert the vial and read the turbidity at a fixed 10 to 30 s",
    standard: "Standard Methods 2130 B; ISO 7027-1",
  },
  {
    key: "filtrate-tss",
    kind: "filtrate-tss",
    field: "mgPerL",
    label: "filtrate TSS",
    unit: fixed("mg/L"),
    censorable: true,
    ask: "Read the filtrate's suspended solids",
    standard: "Standard Methods 2540 D",
  },
  {
    key: "filter-tare",
    kind: "filtrate-tss-dish",
    field: "tareG",
    label: "empty filter",
    unit: fixed("g"),
    censorable: false,
    ask: "Weigh the empty filter",
    standard: "Standard Methods 2540 D",
  },
  {
    key: "filter-volume",
    kind: "filtrate-tss-dish",
    field: "volumeMl",
    label: "filtered",
    unit: fixed("mL"),
    censorable: false,
    ask: "Filter and note the volume, then put the filter in the oven",
    standard: "Standard Methods 2540 D",
  },
  {
    key: "filter-dry",
    kind: "filtrate-tss-dish",
    field: "dryG",
    label: "dried filter",
    unit: fixed("g"),
    censorable: false,
    ask: "Weigh the dried filter",
    standard: "Standard Methods 2540 D",
  },
  {
    key: "cst",
    kind: "cst",
    field: "seconds",
    label: "CST",
    unit: fixed("s"),
    censorable: false,
    ask: "Read the capillary suction time",
    standard: "Standard Methods 2710 G (number from memory); EN 14701-1",
  },
  {
    key: "filter-time",
    kind: "filter-time",
    field: "seconds",
    label: "time to filter",
    unit: fixed("s"),
    censorable: false,
    ask: "Time the filtrate to half the sample",
    standard: "Standard Methods 2710 H (conditions from memory)",
  },
  {
    key: "cake-ts",
    kind: "cake-ts",
    field: "pct",
    label: "cake TS",
    unit: fixed("%"),
    censorable: false,
    ask: "Read the cake's total solids",
    standard: "Standard Methods 2540 G",
  },
  {
    key: "cake-tare",
    kind: "cake-dish",
    field: "tareG",
    label: "cake dish, empty",
    unit: fixed("g"),
    censorable: false,
    ask: "Weigh the empty dish",
    standard: "Standard Methods 2540 G",
  },
  {
    key: "cake-wet",
    kind: "cake-dish",
    field: "wetG",
    label: "with wet cake",
    unit: fixed("g"),
    censorable: false,
    ask: "Press, weigh the dish with the wet cake, then put it in the oven",
    standard: "Standard Methods 2540 G",
  },
  {
    key: "cake-dry",
    kind: "cake-dish",
    field: "dryG",
    label: "cake dried",
    unit: fixed("g"),
    censorable: false,
    ask: "Weigh the dish with the dry cake",
    standard: "Standard Methods 2540 G; EN 15934 (number from memory)",
  },
];

/** The column of a reading's field, or undefined. */
export function readingColumn(kind: Result["kind"], field: string): ReadingColumn | undefined {
  return readingColumns.find((column) => column.kind === kind && column.field === field);
}

/** A reading's number in one of its fields; null where it is not there yet. */
export function fieldValue(result: Result, field: string): number | null {
  const value = (result as unknown as Record<string, unknown>)[field];
  return typeof value === "number" ? value : null;
}

/** The text of a reading's field as it would be typed. */
export function fieldText(result: Result, field: string, mark: DecimalMark): string {
  const value = fieldValue(result, field);
  if (value === null) return "";
  const censored = "censored" in result ? result.censored : null;
  return `${censored === "above" ? ">" : censored === "below" ? "<" : ""}${writeNumber(value, mark)}`;
}

/** Reads typed text for a column: a number, or where the instrument has an end also ">x" and "<x". */
export function parseReadingText(
  column: ReadingColumn,
  text: string,
  series: Series,
  mark: DecimalMark,
): Outcome<TypedReading | null> {
  if (text.trim() === "") return good(null);
  const parsed = parseReading(text, mark);
  if (!parsed.ok) return parsed;
  if (parsed.value.censored && !column.censorable)
    return bad(`${column.label} is read as a number, without > or <.`);
  const range = series.turbidityRange;
  if (column.kind === "turbidity" && range && !parsed.value.censored && parsed.value.value > range.high)
    return bad(`The instrument reads up to ${range.high}: enter >${range.high}, or dilute.`);
  return parsed;
}

function created(column: ReadingColumn, typed: TypedReading, series: Series): Outcome<Result> {
  const { value, censored } = typed;
  switch (column.kind) {
    case "turbidity":
      return good({ kind: "turbidity", value, censored, dilution: 1 });
    case "filtrate-tss":
      return good({ kind: "filtrate-tss", mgPerL: value, censored });
    case "drained":
      return series.protocol.drainS === null
        ? bad("Enter the series' drain time first: a drained volume counts at a time.")
        : good({ kind: "drained", ml: value, atS: series.protocol.drainS });
    case "cst":
      return good({ kind: "cst", seconds: value });
    case "filter-time":
      return good({ kind: "filter-time", seconds: value });
    case "cake-ts":
      return good({ kind: "cake-ts", pct: value });
    case "floc-grade":
      return good({ kind: "floc-grade", grade: value });
    case "cake-dish":
      return column.field === "tareG"
        ? good({ kind: "cake-dish", tareG: value, wetG: null, dryG: null })
        : bad("Weigh the empty dish first.");
    case "filtrate-tss-dish":
      return column.field === "volumeMl"
        ? bad("Weigh the empty filter first.")
        : column.field === "dryG"
          ? bad("Weigh the empty filter and filter a volume first.")
          : good({ kind: "filtrate-tss-dish", tareG: value, dryG: null, volumeMl: null });
    default:
      return bad(`${column.label} is not entered here.`);
  }
}

/**
 * The edits that make a typed value the reading of a jar: a new reading, a changed field, or, for nothing, the
 * reading taken back. `before` is the reading that stands in the cell.
 */
export function readingCommands(
  column: ReadingColumn,
  typed: TypedReading | null,
  context: { jarId: string; before: Reading | null; series: Series; newId(): string; now: string },
): Outcome<SimpleCommand[]> {
  const { before } = context;
  if (typed === null) {
    if (!before) return good([]);
    const emptied = { ...before.result, [column.field]: null } as Result;
    const several = before.result.kind === "cake-dish" || before.result.kind === "filtrate-tss-dish";
    return good([
      several && column.field !== "tareG"
        ? { do: "set", kind: "reading", id: before.id, fields: { result: emptied } }
        : { do: "remove", kind: "reading", id: before.id },
    ]);
  }
  if (before) {
    const result = {
      ...before.result,
      [column.field]: typed.value,
      ...(column.censorable ? { censored: typed.censored } : {}),
    };
    return good([{ do: "set", kind: "reading", id: before.id, fields: { result } }]);
  }
  const result = created(column, typed, context.series);
  if (!result.ok) return result;
  return good([
    {
      do: "add",
      kind: "reading",
      record: { id: context.newId(), jarId: context.jarId, takenAt: context.now, result: result.value },
    },
  ]);
}

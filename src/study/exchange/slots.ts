import { undilutedTurbidity } from "../../bench/measurements.ts";
import type { Field, Slot } from "../../exchange/columns.ts";
import type { OutCell } from "../../exchange/csv-out.ts";
import { suspendedSolidsMgPerL, totalSolidsPct } from "../../sample/solids.ts";
import { leftOutSchema } from "../schema/common.ts";
import type { RecordOf } from "../schema/records.ts";
import type { RowReader } from "./row-reader.ts";

export type Reading = RecordOf<"reading">;
type Result = Reading["result"];
type Series = RecordOf<"series">;
type LeftOut = Reading["leftOut"];

/** A reading as it comes from a row, before it belongs to a jar. */
export interface ReadResult {
  slot: Slot;
  result: Result;
  leftOut: LeftOut;
  note: string;
  /** which column each part of the result came from, so that a refused one can be named */
  from: Partial<Record<string, Field>>;
}

interface ReadValue {
  result: Result;
  from: Partial<Record<string, Field>>;
}

/** One thing read of a jar: which results it holds, how they are written, and how a row is read back into one. */
interface SlotSpec {
  slot: Slot;
  fields: Field[];
  holds(result: Result, series: Series): boolean;
  write(result: Result, series: Series): Partial<Record<Field, OutCell>>;
  read(row: RowReader, series: Series): ReadValue | null;
}

const bound = (value: number, censored: "above" | "below" | null): OutCell =>
  censored === null ? value : { bound: censored, value };

const reasons = leftOutSchema.shape.reason.options;
const agreement = 0.01;

// Masses are the reading; a result beside them is only held against what they make.
function agrees(row: RowReader, field: Field, made: number | null): void {
  const stated = row.reading(field);
  if (stated === null || made === null) return;
  if (Math.abs(stated.value - made) > agreement * Math.abs(made))
    row.fault(
      field,
      `the file says ${stated.value}, but the values beside it make ${made.toPrecision(4)}: correct one of them, or leave this column out.`,
    );
}

/** Several cells that only mean something together. */
function allOf<F extends Field>(row: RowReader, fields: F[], what: string): Record<F, number> | null {
  if (!fields.some((field) => row.filled(field))) return null;
  const before = row.faults.length;
  const values = {} as Record<F, number>;
  for (const field of fields) {
    const value = row.number(field);
    if (value !== null) values[field] = value;
    else if (row.faults.length === before) row.fault(field, `is empty, but ${what} needs it.`);
  }
  return row.faults.length === before ? values : null;
}

const specs: SlotSpec[] = [
  {
    slot: "turbidity",
    fields: ["turbidity_ntu", "turbidity_fnu", "turbidity_shown", "turbidity_dilution"],
    holds: (result) => result.kind === "turbidity",
    write: (result, series) => {
      if (result.kind !== "turbidity") return {};
      const { value, dilution, censored } = result;
      return {
        [series.turbidityUnit === "FNU" ? "turbidity_fnu" : "turbidity_ntu"]: bound(
          undilutedTurbidity(value, dilution),
          censored,
        ),
        ...(dilution === 1 ? {} : { turbidity_shown: bound(value, censored), turbidity_dilution: dilution }),
      };
    },
    read: (row, series) => {
      const own: Field = series.turbidityUnit === "FNU" ? "turbidity_fnu" : "turbidity_ntu";
      const other: Field = own === "turbidity_fnu" ? "turbidity_ntu" : "turbidity_fnu";
      if (row.filled(other)) {
        row.fault(
          other,
          `series ${series.label} reads turbidity in ${series.turbidityUnit}: the units differ.`,
        );
        return null;
      }
      const shown = row.reading("turbidity_shown");
      if (shown === null) {
        const plain = row.reading(own);
        if (row.filled("turbidity_dilution") && !row.filled("turbidity_shown"))
          row.fault("turbidity_dilution", "has no turbidity as shown (turbidity_shown) beside it.");
        return plain
          ? {
              result: { kind: "turbidity", ...plain, dilution: 1 },
              from: { value: own, dilution: "turbidity_dilution" },
            }
          : null;
      }
      const dilution = row.has("turbidity_dilution") ? row.number("turbidity_dilution") : 1;
      if (dilution === null) {
        if (!row.filled("turbidity_dilution"))
          row.fault("turbidity_dilution", "is empty: enter 1 where the sample was not diluted.");
        return null;
      }
      agrees(row, own, undilutedTurbidity(shown.value, dilution));
      return {
        result: { kind: "turbidity", ...shown, dilution },
        from: { value: "turbidity_shown", dilution: "turbidity_dilution" },
      };
    },
  },
  {
    slot: "filtrate_tss",
    fields: [
      "filtrate_tss_mg_per_l",
      "filtrate_dish_tare_g",
      "filtrate_dish_dry_g",
      "filtrate_dish_volume_ml",
    ],
    holds: (result) => result.kind === "filtrate-tss" || result.kind === "filtrate-tss-dish",
    write: (result) => {
      if (result.kind === "filtrate-tss")
        return { filtrate_tss_mg_per_l: bound(result.mgPerL, result.censored) };
      if (result.kind !== "filtrate-tss-dish") return {};
      const made = suspendedSolidsMgPerL(result.tareG, result.dryG, result.volumeMl);
      return {
        filtrate_tss_mg_per_l: made.ok ? made.value : null,
        filtrate_dish_tare_g: result.tareG,
        filtrate_dish_dry_g: result.dryG,
        filtrate_dish_volume_ml: result.volumeMl,
      };
    },
    read: (row) => {
      const faults = row.faults.length;
      const dish = allOf(
        row,
        ["filtrate_dish_tare_g", "filtrate_dish_dry_g", "filtrate_dish_volume_ml"],
        "a filter's solids",
      );
      if (row.faults.length > faults) return null;
      if (dish) {
        const masses = {
          tareG: dish.filtrate_dish_tare_g,
          dryG: dish.filtrate_dish_dry_g,
          volumeMl: dish.filtrate_dish_volume_ml,
        };
        const made = suspendedSolidsMgPerL(masses.tareG, masses.dryG, masses.volumeMl);
        agrees(row, "filtrate_tss_mg_per_l", made.ok ? made.value : null);
        return {
          result: { kind: "filtrate-tss-dish", ...masses },
          from: {
            tareG: "filtrate_dish_tare_g",
            dryG: "filtrate_dish_dry_g",
            volumeMl: "filtrate_dish_volume_ml",
          },
        };
      }
      const read = row.reading("filtrate_tss_mg_per_l");
      return (
        read && {
          result: { kind: "filtrate-tss", mgPerL: read.value, censored: read.censored },
          from: { mgPerL: "filtrate_tss_mg_per_l" },
        }
      );
    },
  },
  {
    slot: "drained",
    fields: ["drained_ml", "drained_at_s"],
    // The volume at the series' own time is the one the curve counts; the others draw the drainage in time.
    holds: (result, { protocol }) =>
      result.kind === "drained" && (protocol.drainS === null || result.atS === protocol.drainS),
    write: (result) => (result.kind === "drained" ? { drained_ml: result.ml, drained_at_s: result.atS } : {}),
    read: (row, series) => {
      const ml = row.number("drained_ml");
      if (ml === null) return null;
      const atS = row.filled("drained_at_s") ? row.number("drained_at_s") : series.protocol.drainS;
      if (atS === null) {
        if (!row.filled("drained_at_s"))
          row.fault(
            "drained_ml",
            "needs the time at which it was read: add a column drained_at_s, or enter the series' drain time on the Bench.",
          );
        return null;
      }
      return { result: { kind: "drained", ml, atS }, from: { ml: "drained_ml", atS: "drained_at_s" } };
    },
  },
  {
    slot: "drainage",
    fields: ["drainage_ml", "drainage_at_s"],
    holds: (result, { protocol }) =>
      result.kind === "drained" && protocol.drainS !== null && result.atS !== protocol.drainS,
    write: (result) =>
      result.kind === "drained" ? { drainage_ml: result.ml, drainage_at_s: result.atS } : {},
    read: (row) => {
      const both = allOf(row, ["drainage_ml", "drainage_at_s"], "a drained volume");
      return (
        both && {
          result: { kind: "drained", ml: both.drainage_ml, atS: both.drainage_at_s },
          from: { ml: "drainage_ml", atS: "drainage_at_s" },
        }
      );
    },
  },
  {
    slot: "cst",
    fields: ["cst_s"],
    holds: (result) => result.kind === "cst",
    write: (result) => (result.kind === "cst" ? { cst_s: result.seconds } : {}),
    read: (row) => {
      const seconds = row.number("cst_s");
      return seconds === null ? null : { result: { kind: "cst", seconds }, from: { seconds: "cst_s" } };
    },
  },
  {
    slot: "cake",
    fields: ["cake_ts_pct", "cake_dish_tare_g", "cake_dish_wet_g", "cake_dish_dry_g"],
    holds: (result) => result.kind === "cake-ts" || result.kind === "cake-dish",
    write: (result) => {
      if (result.kind === "cake-ts") return { cake_ts_pct: result.pct };
      if (result.kind !== "cake-dish") return {};
      const made = totalSolidsPct({ ...result, ashG: null });
      return {
        cake_ts_pct: made.ok ? made.value : null,
        cake_dish_tare_g: result.tareG,
        cake_dish_wet_g: result.wetG,
        cake_dish_dry_g: result.dryG,
      };
    },
    read: (row) => {
      const faults = row.faults.length;
      const dish = allOf(row, ["cake_dish_tare_g", "cake_dish_wet_g", "cake_dish_dry_g"], "a cake dish");
      if (row.faults.length > faults) return null;
      if (dish) {
        const masses = {
          tareG: dish.cake_dish_tare_g,
          wetG: dish.cake_dish_wet_g,
          dryG: dish.cake_dish_dry_g,
        };
        const made = totalSolidsPct({ ...masses, ashG: null });
        agrees(row, "cake_ts_pct", made.ok ? made.value : null);
        return {
          result: { kind: "cake-dish", ...masses },
          from: { tareG: "cake_dish_tare_g", wetG: "cake_dish_wet_g", dryG: "cake_dish_dry_g" },
        };
      }
      const pct = row.number("cake_ts_pct");
      return pct === null ? null : { result: { kind: "cake-ts", pct }, from: { pct: "cake_ts_pct" } };
    },
  },
  {
    slot: "capture",
    fields: ["capture_pct"],
    holds: (result) => result.kind === "capture",
    write: (result) => (result.kind === "capture" ? { capture_pct: result.pct } : {}),
    read: (row) => {
      const pct = row.number("capture_pct");
      return pct === null ? null : { result: { kind: "capture", pct }, from: { pct: "capture_pct" } };
    },
  },
  {
    slot: "floc",
    fields: ["floc_grade"],
    holds: (result) => result.kind === "floc-grade",
    write: (result) => (result.kind === "floc-grade" ? { floc_grade: result.grade } : {}),
    read: (row) => {
      const grade = row.number("floc_grade");
      return grade === null ? null : { result: { kind: "floc-grade", grade }, from: { grade: "floc_grade" } };
    },
  },
];

/** Why something is left out, from its two columns; an unknown reason is a fault that lists the known ones. */
export function readLeftOut(row: RowReader, reason: Field, note: Field): LeftOut {
  const given = row.label(reason).toLowerCase();
  if (given === "") {
    if (row.filled(note)) row.fault(note, `needs a reason in the column beside it: ${reasons.join(", ")}.`);
    return null;
  }
  const known = reasons.find((one, index) => one === given || String(index + 1) === given);
  if (known) return { reason: known, note: row.text(note) };
  row.fault(reason, `"${given.slice(0, 40)}" is not a reason; there are: ${reasons.join(", ")}.`);
  return null;
}

/** Everything that was read of a jar in one row. */
export function readSlots(row: RowReader, series: Series): ReadResult[] {
  const found: ReadResult[] = [];
  for (const { slot, fields, read } of specs) {
    const before = row.faults.length;
    const answer = read(row, series);
    const leftOut = readLeftOut(row, `${slot}_left_out`, `${slot}_left_out_note`);
    const note = row.text(`${slot}_note`);
    if (answer) found.push({ slot, ...answer, leftOut, note });
    else if (row.faults.length === before && (leftOut !== null || note !== ""))
      row.fault(
        leftOut !== null ? `${slot}_left_out` : `${slot}_note`,
        `has no reading beside it (${fields[0]}).`,
      );
  }
  return found;
}

/** The slot a reading is written to, in a series. */
export function slotOf(result: Result, series: Series): Slot {
  return specs.find(({ holds }) => holds(result, series))!.slot;
}

/** A reading as cells of a row. */
export function writeSlot(reading: Reading, series: Series): Partial<Record<Field, OutCell>> {
  const { slot, write } = specs.find(({ holds }) => holds(reading.result, series))!;
  return {
    ...write(reading.result, series),
    [`${slot}_left_out`]: reading.leftOut?.reason ?? null,
    [`${slot}_left_out_note`]: reading.leftOut?.note ?? null,
    [`${slot}_note`]: reading.note,
  };
}

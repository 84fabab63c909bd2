import type { RowReader } from "../row-reader.ts";
import { parseNumber } from "../../../units/number-entry.ts";
import type { Field } from "../../../exchange/columns.ts";
import { filtrationOf } from "../../derive/jars.ts";
import { agrees, group, plainSlot, type SlotSpec } from "./slot.ts";
import { importWords } from "../../../words/imports.ts";

/** How the water leaves: drained volumes, suction time, filtering time, specific resistance. */
export const waterSlots: SlotSpec[] = [
  {
    slot: "drained",
    kinds: ["drained"],
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
        if (!row.filled("drained_at_s")) row.fault("drained_ml", importWords.drainTime);
        return null;
      }
      return { result: { kind: "drained", ml, atS }, from: { ml: "drained_ml", atS: "drained_at_s" } };
    },
  },
  {
    slot: "drainage",
    kinds: ["drained"],
    fields: ["drainage_ml", "drainage_at_s"],
    holds: (result, { protocol }) =>
      result.kind === "drained" && protocol.drainS !== null && result.atS !== protocol.drainS,
    write: (result) =>
      result.kind === "drained" ? { drainage_ml: result.ml, drainage_at_s: result.atS } : {},
    read: (row) => {
      const both = group(row, ["drainage_ml", "drainage_at_s"], [], "drained");
      return (
        both && {
          result: { kind: "drained", ml: both.drainage_ml, atS: both.drainage_at_s },
          from: { ml: "drainage_ml", atS: "drainage_at_s" },
        }
      );
    },
  },
  plainSlot("cst", "cst", "seconds", "cst_s"),
  plainSlot("filter_time", "filter-time", "seconds", "filter_time_s"),
  {
    slot: "srf",
    kinds: ["srf"],
    fields: [
      "srf_tm_per_kg",
      "srf_volumes_ml",
      "srf_times_s",
      "srf_first_used",
      "srf_last_used",
      "srf_diameter_mm",
      "srf_pressure_kpa",
      "srf_temperature_c",
      "srf_cake_kg_per_m3",
    ],
    write: (result) => {
      if (result.kind !== "srf") return {};
      const made = filtrationOf(result);
      return {
        srf_tm_per_kg: made.ok ? made.value.srfMPerKg / 1e12 : null,
        srf_volumes_ml: result.points.map(({ volumeMl }) => volumeMl).join(" "),
        srf_times_s: result.points.map(({ seconds }) => seconds).join(" "),
        srf_first_used: result.firstUsed,
        srf_last_used: result.lastUsed,
        srf_diameter_mm: result.diameterMm,
        srf_pressure_kpa: result.pressureKPa,
        srf_temperature_c: result.temperatureC,
        srf_cake_kg_per_m3: result.cakeKgPerM3,
      };
    },
    read: (row) => {
      const volumes = list(row, "srf_volumes_ml");
      const times = list(row, "srf_times_s");
      const before = row.faults.length;
      const rest = group(
        row,
        [
          "srf_first_used",
          "srf_last_used",
          "srf_diameter_mm",
          "srf_pressure_kpa",
          "srf_temperature_c",
          "srf_cake_kg_per_m3",
        ],
        [],
        "resistance",
      );
      if (row.faults.length > before) return null;
      if (!volumes || !times || !rest) {
        if (volumes || times || rest || row.filled("srf_tm_per_kg"))
          row.fault(
            row.has("srf_tm_per_kg") ? "srf_tm_per_kg" : "srf_volumes_ml",
            importWords.filtrationParts,
          );
        return null;
      }
      if (volumes.length !== times.length) {
        row.fault("srf_times_s", importWords.timesVolumes(times.length, volumes.length));
        return null;
      }
      const result = {
        kind: "srf" as const,
        points: volumes.map((volumeMl, index) => ({ volumeMl, seconds: times[index]! })),
        firstUsed: rest.srf_first_used,
        lastUsed: rest.srf_last_used,
        diameterMm: rest.srf_diameter_mm,
        pressureKPa: rest.srf_pressure_kpa,
        temperatureC: rest.srf_temperature_c,
        cakeKgPerM3: rest.srf_cake_kg_per_m3,
      };
      const made = filtrationOf(result);
      agrees(row, "srf_tm_per_kg", made.ok ? made.value.srfMPerKg / 1e12 : null);
      return {
        result,
        from: {
          points: "srf_volumes_ml",
          firstUsed: "srf_first_used",
          lastUsed: "srf_last_used",
          diameterMm: "srf_diameter_mm",
          pressureKPa: "srf_pressure_kpa",
          temperatureC: "srf_temperature_c",
          cakeKgPerM3: "srf_cake_kg_per_m3",
        },
      };
    },
  },
];

/** Numbers in one cell, apart by blanks: our files write them with a point whatever the mark of the rest. */
function list(row: RowReader, field: Field): number[] | null {
  const text = row.label(field);
  if (text === "") return null;
  const values: number[] = [];
  for (const part of text.split(/\s+/)) {
    const point = parseNumber(part, ".");
    const read = point.ok ? point : parseNumber(part, ",");
    if (!read.ok) {
      row.fault(field, read.message);
      return null;
    }
    values.push(read.value);
  }
  return values;
}

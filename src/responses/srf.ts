import { z } from "zod";
import { filtrationResistance, type FiltrationResistance } from "../bench/measurements.ts";
import { waterViscosityMPaS } from "../bench/water.ts";
import type { Outcome } from "../outcome.ts";
import { parseNumber } from "../units/number-entry.ts";
import { between, positive } from "../units/number-schema.ts";
import { agrees, group } from "./file-cells.ts";
import { fileSlot, kind, response, type FileRow } from "./response.ts";
import { area } from "../words/language.ts";
import { schemaWords } from "../words/schema.ts";

const unit = "Tm/kg";
const words = area("responseSrf", {
  label: "SRF",
  head: "filtration, SRF in Tm/kg",
  onPaper: (
    volumes: number,
    firstUsed: number,
    lastUsed: number,
    kPa: string,
    celsius: string,
    made: string | null,
  ) =>
    `${volumes} volumes, ${firstUsed} to ${lastUsed} used, ${kPa} kPa, ${celsius} °C${made === null ? ": no straight part" : ` = ${made}`}`,
  onScreen: (volumes: number, made: string | null) =>
    `filtration, ${volumes} volumes${made === null ? "" : `: ${made} Tm/kg`}`,
  slot: "specific resistance",
  group: "a specific resistance",
  needsPoints:
    "a specific resistance is kept with its volumes and times (srf_volumes_ml, srf_times_s and the columns that go with them): add them, or leave this column out.",
  unlikeLists: (times: number, volumes: number) => `has ${times} times for ${volumes} volumes.`,
  fields: {
    srf_tm_per_kg: "specific resistance, Tm/kg",
    srf_volumes_ml: "specific resistance: volumes, mL",
    srf_times_s: "specific resistance: times, s",
    srf_first_used: "specific resistance: first point used",
    srf_last_used: "specific resistance: last point used",
    srf_diameter_mm: "specific resistance: filter diameter, mm",
    srf_pressure_kpa: "specific resistance: pressure, kPa",
    srf_temperature_c: "specific resistance: temperature, °C",
    srf_cake_kg_per_m3: "specific resistance: dry cake per filtrate, kg/m³",
  },
});
export type SrfWords = typeof words;

const schema = z.strictObject({
  kind: z.literal("srf"),
  points: z
    .array(z.strictObject({ volumeMl: positive(100_000), seconds: positive(1e6) }))
    .min(3, { error: () => schemaWords.fewVolumes })
    .max(60),
  /** the straight part: first and last point used, counted from 1 */
  firstUsed: z.int().min(1).max(60),
  lastUsed: z.int().min(1).max(60),
  diameterMm: positive(1000),
  pressureKPa: positive(10_000),
  temperatureC: between(0, 60),
  /** dry cake for each volume of filtrate */
  cakeKgPerM3: positive(1000),
});
export type Filtration = z.output<typeof schema>;

/** Specific resistance from a filtration reading's straight part, with water's viscosity at its temperature. */
export function filtrationOf(result: Filtration): Outcome<FiltrationResistance> {
  return filtrationResistance(result.points.slice(result.firstUsed - 1, result.lastUsed), {
    diameterMm: result.diameterMm,
    pressureKPa: result.pressureKPa,
    viscosityMPaS: waterViscosityMPaS(result.temperatureC),
    cakeKgPerM3: result.cakeKgPerM3,
  });
}

function madeTmPerKg(result: Filtration): number | null {
  const made = filtrationOf(result);
  return made.ok ? made.value.srfMPerKg / 1e12 : null;
}

/** Numbers in one cell, apart by blanks: our files write them with a point whatever the mark of the rest. */
function list<F extends string>(row: FileRow<F>, field: F): number[] | null {
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

/** Specific resistance to filtration, kept with the volumes and times it comes from. */
export const srf = response({
  name: "srf_tm_per_kg",
  get label() {
    return words.label;
  },
  unit,
  taken: 9,
  fitted: { scale: "log", wanted: "minimum", rereadBandPct: 20 },
  group: "drainage-and-cake",
  kinds: [
    kind({
      schema,
      columns: [],
      value: madeTmPerKg,
      head: () => words.head,
      onPaper: (result, { entered, number }, given) =>
        words.onPaper(
          result.points.length,
          result.firstUsed,
          result.lastUsed,
          entered(result.pressureKPa),
          entered(result.temperatureC),
          given === null ? null : number(given),
        ),
      onScreen: ({ points }, { plain }, given) =>
        words.onScreen(points.length, given === null ? null : plain(given)),
    }),
  ],
  files: [
    fileSlot({
      slot: "srf",
      get words() {
        return words.slot;
      },
      get fields() {
        return words.fields;
      },
      texts: ["srf_volumes_ml", "srf_times_s"],
      kinds: ["srf"],
      write: (result: Filtration) => ({
        srf_tm_per_kg: madeTmPerKg(result),
        srf_volumes_ml: result.points.map(({ volumeMl }) => volumeMl).join(" "),
        srf_times_s: result.points.map(({ seconds }) => seconds).join(" "),
        srf_first_used: result.firstUsed,
        srf_last_used: result.lastUsed,
        srf_diameter_mm: result.diameterMm,
        srf_pressure_kpa: result.pressureKPa,
        srf_temperature_c: result.temperatureC,
        srf_cake_kg_per_m3: result.cakeKgPerM3,
      }),
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
          words.group,
        );
        if (row.faults.length > before) return null;
        if (!volumes || !times || !rest) {
          if (volumes || times || rest || row.filled("srf_tm_per_kg"))
            row.fault(row.has("srf_tm_per_kg") ? "srf_tm_per_kg" : "srf_volumes_ml", words.needsPoints);
          return null;
        }
        if (volumes.length !== times.length) {
          row.fault("srf_times_s", words.unlikeLists(times.length, volumes.length));
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
        agrees(row, "srf_tm_per_kg", madeTmPerKg(result));
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
    }),
  ],
});

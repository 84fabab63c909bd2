import { doseHead, fields, slots, type Field } from "../../exchange/columns.ts";
import type { FileCell } from "../../responses/response.ts";
import type { ExportTold } from "../../exchange/told.ts";
import { seriesChain, type JarChain, type SeriesChain } from "../derive/jars.ts";
import type { StudyState } from "../schema/records.ts";
import type { RecordOf } from "../schema/records.ts";
import { slotOf, writeSlot } from "./slots.ts";

/** A table to write: heads that carry the unit, and cells. */
export interface OutTable {
  heads: string[];
  rows: FileCell[][];
}

type Cells = Record<string, FileCell>;

const always = new Set(["series", "jar", "order", "role", "syringe_a_ml", "dose_a_kg_per_t"]);

/**
 * The jars of a study, or of one series, with all their readings as one flat table: a row a reading round of a jar, so
 * that what was read again stands on a further row of the same jar. Columns that nothing fills are left away. Our own
 * import reads it back without loss; the doses are computed from the volumes and only there to be read.
 */
export function flatTable(
  state: StudyState,
  seriesId: string | null,
  told: ExportTold = () => undefined,
): OutTable {
  const wanted = (id: string) => seriesId === null || id === seriesId;
  const total = Object.values(state.jar).filter((jar) => wanted(jar.seriesId)).length;
  let done = 0;
  const rows: Cells[] = Object.keys(state.series)
    .filter(wanted)
    .sort()
    .flatMap((id) => {
      const chain = seriesChain(state, id);
      const made = chain.jars.flatMap((jar) => jarRows(state, chain, jar));
      done += chain.jars.length;
      told("jars", done, total);
      return made;
    });
  const filled = (head: string) =>
    rows.some((row) => row[head] !== undefined && row[head] !== null && row[head] !== "");
  // A computed dose of 0 stands beside its volume, even an empty one: alone it would be read as a volume of 0.
  const heads = allHeads().filter(
    (head) => always.has(head) || filled(head) || (head === "syringe_b_ml" && filled("dose_b_kg_per_t")),
  );
  return { heads, rows: rows.map((row) => heads.map((head) => row[head] ?? null)) };
}

function allHeads(): string[] {
  const doses = (["a", "b"] as const).flatMap((polymer) => [
    doseHead(polymer, "ml-solution", "active"),
    doseHead(polymer, "kg-per-t", "active"),
  ]);
  const at = fields.indexOf("blank_water_ml");
  return [...fields.slice(0, at), ...doses, ...fields.slice(at)];
}

function jarRows(state: StudyState, chain: SeriesChain, { jar, doseA, doseB, readings }: JarChain): Cells[] {
  const { series } = chain;
  const twoPolymers = chain.stockB !== null || jar.syringeBMl !== null;
  const own: Cells = {
    series: series.label,
    sample: state.sample[series.sampleId]?.label ?? null,
    stock_a: chain.stockA?.stock.label ?? null,
    stock_b: chain.stockB?.stock.label ?? null,
    jar: jar.label,
    order: jar.order,
    role: jar.role,
    block: jar.block,
    planned_dose_a_kg_per_t: jar.plannedDoseAKgPerT,
    planned_dose_b_kg_per_t: jar.plannedDoseBKgPerT,
    syringe_a_ml: jar.syringeAMl,
    dose_a_kg_per_t: doseA.value,
    syringe_b_ml: jar.syringeBMl,
    dose_b_kg_per_t: twoPolymers ? doseB.value : null,
    blank_water_ml: jar.blankWaterMl,
    sample_volume_ml: jar.sampleVolumeMl ?? series.sampleVolumeMl,
    mixed_at: jar.mixedAt,
    mixed_fast_rpm: jar.asMixed?.fastRpm ?? null,
    mixed_fast_s: jar.asMixed?.fastS ?? null,
    mixed_between_s: jar.asMixed?.betweenS ?? null,
    mixed_slow_rpm: jar.asMixed?.slowRpm ?? null,
    mixed_slow_s: jar.asMixed?.slowS ?? null,
    mixed_pours: jar.asMixed?.pours ?? null,
    left_out: jar.leftOut?.reason ?? null,
    left_out_note: jar.leftOut?.note ?? null,
    note: jar.note,
  };
  const bySlot = new Map<string, RecordOf<"reading">[]>();
  for (const reading of readings) {
    const slot = slotOf(reading.result, series);
    bySlot.set(slot, [...(bySlot.get(slot) ?? []), reading]);
  }
  const rounds = Math.max(1, ...[...bySlot.values()].map((list) => list.length));
  return Array.from({ length: rounds }, (_, round) => {
    const cells: Cells = { ...own };
    for (const slot of slots) {
      const reading = bySlot.get(slot)?.[round];
      if (reading)
        Object.assign(cells, writeSlot(reading, series) satisfies Partial<Record<Field, FileCell>>);
    }
    return cells;
  });
}

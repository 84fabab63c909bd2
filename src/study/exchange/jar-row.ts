import type { ChosenColumns, Field } from "../../exchange/columns.ts";
import { describeIssue, refusedValue } from "../issue-words.ts";
import { brokenInvariant } from "../invariants.ts";
import { jarSchema, readingSchema } from "../schema/bench.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { readDose, type JarDose, type MissingBasis } from "./jar-doses.ts";
import { clip, type RowReader } from "./row-reader.ts";
import type { SeriesTarget } from "./series-targets.ts";
import { readLeftOut, readMoment, readSlots, type ReadResult, type JarSlot } from "./slots.ts";
import { importWords } from "../../words/imports.ts";
import { kindWords } from "../../words/records.ts";

/** One row, read: the jar it names and what was read of it. */
export interface JarRow {
  line: number;
  target: SeriesTarget;
  label: string;
  doseA: JarDose;
  doseB: JarDose;
  /** its id and, where the file gave none, its place in the running order are still to be set */
  record: RecordOf<"jar">;
  hasOrder: boolean;
  readings: ReadResult[];
  /** whether the file has a column of doses, so that a row can make a jar */
  canMake: boolean;
  /** dose columns that are empty in this row: a new jar needs them, a re-read keeps its jar's */
  emptyDoses: number[];
  /** the row that names the same jar first, where this one is a re-read */
  first: JarRow | null;
  /** the jar of the study that this row reads again */
  existing: RecordOf<"jar"> | null;
}

const roles = jarSchema.shape.role.unwrap().options;
const anId = "row";

/** Reads one row. Faults are noted on the reader; null where the row makes no jar. */
export function readJarRow(
  state: StudyState,
  row: RowReader,
  columns: ChosenColumns,
  target: SeriesTarget,
  specs: JarSlot[],
  missing: (fault: MissingBasis) => void,
): JarRow | null {
  const { series } = target;
  linksAgree(row, target);
  const ownVolumeMl = row.has("sample_volume_ml") ? row.number("sample_volume_ml") : null;
  const volumeMl = ownVolumeMl ?? series.sampleVolumeMl;
  const doseA = readDose(row, "a", columns, target, volumeMl, missing);
  const doseB = readDose(row, "b", columns, target, volumeMl, missing);
  const label = row.has("jar") ? row.label("jar") : nextName(target);
  if (label === "") row.fault("jar", importWords.nameJar);
  const role = readRole(row, doseA, doseB);
  const order = row.filled("order") ? row.number("order") : null;
  const record = {
    seriesId: series.id,
    label,
    order: order ?? 1,
    role,
    plannedDoseAKgPerT: doseA.plannedKgPerT,
    plannedDoseBKgPerT: doseB.plannedKgPerT,
    syringeAMl: doseA.syringeMl,
    syringeBMl: doseB.syringeMl,
    blankWaterMl: row.has("blank_water_ml") ? row.number("blank_water_ml") : null,
    sampleVolumeMl: ownVolumeMl === series.sampleVolumeMl ? null : ownVolumeMl,
    block: row.label("block"),
    mixedAt: readMoment(row, "mixed_at"),
    asMixed: readAsMixed(row),
    leftOut: readLeftOut(row, "left_out", "left_out_note"),
    note: row.text("note"),
  };
  const readings = readSlots(row, series, specs);
  if (row.faults.length > 0) return null;
  const parsed = jarSchema.safeParse({ ...record, id: anId });
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const [top, part] = issue?.path ?? [];
    const mixed = top === "asMixed" ? mixedFields.find(([name]) => name === part) : undefined;
    const field = mixed?.[1] ?? jarFields[String(top)] ?? "jar";
    const column = doseColumn(field, columns);
    const given = mixed ? record.asMixed?.[mixed[0]] : record[String(top) as keyof typeof record];
    row.fault(
      column,
      typeof given === "number" || typeof given === "string"
        ? refusedValue(clip(String(given)), issue)
        : describeIssue(parsed.error, kindWords.jar.one, record),
    );
    return null;
  }
  const broken = brokenInvariant(
    { ...state, series: { [series.id]: series }, jar: { [anId]: parsed.data } },
    "jar",
    anId,
  );
  if (broken) row.fault(columns.doses[0]?.column ?? "jar", broken);
  for (const reading of readings) checkReading(state, row, reading);
  if (row.faults.length > 0) return null;
  return {
    line: row.line,
    target,
    label: parsed.data.label,
    doseA,
    doseB,
    record: parsed.data,
    hasOrder: order !== null,
    readings,
    canMake:
      columns.doses.length > 0 || row.has("planned_dose_a_kg_per_t") || row.has("planned_dose_b_kg_per_t"),
    emptyDoses: row.filled("role") ? [] : emptyDoses(row, columns),
    first: null,
    existing: null,
  };
}

// A polymer given as volume and as dose needs only one of them. A file that says the jar's role is our own, and may
// hold a jar that is not dosed yet.
function emptyDoses(row: RowReader, columns: ChosenColumns): number[] {
  return (["a", "b"] as const).flatMap((polymer) => {
    const own = columns.doses.filter((dose) => dose.polymer === polymer);
    return own.length > 0 && own.every(({ column }) => row.isEmpty(column)) ? [own[0]!.column] : [];
  });
}

const jarFields: Record<string, Field | "syringe_a" | "syringe_b"> = {
  label: "jar",
  order: "order",
  role: "role",
  plannedDoseAKgPerT: "planned_dose_a_kg_per_t",
  plannedDoseBKgPerT: "planned_dose_b_kg_per_t",
  syringeAMl: "syringe_a",
  syringeBMl: "syringe_b",
  blankWaterMl: "blank_water_ml",
  sampleVolumeMl: "sample_volume_ml",
  block: "block",
  mixedAt: "mixed_at",
  asMixed: "mixed_fast_rpm",
  leftOut: "left_out",
  note: "note",
};

function doseColumn(field: Field | "syringe_a" | "syringe_b", columns: ChosenColumns): number | Field {
  const polymer = /_([ab])(_|$)/.exec(field)?.[1];
  const dose = columns.doses.find((one) => one.polymer === polymer);
  if (field === "syringe_a" || field === "syringe_b") return dose?.column ?? "jar";
  if (columns.fields[field] === undefined && dose) return dose.column;
  return field;
}

/** A new series is set up by these columns; in one that is there they must say what it says. */
function linksAgree(row: RowReader, target: SeriesTarget): void {
  const { series, sampleLabel, stockA, stockB } = target;
  const differs = (given: string, label: string | null) =>
    given !== "" && given.toLowerCase() !== (label ?? "").toLowerCase();
  const sample = row.label("sample");
  if (differs(sample, sampleLabel))
    row.fault("sample", importWords.linkSample(series.label, sampleLabel, sample.slice(0, 60)));
  for (const [field, letter, stock] of [
    ["stock_a", "A", stockA],
    ["stock_b", "B", stockB],
  ] as const) {
    const given = row.label(field);
    const label = stock?.stock.label ?? null;
    if (differs(given, label))
      row.fault(
        field,
        label === null
          ? importWords.linkNoStock(series.label, letter, given.slice(0, 60))
          : importWords.linkStock(series.label, label, letter, given.slice(0, 60)),
      );
  }
}

function nextName(target: SeriesTarget): string {
  do target.lastNumber += 1;
  while (target.jarsByName.has(String(target.lastNumber)));
  return String(target.lastNumber);
}

const mixedFields: [keyof NonNullable<RecordOf<"jar">["asMixed"]>, Field][] = [
  ["fastRpm", "mixed_fast_rpm"],
  ["fastS", "mixed_fast_s"],
  ["betweenS", "mixed_between_s"],
  ["slowRpm", "mixed_slow_rpm"],
  ["slowS", "mixed_slow_s"],
  ["pours", "mixed_pours"],
];

/** How the jar was mixed, where the row says any of it. */
function readAsMixed(row: RowReader): Record<string, number | null> | null {
  if (!mixedFields.some(([, field]) => row.filled(field))) return null;
  return Object.fromEntries(mixedFields.map(([part, field]) => [part, row.number(field)]));
}

function readRole(row: RowReader, doseA: JarDose, doseB: JarDose): RecordOf<"jar">["role"] {
  const given = row.label("role").toLowerCase();
  if (given === "") {
    const doses = [doseA.doseKgPerT, doseB.doseKgPerT].filter((dose) => dose !== null);
    return doses.length > 0 && doses.every((dose) => dose === 0) ? "no-polymer" : "dose";
  }
  const known = roles.find((role) => role === given);
  if (known) return known;
  row.fault("role", importWords.notRole(given.slice(0, 40), roles.join(", ")));
  return "dose";
}

function checkReading(state: StudyState, row: RowReader, reading: ReadResult): void {
  const { result, leftOut, note, takenAt, from, slot } = reading;
  const record = { id: anId, jarId: anId, result, leftOut, note, takenAt };
  const parsed = readingSchema.safeParse(record);
  if (!parsed.success) {
    const [issue] = parsed.error.issues;
    const [top, part] = issue?.path ?? [];
    if (top === "result") {
      const value = (result as Record<string, unknown>)[String(part)];
      row.fault(from[String(part)] ?? Object.values(from)[0]!, refusedValue(clip(String(value)), issue));
    } else
      row.fault(
        top === "leftOut" ? `${slot}_left_out_note` : `${slot}_note`,
        describeIssue(parsed.error, kindWords.reading.one, record),
      );
    return;
  }
  const broken = brokenInvariant({ ...state, reading: { [anId]: parsed.data } }, "reading", anId);
  if (broken) row.fault(Object.values(from)[0]!, broken);
}

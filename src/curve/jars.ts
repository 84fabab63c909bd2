import { bad, good, type Outcome } from "../outcome.ts";
import { offScale, onScale } from "./problem.ts";
import type { Scale } from "./types.ts";
import { jarTableWords } from "../words/curve.ts";

/** One reading as it came: a line of a file or a reading of a study. */
export interface JarReading {
  row: number;
  /** null: the row is a jar of its own */
  jar: string | null;
  doses: number[];
  value: number;
  censored: "above" | "below" | null;
  block: string | null;
  order: number | null;
}

/** One jar's response after its re-reads were averaged. */
export interface JarPoint {
  doses: number[];
  y: number;
  row: number;
  allRows: number[];
  block?: string;
  order?: number;
  censored?: "above" | "below";
}

const sameDose = (a: number, b: number) => Math.abs(a - b) <= 1e-9 * Math.max(1, Math.abs(a), Math.abs(b));

/** The two rows that give one jar different doses, as a sentence, or null. `name` is the file's. */
function doseConflict(readings: Pick<JarReading, "row" | "jar" | "doses">[], name: string): string | null {
  const first = new Map<string, Pick<JarReading, "row" | "doses">>();
  for (const reading of readings) {
    if (reading.jar === null) continue;
    const known = first.get(reading.jar);
    if (!known) first.set(reading.jar, reading);
    else if (!known.doses.every((dose, k) => sameDose(dose, reading.doses[k]!)))
      return jarTableWords.twoDoses(name, reading.jar, known.row, reading.row);
  }
  return null;
}

/**
 * Averages the re-reads of each jar on the fit's scale into one point. A bound among them makes the mean a bound too
 * (the mean of values and bounds still bounds the mean). Fails where one jar has two doses.
 */
export function jarPoints(readings: JarReading[], scale: Scale, name: string): Outcome<JarPoint[]> {
  const conflict = doseConflict(readings, name);
  if (conflict) return bad(conflict);
  const jars = new Map<string, JarReading[]>();
  for (const [index, reading] of readings.entries()) {
    const key = reading.jar === null ? `row ${index}` : `jar ${reading.jar}`;
    jars.set(key, [...(jars.get(key) ?? []), reading]);
  }
  const points: JarPoint[] = [];
  for (const group of jars.values()) {
    const head = group[0]!;
    const mean = group.reduce((sum, reading) => sum + onScale(reading.value, scale), 0) / group.length;
    const signs = new Set(group.map((reading) => reading.censored).filter((sign) => sign !== null));
    if (signs.size > 1)
      return bad(jarTableWords.twoBounds(name, head.jar, group.map((one) => one.row).join(", ")));
    const [censored] = signs;
    const order = group.find((reading) => reading.order !== null)?.order ?? null;
    points.push({
      doses: head.doses,
      y: group.length === 1 ? head.value : offScale(mean, scale),
      row: head.row,
      allRows: group.map((reading) => reading.row),
      ...(head.block === null ? {} : { block: head.block }),
      ...(order === null ? {} : { order }),
      ...(censored ? { censored } : {}),
    });
  }
  return good(points);
}

import { jarPoints, type JarReading } from "../../src/curve/jars.ts";
import { fitSurface } from "../../src/curve/surface.ts";
import { columnOf, numberAt, readingAt } from "../../src/exchange/table.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { optionalColumns } from "./jar-columns.ts";
import { oneTable } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage = "surface FILE.csv --x1 COL --x2 COL --y COL [--log-y] [--decimal . | ,]";

const options = {
  x1: { type: "string" },
  x2: { type: "string" },
  y: { type: "string" },
  "log-y": { type: "boolean" },
} as const;

/** `surface`: the second-order surface over two doses. */
export const surface: Verb = {
  usage,
  run: (args) => Promise.resolve(runSurface(args)),
};

function runSurface(args: string[]): Outcome<unknown> {
  const file = oneTable(args, options, usage);
  if (!file.ok) return file;
  const { path, values, table } = file.value;
  for (const needed of ["x1", "x2", "y"])
    if (values[needed] === undefined) return bad(`--${needed} is missing. Usage: ${usage}`);
  const places = ["x1", "x2", "y"].map((name) => columnOf(table, String(values[name])));
  for (const place of places) if (!place.ok) return place;
  const [x1, x2, y] = places.map((place) => (place.ok ? place.value : 0)) as [number, number, number];
  const scale = values["log-y"] === true ? "log" : "linear";
  const readings: JarReading[] = [];
  for (const row of table.rows) {
    const a = numberAt(table, row, x1);
    if (!a.ok) return a;
    const b = numberAt(table, row, x2);
    if (!b.ok) return b;
    const response = readingAt(table, row, y);
    if (!response.ok) return response;
    if (a.value === null || b.value === null || response.value === null) continue;
    if (scale === "log" && response.value.value <= 0)
      return bad(
        `${path}: line ${row.line}, column ${table.heads[y]}: the logarithm of ${response.value.value} cannot be taken.`,
      );
    const extra = optionalColumns(table, row);
    if (!extra.ok) return extra;
    readings.push({ row: row.line, doses: [a.value, b.value], ...response.value, ...extra.value });
  }
  if (readings.length === 0) return bad(`${path}: no row has both doses and ${String(values["y"])}.`);
  const jars = jarPoints(readings, scale, path);
  if (!jars.ok) return jars;
  const points = jars.value.map(({ doses, ...point }) => ({ a: doses[0]!, b: doses[1]!, ...point }));
  return good(fitSurface(points, scale).report);
}

import { fitModel } from "../../src/curve/fit.ts";
import { jarPoints, type JarReading } from "../../src/curve/jars.ts";
import { highestDegree, modelNamed, modelNames } from "../../src/curve/models/registry.ts";
import type { DosePoint, Scale } from "../../src/curve/types.ts";
import { columnOf, numberAt, readingAt, readTable } from "../../src/exchange/table.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { decimalOption, numberOption } from "./decimal-option.ts";
import { optionalColumns } from "./jar-columns.ts";
import { readArguments, readTextFile, type ParsedArguments, type Verb } from "./verb.ts";

const usage =
  "fit FILE.csv --x COL --y COL --model NAME [--log-y] [--fix name=value]... [--degree k] [--level p] [--bootstrap N --seed S] [--decimal . | ,]";

const options = {
  x: { type: "string" },
  y: { type: "string" },
  model: { type: "string" },
  "log-y": { type: "boolean" },
  fix: { type: "string", multiple: true },
  degree: { type: "string" },
  level: { type: "string" },
  bootstrap: { type: "string" },
  seed: { type: "string" },
  decimal: { type: "string" },
} as const;

/** Rows of two columns as points on their natural scale; rows without a dose or a response are not used. */
function pointsOf(
  words: ParsedArguments["values"],
  path: string,
  scale: Scale,
  positiveDose: boolean,
): Outcome<DosePoint[]> {
  const mark = decimalOption(words["decimal"]);
  if (!mark.ok) return mark;
  const text = readTextFile(path);
  if (!text.ok) return text;
  const table = readTable(text.value, path, mark.value);
  if (!table.ok) return table;
  const x = columnOf(table.value, String(words["x"]));
  if (!x.ok) return x;
  const y = columnOf(table.value, String(words["y"]));
  if (!y.ok) return y;
  const readings: JarReading[] = [];
  for (const row of table.value.rows) {
    const dose = numberAt(table.value, row, x.value);
    if (!dose.ok) return dose;
    const response = readingAt(table.value, row, y.value);
    if (!response.ok) return response;
    if (dose.value === null || response.value === null) continue;
    const place = `${path}: line ${row.line}, column`;
    if (positiveDose && dose.value <= 0)
      return bad(
        `${place} ${table.value.heads[x.value]}: this model is in ln dose, so ${dose.value} cannot be fitted.`,
      );
    if (scale === "log" && response.value.value <= 0)
      return bad(
        `${place} ${table.value.heads[y.value]}: the logarithm of ${response.value.value} cannot be taken.`,
      );
    const extra = optionalColumns(table.value, row);
    if (!extra.ok) return extra;
    readings.push({ row: row.line, doses: [dose.value], ...response.value, ...extra.value });
  }
  if (readings.length === 0) return bad(`${path}: no row has both ${words["x"]} and ${words["y"]}.`);
  const jars = jarPoints(readings, scale, path);
  if (!jars.ok) return jars;
  return good(jars.value.map(({ doses, ...point }) => ({ x: doses[0]!, ...point })));
}

function fixedOf(given: unknown, names: string[], positive: string[]): Outcome<Record<string, number>> {
  const fixed: Record<string, number> = {};
  for (const one of Array.isArray(given) ? given.map(String) : []) {
    const [name = "", value = "", ...rest] = one.split("=");
    if (rest.length > 0 || value === "") return bad(`--fix takes name=value, not "${one}".`);
    if (!names.includes(name))
      return bad(`--fix: this model has no parameter "${name}"; it has ${names.join(", ")}.`);
    if (Object.hasOwn(fixed, name)) return bad(`--fix: "${name}" is given twice.`);
    const number = numberOption("fix", value, -1e300, 1e300);
    if (!number.ok) return number;
    if (positive.includes(name) && number.value <= 0) return bad(`--fix: ${name} must be above 0.`);
    fixed[name] = number.value;
  }
  if (Object.keys(fixed).length === names.length)
    return bad("--fix: at least one parameter must be left to fit.");
  return good(fixed);
}

/** `fit`: one model to two columns of a file. */
export const fit: Verb = {
  usage,
  run(args) {
    return Promise.resolve(runFit(args));
  },
};

function runFit(args: string[]): Outcome<unknown> {
  const parsed = readArguments(args, options, usage);
  if (!parsed.ok) return parsed;
  const { positionals, values } = parsed.value;
  const [path, ...rest] = positionals;
  if (path === undefined || rest.length > 0) return bad(`Name one file. Usage: ${usage}`);
  for (const needed of ["x", "y", "model"])
    if (values[needed] === undefined) return bad(`--${needed} is missing. Usage: ${usage}`);
  const degree = numberOption("degree", String(values["degree"] ?? "2"), 1, highestDegree, true);
  if (!degree.ok) return degree;
  const name = String(values["model"]);
  if (values["degree"] !== undefined && name !== "polynomial")
    return bad("--degree goes with --model polynomial only.");
  if (values["degree"] === undefined && name === "polynomial")
    return bad("--model polynomial needs --degree.");
  const model = modelNamed(name, degree.value);
  if (!model) return bad(`There is no model "${name}"; there are: ${modelNames.join(", ")}.`);
  const fixed = fixedOf(
    values["fix"],
    model.parameterNames,
    model.positive.map((k) => model.parameterNames[k]!),
  );
  if (!fixed.ok) return fixed;
  const level = numberOption("level", String(values["level"] ?? "0.95"), 0.5, 0.9999);
  if (!level.ok) return level;
  if ((values["bootstrap"] === undefined) !== (values["seed"] === undefined))
    return bad("--bootstrap and --seed go together.");
  const draws = numberOption("bootstrap", String(values["bootstrap"] ?? "1"), 1, 100_000, true);
  if (!draws.ok) return draws;
  const seed = numberOption("seed", String(values["seed"] ?? "0"), 0, Number.MAX_SAFE_INTEGER, true);
  if (!seed.ok) return seed;
  const scale: Scale = values["log-y"] === true ? "log" : "linear";
  const points = pointsOf(values, path, scale, !model.definedAtZero);
  if (!points.ok) return points;
  const negative = model.logDose && points.value.find((point) => point.x < 0);
  if (negative)
    return bad(
      `${path}: line ${negative.row}, column ${String(values["x"])}: this model is in ln dose, so ${negative.x} cannot be fitted.`,
    );
  const { report } = fitModel(model, points.value, {
    scale,
    fixed: fixed.value,
    level: level.value,
    bootstrap: values["bootstrap"] === undefined ? null : { draws: draws.value, seed: seed.value },
  });
  return good(report);
}

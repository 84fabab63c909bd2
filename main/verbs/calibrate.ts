import { columnOf, numberAt, readTable } from "../../src/exchange/table.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { checkPump, type Draw } from "../../src/plant/pump-line.ts";
import { decimalOption } from "./decimal-option.ts";
import { readArguments, readTextFile, type Verb } from "./verb.ts";

const usage = "calibrate FILE.csv [--decimal . | ,]";

/** `calibrate`: a pump's line from draw-downs. */
export const calibrate: Verb = {
  usage,
  run: (args) => Promise.resolve(runCalibrate(args)),
};

function runCalibrate(args: string[]): Outcome<unknown> {
  const parsed = readArguments(args, { decimal: { type: "string" } }, usage);
  if (!parsed.ok) return parsed;
  const [path, ...rest] = parsed.value.positionals;
  if (path === undefined || rest.length > 0) return bad(`Name one file. Usage: ${usage}`);
  const mark = decimalOption(parsed.value.values["decimal"]);
  if (!mark.ok) return mark;
  const text = readTextFile(path);
  if (!text.ok) return text;
  const table = readTable(text.value, path, mark.value);
  if (!table.ok) return table;
  const weighed = table.value.heads.includes("g");
  if (weighed && table.value.heads.includes("ml"))
    return bad(`${path}: has both a column "ml" and a column "g"; keep one.`);
  const places = ["setting", weighed ? "g" : "ml", "seconds"].map((head) => columnOf(table.value, head));
  for (const place of places) if (!place.ok) return place;
  const columns = places.map((place) => (place.ok ? place.value : 0));
  const draws: Draw[] = [];
  for (const row of table.value.rows) {
    const numbers: number[] = [];
    for (const [index, column] of columns.entries()) {
      const value = numberAt(table.value, row, column);
      if (!value.ok) return value;
      const place = `${path}: line ${row.line}, column ${table.value.heads[column]}`;
      if (value.value === null) return bad(`${place}: is empty.`);
      if (value.value < 0 || (index > 0 && value.value === 0))
        return bad(`${place}: ${value.value} must be above 0.`);
      numbers.push(value.value);
    }
    const [setting = 0, amount = 0, seconds = 1] = numbers;
    draws.push({ setting, flow: (amount / seconds) * 60 });
  }
  const check = checkPump(draws);
  return check.ok ? good(check.value) : bad(`${path}: ${check.message}`);
}

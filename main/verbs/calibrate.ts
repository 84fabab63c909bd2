import { columnOf, numberAt } from "../../src/exchange/table.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { checkPump, type Draw } from "../../src/plant/pump-line.ts";
import { oneTable } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage = "calibrate FILE.csv [--decimal . | ,]";

/** `calibrate`: a pump's line from draw-downs. */
export const calibrate: Verb = {
  usage,
  run: (args) => Promise.resolve(runCalibrate(args)),
};

function runCalibrate(args: string[]): Outcome<unknown> {
  const file = oneTable(args, {}, usage);
  if (!file.ok) return file;
  const { path, table } = file.value;
  const weighed = table.heads.includes("g");
  if (weighed && table.heads.includes("ml"))
    return bad(`${path}: has both a column "ml" and a column "g"; keep one.`);
  const places = ["setting", weighed ? "g" : "ml", "seconds"].map((head) => columnOf(table, head));
  for (const place of places) if (!place.ok) return place;
  const columns = places.map((place) => (place.ok ? place.value : 0));
  const draws: Draw[] = [];
  for (const row of table.rows) {
    const numbers: number[] = [];
    for (const [index, column] of columns.entries()) {
      const value = numberAt(table, row, column);
      if (!value.ok) return value;
      const place = `${path}: line ${row.line}, column ${table.heads[column]}`;
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

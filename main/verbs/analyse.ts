import { analyseJars } from "../../src/curve/analyse.ts";
import type { AnalyseRow } from "../../src/curve/analyse-types.ts";
import { numberAt, readingAt, type Table } from "../../src/exchange/table.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { responseNamed, responseSpecs } from "../../src/responses/registry.ts";
import { doseWords } from "../../src/units/dose-words.ts";
import { optionalColumns } from "./jar-columns.ts";
import { oneTable } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage = "analyse FILE.csv [--decimal . | ,]";
const doseHeads = ["dose_a_kg_per_t", "dose_b_kg_per_t"] as const;

const leftOutHead = (name: string) => `${responseNamed(name)?.files[0]?.slot}_left_out`;

/** `analyse`: every response of a jar table, with a verdict each. */
export const analyse: Verb = {
  usage,
  run: (args) => Promise.resolve(runAnalyse(args)),
};

function runAnalyse(args: string[]): Outcome<unknown> {
  const file = oneTable(args, {}, usage);
  if (!file.ok) return file;
  const { path, table } = file.value;
  const rows = rowsOf(table);
  if (!rows.ok) return rows;
  const jarColumn = table.heads.indexOf("jar");
  const jar = (row: number) =>
    table.rows.find((candidate) => candidate.line === row)?.cells[jarColumn] || `on line ${row}`;
  const analysed = analyseJars(rows.value, {
    name: path,
    responses: responseSpecs,
    number: doseWords(".", "metric").number,
    jar,
  });
  return analysed.ok ? good(analysed.value.analysis) : analysed;
}

function rowsOf(table: Table): Outcome<AnalyseRow[]> {
  // A column that is there but wholly empty says no more than one that is missing.
  const filled = (column: number) => column >= 0 && table.rows.some((row) => row.cells[column] !== "");
  const doseColumns = doseHeads
    .map((head) => table.heads.indexOf(head))
    .map((column) => (filled(column) ? column : -1));
  if (doseColumns.every((column) => column < 0))
    return bad(`${table.name}: there is no dose column; name one ${doseHeads.join(" or ")}.`);
  const columns = responseSpecs.map((spec) => ({ spec, column: table.heads.indexOf(spec.name) }));
  if (columns.every(({ column }) => column < 0))
    return bad(
      `${table.name}: there is no response column; there could be ${responseSpecs.map((spec) => spec.name).join(", ")}.`,
    );
  const rows: AnalyseRow[] = [];
  // In an exported table a filled reason says that the jar, or that one reading, does not count.
  const isOut = (row: Table["rows"][number], head: string) => {
    const column = table.heads.indexOf(head);
    return column >= 0 && row.cells[column] !== "";
  };
  for (const row of table.rows) {
    if (isOut(row, "left_out")) continue;
    const place = (column: number) => `${table.name}: line ${row.line}, column ${table.heads[column]}`;
    const doses: number[] = [];
    for (const column of doseColumns) {
      const dose = column < 0 ? good(0) : numberAt(table, row, column);
      if (!dose.ok) return dose;
      if (dose.value === null)
        return bad(`${place(column)}: the dose is missing; a no-polymer jar has dose 0.`);
      if (dose.value < 0) return bad(`${place(column)}: a dose cannot be negative (${dose.value}).`);
      doses.push(dose.value);
    }
    const extra = optionalColumns(table, row);
    if (!extra.ok) return extra;
    const readings: AnalyseRow["readings"] = {};
    for (const { spec, column } of columns) {
      if (column < 0 || isOut(row, leftOutHead(spec.name))) continue;
      const reading = readingAt(table, row, column);
      if (!reading.ok) return reading;
      if (reading.value === null) continue;
      const { value } = reading.value;
      if (spec.scale === "log" && value <= 0)
        return bad(
          `${place(column)}: ${value} is not above 0; an instrument's lowest reading is entered as "<" and that number.`,
        );
      if (value < 0 || value > (responseNamed(spec.name)?.fitted?.highest ?? Infinity))
        return bad(`${place(column)}: ${value} cannot be (${spec.unit}).`);
      readings[spec.name] = reading.value;
    }
    rows.push({ row: row.line, doseA: doses[0]!, doseB: doses[1]!, readings, ...extra.value });
  }
  return good(rows);
}

import { readTable, type Table } from "../../src/exchange/table.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { decimalOption } from "./decimal-option.ts";
import { readArguments, readTextFile, type OptionSpec, type ParsedArguments } from "./verb.ts";

/** The words of a verb that takes one file: its path and the options. */
export function oneFile(
  args: string[],
  options: OptionSpec,
  usage: string,
): Outcome<{ path: string; values: ParsedArguments["values"] }> {
  const parsed = readArguments(args, options, usage);
  if (!parsed.ok) return parsed;
  const [path, ...rest] = parsed.value.positionals;
  if (path === undefined || rest.length > 0) return bad(`Name one file. Usage: ${usage}`);
  return good({ path, values: parsed.value.values });
}

/** The words of a verb that takes one table, with the table read under --decimal. */
export function oneTable(
  args: string[],
  options: OptionSpec,
  usage: string,
): Outcome<{ path: string; values: ParsedArguments["values"]; table: Table }> {
  const file = oneFile(args, { ...options, decimal: { type: "string" } }, usage);
  if (!file.ok) return file;
  const mark = decimalOption(file.value.values["decimal"]);
  if (!mark.ok) return mark;
  const text = readTextFile(file.value.path);
  if (!text.ok) return text;
  const table = readTable(text.value, file.value.path, mark.value);
  return table.ok ? good({ ...file.value, table: table.value }) : table;
}

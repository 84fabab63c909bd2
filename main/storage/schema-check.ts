import { DatabaseSync } from "node:sqlite";
import { migrations } from "./format.ts";
import { storageWords } from "../../src/words/storage.ts";

const known = new Map<number, Map<string, string>>();

/** SQLite's own statistics, which another tool may have added: harmless, and nothing of ours reads them. */
const tolerated = new Set([
  "table sqlite_stat1 CREATE TABLE sqlite_stat1(tbl,idx,stat)",
  "table sqlite_stat4 CREATE TABLE sqlite_stat4(tbl,idx,neq,nlt,ndlt,sample)",
]);

function schemaOf(database: DatabaseSync): Map<string, string> {
  const parts = new Map<string, string>();
  for (const row of database.prepare("SELECT type, name, sql FROM sqlite_schema").all()) {
    const name = `${String(row["type"])} ${String(row["name"])}`;
    if (!tolerated.has(`${name} ${String(row["sql"])}`)) parts.set(name, String(row["sql"]));
  }
  return parts;
}

/** What a file of this format version holds, as its migrations write it. */
function expectedSchema(version: number): Map<string, string> {
  const before = known.get(version);
  if (before) return before;
  const database = new DatabaseSync(":memory:");
  for (const migrate of migrations.slice(0, version)) migrate(database);
  const parts = schemaOf(database);
  database.close();
  known.set(version, parts);
  return parts;
}

const short = (name: string) =>
  name
    .slice(0, 40)
    .replace(/\p{Cc}/gu, " ")
    .toWellFormed();

/**
 * The first part of a file that is not as this version's migrations wrote it: a trigger, a view, another table, a table
 * of other columns, or one that is missing. null where all is as it should be. Nothing but the list of parts is read,
 * so that what a hostile part would do is never started. Throws what SQLite throws on a damaged list.
 */
export function strangePart(database: DatabaseSync, version: number): string | null {
  const parts = schemaOf(database);
  const expected = expectedSchema(version);
  for (const [name, sql] of parts) if (expected.get(name) !== sql) return short(name);
  for (const name of expected.keys()) if (!parts.has(name)) return storageWords.noPart(short(name));
  return null;
}

/** Whether a table may be read: there, and as the first version's migrations wrote it. */
export function isOurTable(database: DatabaseSync, table: "record" | "change"): boolean {
  const name = `table ${table}`;
  try {
    return schemaOf(database).get(name) === expectedSchema(migrations.length).get(name);
  } catch {
    return false;
  }
}

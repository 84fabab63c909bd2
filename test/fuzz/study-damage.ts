import { readFileSync, writeFileSync } from "node:fs";
import { DatabaseSync } from "node:sqlite";
import type { Chance } from "./chance.ts";
import { hostileTexts } from "./hostile.ts";

/** One way to spoil a study file. `refuse`: opening it must be refused, whatever else happens. */
export interface Damage {
  name: string;
  refuse: boolean;
  spoil(path: string, chance: Chance): void;
}

const bytes = (change: (content: Buffer, chance: Chance) => Buffer) => (path: string, chance: Chance) =>
  writeFileSync(path, change(readFileSync(path), chance));

const sql =
  (...statements: ((chance: Chance) => string)[]) =>
  (path: string, chance: Chance) => {
    const database = new DatabaseSync(path, { defensive: false });
    try {
      database.exec("PRAGMA journal_mode = MEMORY; PRAGMA synchronous = OFF;");
      for (const statement of statements) database.exec(statement(chance));
    } finally {
      database.close();
    }
  };

const quoted = (text: string) => `'${text.replaceAll("'", "''").replaceAll("\u0000", "")}'`;
const kindsOfRecord = ["jar", "reading", "sample", "series", "stock", "product", "study", "decision"];

function blankPage(content: Buffer, chance: Chance): Buffer {
  const start = 4096 * chance.whole(0, Math.floor(content.length / 4096) - 1);
  return content.fill(chance.pick([0, 255]), start, start + 4096);
}

/** The schema table itself rewritten, as only somebody who means harm would. */
const schema = (statement: string) => sql(() => `PRAGMA writable_schema = ON; ${statement}`);

export const damages: Damage[] = [
  {
    name: "one bit",
    refuse: false,
    spoil: bytes((content, chance) => {
      const at = chance.whole(0, content.length - 1);
      content[at] = content[at]! ^ (1 << chance.whole(0, 7));
      return content;
    }),
  },
  {
    name: "a bit of the head",
    refuse: false,
    spoil: bytes((content, chance) => {
      const at = chance.whole(0, 110);
      content[at] = content[at]! ^ (1 << chance.whole(0, 7));
      return content;
    }),
  },
  {
    name: "many bits",
    refuse: false,
    spoil: bytes((content, chance) => {
      for (let k = chance.whole(2, 200); k > 0; k--)
        content[chance.whole(0, content.length - 1)] = chance.whole(0, 255);
      return content;
    }),
  },
  {
    name: "cut short",
    refuse: true,
    spoil: bytes((content, chance) => content.subarray(0, chance.whole(0, content.length - 1))),
  },
  {
    name: "bytes added",
    refuse: false,
    spoil: bytes((content, chance) =>
      Buffer.concat([content, Buffer.alloc(chance.whole(1, 9000), chance.whole(0, 255))]),
    ),
  },
  {
    name: "two pages swapped",
    refuse: false,
    spoil: bytes((content, chance) => {
      const pages = Math.floor(content.length / 4096);
      const [a, b] = [chance.whole(0, pages - 1) * 4096, chance.whole(0, pages - 1) * 4096];
      const kept = Buffer.from(content.subarray(a, a + 4096));
      content.copyWithin(a, b, b + 4096);
      kept.copy(content, b);
      return content;
    }),
  },
  {
    name: "a page blank",
    refuse: false,
    spoil: bytes((content, chance) => blankPage(content, chance)),
  },
  {
    name: "a trigger",
    refuse: true,
    spoil: sql(
      (chance) =>
        `CREATE TRIGGER ${chance.pick(["sly", "record_", "sqliteish"])} AFTER INSERT ON ${chance.pick(["record", "change", "draft"])} BEGIN DELETE FROM record; END`,
    ),
  },
  {
    name: "a view in a table's place",
    refuse: true,
    spoil: sql((chance) => {
      const table = chance.pick(["record", "change", "draft", "touched"]);
      return `DROP TABLE ${table}; CREATE VIEW ${table} AS WITH RECURSIVE c(seq, kind, id, data) AS (SELECT 1, 'jar', 'a', '{}' UNION ALL SELECT seq + 1, kind, id, data FROM c) SELECT * FROM c`;
    }),
  },
  {
    name: "a virtual table",
    refuse: true,
    spoil: sql((chance) =>
      chance.pick([
        "DROP TABLE draft; CREATE VIRTUAL TABLE draft USING dbstat(main)",
        "CREATE VIRTUAL TABLE more USING fts5(x)",
        "DROP TABLE record; CREATE VIRTUAL TABLE record USING dbstat(main)",
      ]),
    ),
  },
  {
    name: "a table that is not ours",
    refuse: true,
    spoil: sql((chance) => `CREATE TABLE "${chance.pick(["more", "Record ", "récord"])}" (x)`),
  },
  {
    name: "an index that is not ours",
    refuse: true,
    spoil: sql(() => "CREATE INDEX sly ON record (kind, abs(length(data)))"),
  },
  {
    name: "a table without its columns",
    refuse: true,
    spoil: sql((chance) => {
      const table = chance.pick(["record", "change", "draft", "touched", "meta"]);
      return `DROP TABLE ${table}; CREATE TABLE ${table} (${chance.pick(["x", "seq, kind, id, data", "data TEXT GENERATED ALWAYS AS (zeroblob(1000000000)), id"])})`;
    }),
  },
  {
    name: "a table gone",
    refuse: true,
    spoil: sql((chance) => `DROP TABLE ${chance.pick(["record", "change", "draft", "touched", "meta"])}`),
  },
  {
    name: "a column added",
    refuse: true,
    spoil: sql(
      (chance) =>
        `ALTER TABLE ${chance.pick(["record", "change", "draft"])} ADD COLUMN ${chance.pick(["more TEXT DEFAULT 'x'", "n INTEGER NOT NULL DEFAULT 0", "g AS (1 + 1)"])}`,
    ),
  },
  {
    name: "a schema of nonsense",
    refuse: true,
    spoil: schema("UPDATE sqlite_schema SET sql = 'CREATE TABLE record(' WHERE name = 'record'"),
  },
  {
    name: "a schema with another root",
    refuse: true,
    spoil: schema("UPDATE sqlite_schema SET rootpage = 4000000000 WHERE name = 'change'"),
  },
  {
    name: "two tables on one root",
    refuse: true,
    spoil: schema(
      "UPDATE sqlite_schema SET rootpage = (SELECT rootpage FROM sqlite_schema WHERE name = 'draft') WHERE name = 'record'",
    ),
  },
  {
    name: "another way of journalling",
    refuse: true,
    spoil: sql(() => "PRAGMA journal_mode = WAL"),
  },
  {
    name: "a record that is no JSON",
    refuse: true,
    spoil: sql(
      (chance) =>
        `INSERT INTO record VALUES ('${chance.pick(kindsOfRecord)}', 'x', ${quoted(chance.pick([...hostileTexts.slice(0, 24), "[".repeat(100_000), "{", "nul"]))})`,
    ),
  },
  {
    name: "a record of the wrong kind",
    refuse: true,
    spoil: sql(
      (chance) =>
        `UPDATE OR REPLACE record SET kind = 'person' WHERE kind = '${chance.pick(["jar", "reading", "sample"])}'`,
    ),
  },
  {
    name: "a kind that there is not",
    refuse: true,
    spoil: sql(
      (chance) =>
        `INSERT INTO record VALUES (${quoted(chance.pick(["__proto__", "constructor", "beaker", ""]))}, 'x', '{"id":"x"}')`,
    ),
  },
  {
    name: "an id that is another",
    refuse: true,
    spoil: sql(
      (chance) =>
        `UPDATE record SET id = ${quoted(chance.pick(["__proto__", "constructor", "x", ""]))} WHERE kind = 'jar' AND id = 'jar-1-04'`,
    ),
  },
  {
    name: "huge JSON",
    refuse: true,
    spoil: sql(
      (chance) =>
        `UPDATE record SET data = json_set(data, '$.note', ${chance.pick(["hex(zeroblob(2000000))", "replace(hex(zeroblob(200000)), '00', '[')", `'${"n".repeat(5000)}'`])}) WHERE id = 'jar-1-04'`,
    ),
  },
  {
    name: "data of another type",
    refuse: true,
    spoil: sql(
      (chance) =>
        `UPDATE record SET data = ${chance.pick(["5", "zeroblob(1000)", "x'ff'", "1e999"])} WHERE id = 'jar-1-04'`,
    ),
  },
  {
    name: "a record that names one which is not there",
    refuse: true,
    spoil: sql(
      (chance) =>
        `DELETE FROM record WHERE ${chance.pick(["kind = 'sample'", "kind = 'stock'", "kind = 'series'", "id = 'jar-1-04'", "kind = 'product'"])}`,
    ),
  },
  {
    name: "a history with odd numbers",
    refuse: true,
    spoil: sql(
      (chance) =>
        `UPDATE change SET seq = ${chance.pick(["-1", "0", "9007199254740991", "9223372036854775807", "4503599627370496"])} WHERE seq = (SELECT max(seq) FROM change)`,
    ),
  },
  {
    name: "a last entry that cannot be read",
    refuse: true,
    spoil: sql(
      (chance) =>
        `UPDATE change SET ${chance.pick(["command = '{'", 'command = \'{"do":"destroy"}\'', "at = 'yesterday'", "inverse = '[]'", "by = zeroblob(20)", "undoes = -4", "undoes = 'x'", "undoes = 9223372036854775807", `command = replace(hex(zeroblob(20000)), '00', '[')`])} WHERE seq = (SELECT max(seq) FROM change)`,
    ),
  },
  {
    name: "an earlier entry that cannot be read",
    refuse: false,
    spoil: sql(
      (chance) =>
        `UPDATE change SET ${chance.pick(["command = '{'", "at = 'yesterday'", "inverse = '[]'", "undoes = 7", "redoes = 9007199254740993", "why = zeroblob(10)"])} WHERE seq = ${chance.whole(1, 10)}`,
    ),
  },
  {
    name: "many drafts",
    refuse: false,
    spoil: sql(
      (chance) =>
        `WITH RECURSIVE c(n) AS (SELECT 1 UNION ALL SELECT n + 1 FROM c WHERE n < ${chance.pick([100, 5000, 20_000])}) INSERT INTO draft SELECT 'place ' || n, hex(randomblob(20)), '', '2026-01-01T00:00:00Z' FROM c`,
    ),
  },
  {
    name: "drafts of other types",
    refuse: false,
    spoil: sql(
      (chance) =>
        `INSERT INTO draft VALUES (${chance.pick(["'a', 5, zeroblob(9), 7", "zeroblob(3), hex(zeroblob(3000)), '', ''", "'', '', '', ''", "hex(zeroblob(400)), 'x', '', 9"])})`,
    ),
  },
];

import { spawnSync } from "node:child_process";
import {
  existsSync,
  linkSync,
  mkdirSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  truncateSync,
  writeFileSync,
} from "node:fs";
import { join } from "node:path";
import { DatabaseSync } from "node:sqlite";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext } from "../../main/service.ts";
import { indexFileName } from "../../main/storage/index-file.ts";
import { bare, newShelf, now, writeTemplates, type Shelf } from "./library-shelf.ts";

let templates = "";
let shelf: Shelf;
beforeAll(() => {
  templates = writeTemplates(4);
}, 60_000);
afterAll(() => rmSync(templates, { recursive: true, force: true }));
beforeEach(() => {
  shelf = newShelf(templates);
});
afterEach(() => shelf.remove());

describe("the index file", { timeout: 90_000 }, () => {
  const spoil: [string, (path: string) => void][] = [
    ["foreign text", (path) => writeFileSync(path, "a list, not an index")],
    ["an empty file", (path) => writeFileSync(path, "")],
    ["cut short", (path) => truncateSync(path, 5000)],
    [
      "bits turned in every page",
      (path) => {
        const data = readFileSync(path);
        for (let at = 3000; at < data.length; at += 500) data[at] = data[at]! ^ 0xff;
        writeFileSync(path, data);
      },
    ],
    [
      "another version",
      (path) => {
        const database = new DatabaseSync(path);
        database.exec("PRAGMA user_version = 99");
        database.close();
      },
    ],
    [
      "a trigger slipped in",
      (path) => {
        const database = new DatabaseSync(path);
        database.exec("CREATE TRIGGER t AFTER DELETE ON file BEGIN SELECT 1; END");
        database.close();
      },
    ],
    [
      "rows of another shape",
      (path) => {
        const database = new DatabaseSync(path);
        database.exec(`UPDATE file SET data = '[{"studyName": 5}]'`);
        database.close();
      },
    ],
    [
      "rows that are no JSON",
      (path) => {
        const database = new DatabaseSync(path);
        database.exec("UPDATE file SET data = '<script>'");
        database.close();
      },
    ],
  ];
  test.each(spoil)(
    "damaged by %s is thrown away and made anew, without a word lost",
    async (_name, damage) => {
      for (let i = 0; i < 2; i++) shelf.place(i);
      await shelf.refresh();
      const whole = bare((await shelf.search()).rows);
      const before = shelf.bytes();
      damage(join(shelf.folder, indexFileName));
      shelf.reopen();
      await shelf.search();
      await shelf.refresh();
      expect(bare((await shelf.search()).rows)).toEqual(whole);
      expect(shelf.bytes()).toEqual(before);
      shelf.reopen();
      expect(bare((await shelf.search()).rows)).toEqual(whole);
      expect(readdirSync(shelf.folder).filter((name) => !name.endsWith(".flocwright"))).toEqual([
        indexFileName,
      ]);
    },
  );

  test("is never made by only looking, nor in a folder that is not there", async () => {
    shelf.place(0);
    await shelf.search();
    expect(existsSync(join(shelf.folder, indexFileName))).toBe(false);
    rmSync(shelf.folder, { recursive: true });
    shelf.reopen();
    expect(await shelf.refresh()).toMatchObject({ read: 0 });
    expect(await shelf.search()).toMatchObject({ studies: 0, rows: [], broken: [] });
    expect(existsSync(shelf.folder)).toBe(false);
  });

  test("that is a link or a folder harms nothing it leads to", async () => {
    shelf.place(0);
    const target = join(shelf.folder, "study 0.flocwright");
    const before = shelf.bytes();
    symlinkSync(target, join(shelf.folder, indexFileName));
    await shelf.refresh();
    expect(shelf.bytes()).toEqual(before);
    rmSync(join(shelf.folder, indexFileName));
    linkSync(target, join(shelf.folder, indexFileName));
    shelf.reopen();
    await shelf.refresh();
    expect(shelf.bytes()).toEqual(before);
    rmSync(join(shelf.folder, indexFileName));
    mkdirSync(join(shelf.folder, indexFileName));
    writeFileSync(join(shelf.folder, indexFileName, "kept.txt"), "kept");
    shelf.reopen();
    expect((await shelf.refresh()).notKept).toBe(true);
    expect((await shelf.search()).rows.length).toBe(2);
    expect(readFileSync(join(shelf.folder, indexFileName, "kept.txt"), "utf8")).toBe("kept");
  });
});

describe("what stands in the folder beside sound studies", () => {
  test("is named with its sentence and never opened, followed or changed", async () => {
    shelf.place(0);
    const names = [
      "<img src=x onerror=alert(1)>.flocwright",
      "line\nbreak.flocwright",
      "..flocwright",
      "'; DROP TABLE file; --.flocwright",
      `${"long ".repeat(45)}.flocwright`,
      "\u202Egpj.flocwright",
    ];
    for (const name of names) shelf.place(1, name);
    mkdirSync(join(shelf.folder, "folder.flocwright"));
    symlinkSync(join(shelf.folder, "nowhere"), join(shelf.folder, "dangling.flocwright"));
    writeFileSync(join(shelf.folder, "foreign.flocwright"), "jar,dose\n1,2\n");
    // whoever opened a pipe to read would wait for ever
    const pipe = spawnSync("mkfifo", [join(shelf.folder, "pipe.flocwright")]).status === 0;
    writeFileSync(join(shelf.folder, "empty.flocwright"), "");
    shelf.place(2, "newer.flocwright");
    const newer = readFileSync(join(shelf.folder, "newer.flocwright"));
    newer.writeUInt32BE(9999, 60);
    writeFileSync(join(shelf.folder, "newer.flocwright"), newer);
    shelf.place(3, "half.flocwright");
    writeFileSync(join(shelf.folder, "half.flocwright-journal"), "half a step");
    const spoilt = (name: string, sql: string) => {
      shelf.place(3, name);
      const database = new DatabaseSync(join(shelf.folder, name));
      database.exec(sql);
      database.close();
    };
    spoilt("view.flocwright", "CREATE VIEW people AS SELECT * FROM record");
    spoilt("json.flocwright", "UPDATE record SET data = '{' WHERE kind = 'jar' AND id = 'jar-1-03'");
    spoilt("unfit.flocwright", `UPDATE record SET data = '{"id":"stream-1"}' WHERE kind = 'stream'`);
    spoilt("orphan.flocwright", "DELETE FROM record WHERE kind = 'sample'");
    const before = shelf.bytes();
    await shelf.refresh();
    const { rows, broken } = await shelf.search({ text: "line 1" });
    expect(
      rows
        .filter((row) => row.seriesId === "series-1")
        .map((row) => row.fileName)
        .sort(),
    ).toEqual([...names].sort());
    const sentences = Object.fromEntries(broken.map(({ fileName, sentence }) => [fileName, sentence]));
    const wanted: Record<string, RegExp> = {
      "folder.flocwright": /folder/,
      "dangling.flocwright": /no such file/,
      "foreign.flocwright": /not a Flocwright study/,
      "empty.flocwright": /empty/,
      "newer.flocwright": /newer Flocwright/,
      "half.flocwright": /middle of a save/,
      "view.flocwright": /not part of a study \(view people\)/,
      "json.flocwright": /cannot be read/,
      "unfit.flocwright": /stream record that does not fit/,
      "orphan.flocwright": /do not fit together/,
      ...(pipe ? { "pipe.flocwright": /not a plain file/ } : {}),
    };
    expect(Object.keys(sentences).sort()).toEqual(Object.keys(wanted).sort());
    for (const [name, words] of Object.entries(wanted)) expect(sentences[name]).toMatch(words);
    expect(shelf.bytes()).toEqual(before);
    expect(readFileSync(join(shelf.folder, "half.flocwright-journal"), "utf8")).toBe("half a step");
    expect(readdirSync(shelf.folder).filter((name) => /lock$|-journal$|-wal$|-shm$/.test(name))).toEqual([
      "half.flocwright-journal",
    ]);
    // the start screen's list holds them all too, with the same care
    const listed = (await shelf.call("shelf.list", {})) as {
      ok: true;
      value: { entries: { fileName: string; trouble: string | null }[] };
    };
    expect(listed.ok).toBe(true);
    expect(listed.value.entries.find(({ fileName }) => fileName === "dangling.flocwright")!.trouble).toMatch(
      /no such file/,
    );
  });

  test("a study open in another window is read without waiting for its lock, and its lock stays", async () => {
    shelf.place(0);
    const [found] = ((await shelf.call("shelf.list", {})) as { value: { entries: { ref: string }[] } }).value
      .entries;
    expect(await shelf.call("study.open", { ref: found!.ref })).toMatchObject({ ok: true });
    const lock = readFileSync(join(shelf.folder, "study 0.flocwright.lock"), "utf8");
    const opener = shelf.context;
    const { folder } = shelf;
    shelf.context = createContext({ host: "loopback", version: "0", now: () => now, folder, dialogs: null });
    shelf.call = createDispatcher(shelf.context);
    await shelf.refresh();
    expect((await shelf.search()).rows.length).toBe(2);
    expect(readFileSync(join(folder, "study 0.flocwright.lock"), "utf8")).toBe(lock);
    closeContext(opener);
  });
});

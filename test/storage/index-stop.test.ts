import { afterAll, beforeAll, expect, test } from "vitest";
import { rmSync } from "node:fs";
import { newShelf, writeTemplates, type Shelf } from "./library-shelf.ts";

const count = 6;
let templates: string;
beforeAll(() => void (templates = writeTemplates(count)));
afterAll(() => rmSync(templates, { recursive: true, force: true }));

const bare = async (shelf: Shelf) =>
  (await shelf.search()).rows.map(({ ref: _, ...row }) => JSON.stringify(row)).sort();

test("an index that is left off midway loses nothing, and goes on where it was, in another session too", async () => {
  const whole = newShelf(templates);
  const shelf = newShelf(templates);
  try {
    for (let i = 0; i < count; i++) for (const one of [whole, shelf]) one.place(i);
    await whole.refresh();
    const before = shelf.bytes();

    let at = await shelf.ask("library.refresh", { step: "start" });
    while (at.done < 2) at = await shelf.ask("library.refresh", { step: "go-on" });
    expect(at.state).toBe("running");
    const stopped = await shelf.ask("library.refresh", { step: "stop" });
    expect(stopped).toMatchObject({ state: "stopped", total: count, toRead: count, notKept: false });
    expect(stopped.done).toBeGreaterThanOrEqual(2);
    expect(stopped.done).toBeLessThan(count);
    // What was read until then is found; nothing of a study that was only half read.
    expect((await shelf.search()).studies).toBe(stopped.done);
    const all = await bare(whole);
    for (const row of await bare(shelf)) expect(all).toContain(row);
    expect(shelf.bytes()).toEqual(before);
    // Asked to go on, there is nothing under way any more.
    expect(await shelf.ask("library.refresh", { step: "go-on" })).toMatchObject({ state: "done", toRead: 0 });

    shelf.reopen();
    expect((await shelf.search()).studies).toBe(stopped.done);
    expect((await shelf.refresh()).read).toBe(count - stopped.done);
    expect(await bare(shelf)).toEqual(all);
    expect(shelf.bytes()).toEqual(before);
  } finally {
    whole.remove();
    shelf.remove();
  }
});

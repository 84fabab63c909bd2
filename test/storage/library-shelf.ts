import { createHash } from "node:crypto";
import {
  copyFileSync,
  lstatSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  statSync,
  utimesSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, createContext, type Context } from "../../main/service.ts";
import { writeNewStudy } from "../../main/service/opening.ts";
import type { OutputOf } from "../../src/contract.ts";
import type { Command } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import type { LibraryRow } from "../../src/study/library/row.ts";

/** The demo's steps up to its approval: what comes after rests on it. */
function beforeApproval(commands: Command[]): Command[] {
  const at = commands.findIndex((command) => command.do === "add" && command.kind === "decision");
  if (at < 0) throw new Error("the demo approves no dose");
  return commands.slice(0, at);
}

export const now = "2026-01-01T12:00:00Z";
export const classes = ["primary", "excess", "mixed", "digested"] as const;

/** The demo under another name, with other words and another price, so that studies differ where they are compared. */
function variant(i: number): Command[] {
  return [
    ...(i % 5 === 4 ? beforeApproval(demoCommands(now)) : demoCommands(now)),
    {
      do: "set",
      kind: "study",
      id: "study",
      fields: { name: `Wörks ${i % 7} line ${i}`, currency: i % 2 ? "EUR" : "CHF" },
    },
    {
      do: "set",
      kind: "stream",
      id: "stream-1",
      fields: { sludgeClass: classes[i % 4]!, label: `Stream ${i}` },
    },
    { do: "set", kind: "product", id: "product-1", fields: { label: `Flocculant ${i % 3} (invented)` } },
    ...(i % 6 === 5
      ? [{ do: "set" as const, kind: "product" as const, id: "product-1", fields: { pricePerKgNeat: null } }]
      : []),
    ...(i % 4 === 1
      ? [{ do: "set" as const, kind: "jar" as const, id: "jar-1-04", fields: { syringeAMl: 20 + i / 10 } }]
      : []),
  ];
}

/** A folder of studies with a service on it; thirty different studies stand ready to be put into it. */
export interface Shelf {
  folder: string;
  context: Context;
  call: ReturnType<typeof createDispatcher>;
  /** another session on the same folder */
  reopen(): void;
  /** puts a study into the folder as it was left an hour ago, so that its moment of change is settled */
  place(i: number, name?: string): void;
  /** refreshes to the end and answers how many studies had to be read */
  refresh(): Promise<{ read: number; slices: number; notKept: boolean }>;
  search(input?: object): Promise<OutputOf<"library.search">>;
  ask<N extends "library.refresh" | "library.search">(name: N, input: object): Promise<OutputOf<N>>;
  /** every study's bytes and moment of change */
  bytes(): Record<string, string>;
  remove(): void;
}

/** Writes the different studies once; the answer is the folder they lie in. */
export function writeTemplates(count: number): string {
  const folder = mkdtempSync(join(tmpdir(), "flocwright-library-templates-"));
  for (let i = 0; i < count; i++) {
    const written = writeNewStudy(join(folder, `study ${i}.flocwright`), variant(i), "", now);
    if (!written.ok) throw new Error(written.message);
  }
  return folder;
}

/** A new empty folder with a service on it. */
export function newShelf(templates: string): Shelf {
  const folder = mkdtempSync(join(tmpdir(), "flocwright-library-"));
  const fresh = () =>
    createContext({ host: "loopback", version: "0", now: () => now, folder, dialogs: null });
  const context = fresh();
  const shelf: Shelf = {
    folder,
    context,
    call: createDispatcher(context),
    reopen() {
      closeContext(shelf.context);
      shelf.context = fresh();
      shelf.call = createDispatcher(shelf.context);
    },
    place(i, name = `study ${i}.flocwright`) {
      copyFileSync(join(templates, `study ${i}.flocwright`), join(folder, name));
      const hourAgo = new Date(Date.now() - 3.6e6);
      utimesSync(join(folder, name), hourAgo, hourAgo);
    },
    async ask<N extends "library.refresh" | "library.search">(name: N, input: object): Promise<OutputOf<N>> {
      const answer = await shelf.call(name, input);
      if (!answer.ok) throw new Error(answer.message);
      return answer.value as OutputOf<N>;
    },
    async refresh() {
      let read = 0;
      for (let slices = 1; ; slices++) {
        const answer = await shelf.ask("library.refresh", { step: slices === 1 ? "start" : "go-on" });
        read = Math.max(read, answer.toRead);
        if (answer.state !== "running") {
          if (answer.done !== answer.total) throw new Error("done before the end");
          return { read, slices, notKept: answer.notKept };
        }
      }
    },
    search: (input = {}) => shelf.ask("library.search", input),
    bytes: () =>
      Object.fromEntries(
        readdirSync(folder)
          .filter((name) => name.endsWith(".flocwright") && lstatSync(join(folder, name)).isFile())
          .map((name) => {
            const hash = createHash("sha256")
              .update(readFileSync(join(folder, name)))
              .digest("hex");
            return [name, `${hash} ${statSync(join(folder, name)).mtimeMs}`];
          }),
      ),
    remove() {
      closeContext(shelf.context);
      rmSync(folder, { recursive: true, force: true });
    },
  };
  return shelf;
}

/** Rows without the token, which is the session's own. */
export const bare = (rows: LibraryRow[]) => rows.map((row) => ({ ...row, ref: "" }));

// Works on a study where the disk is full or the folder is read-only, and prints what it was told, as JSON.
import { existsSync, rmSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { createDispatcher } from "../../main/dispatch.ts";
import { loopbackSupport } from "../../main/hosts/loopback/support.ts";
import { closeContext, createContext, openAtStart } from "../../main/service.ts";
import { summarise, writeDemo } from "../../main/service/standalone.ts";
import { demoCommands } from "../../src/study/demo.ts";

const [action, path] = process.argv.slice(2) as [string, string];
const now = "2026-03-01T12:00:00.000Z";
const told: Record<string, unknown> = {};
const folder = dirname(path);
const filler = join(folder, "filler");

if (action === "full") {
  const written = writeDemo(path, demoCommands, now);
  if (!written.ok) throw new Error(written.message);
  writeFileSync(filler, Buffer.alloc(100_000));
}
const context = createContext(loopbackSupport(path));
const opened = openAtStart(context, path);
if (!opened.ok) throw new Error(opened.message);
told["readOnlyBecause"] = opened.value.readOnlyBecause;
const call = createDispatcher(context);
const message = (answer: { ok: boolean }) => (answer.ok ? "saved" : (answer as { message?: string }).message);
const edit = (syringeAMl: number) =>
  call("study.apply", {
    command: { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl } },
    afterSeq: context.open!.seq,
    by: "",
  });
const kept = (place: string) => call("draft.keep", { place, text: "z".repeat(2000) });

if (action === "full") {
  let count = 0;
  let last: unknown = "saved";
  while (last === "saved" && count < 5000) last = message(await kept(`cell ${count++}`));
  told["draft"] = last;
  told["draftsKept"] = count - 1;
  // whatever room was left within pages is filled by now or soon
  for (let tries = 0; tries < 50 && told["edit"] === undefined; tries++) {
    const said = message(await edit(10 + tries / 10));
    if (said !== "saved") told["edit"] = said;
  }
  told["backup"] = message(await call("backup.make", {}));
  told["create"] = message(await call("study.saveAs", { name: "Elsewhere" }));
  told["partLeft"] = existsSync(join(folder, "Elsewhere.flocwright.part"));
  rmSync(filler);
  told["afterFreeing"] = message(await edit(7.7));
  const drafts = await call("draft.list", {});
  told["draftsFound"] = drafts.ok ? (drafts.value as { drafts: unknown[] }).drafts.length : 0;
} else {
  told["edit"] = message(await edit(7.7));
  told["draft"] = message(await kept("cell"));
  told["backup"] = message(await call("backup.make", {}));
  told["create"] = message(await call("study.create", { name: "Another", by: "" }));
}
closeContext(context);
const summary = summarise(path, now);
told["whole"] = summary.ok && summary.value.integrity === "ok" && summary.value.history === "whole";
console.log(JSON.stringify(told));

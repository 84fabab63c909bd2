// Works on a study as fast as it can (edits, undo, redo, drafts, backups, copies), saying before each step what it is
// about to do and after it that it was acknowledged, until it is killed.
import { writeSync } from "node:fs";
import { dirname, join } from "node:path";
import { createDispatcher } from "../../main/dispatch.ts";
import { loopbackSupport } from "../../main/hosts/loopback/support.ts";
import { createContext, openAtStart } from "../../main/service.ts";
import { seededRandom } from "../../src/curve/random.ts";

const [path, seed] = process.argv.slice(2) as [string, string];
const chance = seededRandom(Number(seed));
const context = createContext(loopbackSupport(path));
const opened = openAtStart(context, path);
if (!opened.ok) throw new Error(opened.message);
const call = createDispatcher(context);
const say = (line: object) => writeSync(1, `${JSON.stringify(line)}\n`);
say({ ready: true });

for (let step = 0; ; step++) {
  const open = context.open!;
  const roll = chance();
  if (roll < 0.55) {
    const ml = Math.round(100 + chance() * 300) / 10;
    const jar = `jar-1-0${1 + Math.floor(chance() * 8)}`;
    const command = { do: "set", kind: "jar", id: jar, fields: { blankWaterMl: ml } };
    const answer = await call("study.apply", { command, afterSeq: open.seq, by: "", why: `step ${step}` });
    if (!answer.ok) throw new Error(answer.message);
    say({ change: open.seq, jar, ml });
  } else if (roll < 0.7) {
    const answer = await call(chance() < 0.6 ? "study.undo" : "study.redo", { by: "" });
    if (answer.ok) say({ change: open.seq });
  } else if (roll < 0.9) {
    const place = `cell ${Math.floor(chance() * 6)}`;
    const text = chance() < 0.75 ? `typed ${seed} ${step}` : null;
    say({ begin: place, text });
    const answer =
      text === null
        ? await call("draft.drop", { place })
        : await call("draft.keep", { place, text, reason: "is not a number" });
    if (!answer.ok) throw new Error(answer.message);
    say({ draft: place, text });
  } else if (roll < 0.96) {
    const answer = await call("backup.make", {});
    if (!answer.ok) throw new Error(answer.message);
    say({ backup: true });
  } else {
    const name = `copy-${seed}-${step}.flocwright`;
    const copied = await open.file.copyTo(join(dirname(path), name), new Date().toISOString());
    if (!copied.ok) throw new Error(copied.message);
    say({ copy: name, changes: open.seq });
  }
}

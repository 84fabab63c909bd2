// Writes edits as fast as it can and prints each sequence number once it is durable, until it is killed.
import { writeSync } from "node:fs";
import { createDispatcher } from "../../main/dispatch.ts";
import { loopbackSupport } from "../../main/hosts/loopback/support.ts";
import { createContext, openAtStart } from "../../main/service.ts";

const path = process.argv[2]!;
const context = createContext(loopbackSupport(path));
const opened = openAtStart(context, path);
if (!opened.ok) throw new Error(opened.message);
const call = createDispatcher(context);
let seq = opened.value.seq;
for (let i = 0; ; i++) {
  const answer = await call("study.apply", {
    command: { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl: 10 + (i % 100) / 10 } },
    afterSeq: seq,
    by: "",
  });
  if (!answer.ok) throw new Error(answer.message);
  seq = (answer.value as { seq: number }).seq;
  writeSync(1, `${seq}\n`);
}

// Does one thing to a study and kills itself at the n-th step between its writes; without n it prints the steps.
import { writeSync } from "node:fs";
import { createDispatcher } from "../../main/dispatch.ts";
import { loopbackSupport } from "../../main/hosts/loopback/support.ts";
import { closeContext, createContext, openAtStart } from "../../main/service.ts";
import { writeDemo } from "../../main/service/standalone.ts";
import { openStudyFile } from "../../main/storage/study-file.ts";
import { watchSteps } from "../../main/storage/steps.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { importOf } from "../bench/host-step.ts";
import { importedJars } from "./imported.ts";

const [action, path, at] = process.argv.slice(2) as [string, string, string | undefined];
const dieAt = at === undefined ? Infinity : Number(at);
let count = 0;
const names: string[] = [];

function watch(): void {
  watchSteps((step) => {
    count += 1;
    names.push(step);
    if (count === dieAt) process.kill(process.pid, "SIGKILL");
  });
}

const now = "2026-03-01T12:00:00.000Z";
const must = <T extends { ok: boolean }>(outcome: T): Extract<T, { ok: true }> => {
  if (!outcome.ok) throw new Error((outcome as unknown as { message: string }).message);
  return outcome as Extract<T, { ok: true }>;
};

if (action === "create") {
  watch();
  must(writeDemo(path, demoCommands, now));
} else if (action === "upgrade") {
  watch();
  must(openStudyFile(path, now)).value.close();
} else if (action === "save-as") {
  const file = must(openStudyFile(path, now)).value;
  watch();
  must(await file.copyTo(`${path}.copy.flocwright`, now));
} else {
  const context = createContext(loopbackSupport(path));
  const opened = openAtStart(context, path);
  if (!opened.ok) throw new Error(opened.message);
  const call = createDispatcher(context);
  if (action === "edit") {
    watch();
    const answer = await call("study.apply", {
      command: { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl: 12.3 } },
      afterSeq: opened.value.seq,
      by: "",
    });
    if (answer.ok) writeSync(1, "acknowledged\n");
  } else if (action === "import") {
    // However quick the machine is, every slice has lasted long enough to give way after it.
    let clock = 0;
    performance.now = () => (clock += 1000);
    watch();
    const answer = await call("study.apply", {
      command: { do: "together", label: "many", commands: importOf(importedJars) },
      afterSeq: opened.value.seq,
      by: "",
      brief: true,
    });
    if (answer.ok) writeSync(1, "acknowledged\n");
  } else if (action === "backup") {
    watch();
    must(await call("backup.make", {}));
  } else if (action === "restore") {
    const list = must(await call("backup.list", {}));
    watch();
    must(
      await call("backup.restore", {
        ref: (list.value as { entries: { ref: string }[] }).entries.at(-1)!.ref,
      }),
    );
  } else if (action === "close") {
    must(
      await call("study.apply", {
        command: { do: "set", kind: "jar", id: "jar-1-04", fields: { syringeAMl: 12.3 } },
        afterSeq: opened.value.seq,
        by: "",
      }),
    );
    watch();
    closeContext(context);
  }
}
if (at === undefined) writeSync(1, `steps ${JSON.stringify(names)}\n`);

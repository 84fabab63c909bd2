// How long the host stands still while it parses, applies and writes a step of 10,000 rows: how late it answers meanwhile.
import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { writeDemo } from "../../main/service/standalone.ts";
import type { SimpleCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";

/** Ten thousand jars with four readings each, as an import makes them. */
export function importOf(jars: number): SimpleCommand[] {
  const read = (jarId: string, number: number, result: object): SimpleCommand => ({
    do: "add",
    kind: "reading",
    record: { id: `${jarId}-${number}`, jarId, result },
  });
  return Array.from({ length: jars }, (_, i) => {
    const id = `many-${i}`;
    return [
      {
        do: "add",
        kind: "jar",
        record: {
          id,
          seriesId: "series-1",
          label: `many ${i}`,
          order: 100 + i,
          syringeAMl: 10 + (i % 40) / 2,
        },
      } satisfies SimpleCommand,
      read(id, 1, { kind: "turbidity", value: 40 + (i % 500) / 8, dilution: 1 }),
      read(id, 2, { kind: "filtrate-tss", mgPerL: 200 + (i % 90) }),
      read(id, 3, { kind: "cst", seconds: 9 + (i % 13) }),
      read(id, 4, { kind: "cake-ts", pct: 12 + (i % 70) / 10 }),
    ];
  }).flat();
}

export interface HostStep {
  /** from the sending of the step to its acknowledgement */
  wholeMs: number;
  /** the latest answer to a request for a page meanwhile: how long the host's event loop stood still in one go */
  stillMs: number;
  /** the latest answer to a call that reads no study */
  callMs: number;
  /** the host's processor time for all that, the answering too; null where the system does not tell */
  processorMs: number | null;
}

/** The processor time a process has taken so far, where this system tells (Linux, whose ticks are 10 ms); else null. */
function processorMsOf(processId: number): number | null {
  try {
    const text = readFileSync(`/proc/${processId}/stat`, "utf8");
    const fields = text.slice(text.lastIndexOf(")") + 2).split(" ");
    return (Number(fields[11]) + Number(fields[12])) * 10;
  } catch {
    return null;
  }
}

/**
 * Sends such a step to a host of its own and asks for a page, again and again, until it is acknowledged. With `alone`
 * nothing is asked meanwhile, which tells how long the step itself takes.
 */
export async function timeHostStep(root: string, alone = false): Promise<HostStep> {
  const folder = mkdtempSync(join(tmpdir(), "flocwright-step-"));
  const path = join(folder, "step.flocwright");
  writeDemo(path, demoCommands, new Date().toISOString());
  const host = spawn(
    process.execPath,
    [join(root, "main", "headless.ts"), "host", "--study", path, "--port", "0", "--no-window"],
    { cwd: root, stdio: ["ignore", "pipe", "inherit"] },
  );
  try {
    const url = await new Promise<string>((resolve) =>
      host.stdout.once("data", (chunk) => resolve((JSON.parse(String(chunk)) as { url: string }).url)),
    );
    const entered = await fetch(url, { redirect: "manual" });
    const { origin } = new URL(url);
    const cookie = (entered.headers.get("set-cookie") ?? "").split(";")[0]!;
    const headers = { cookie, origin, "content-type": "application/json" };
    const call = async (name: string, body: string, more: Record<string, string> = {}) =>
      (await (
        await fetch(`${origin}/call/${name}`, { method: "POST", headers: { ...headers, ...more }, body })
      ).json()) as { ok: boolean; message?: string; value: { opening: string; seq: number } };
    const { value } = await call("study.current", "{}");
    const body = JSON.stringify({
      command: { do: "together", label: "ten thousand rows", commands: importOf(10_000) },
      afterSeq: value.seq,
      why: "",
      by: "",
      brief: true,
    });
    let under = true;
    const latest = async (ask: () => Promise<unknown>): Promise<number> => {
      let most = 0;
      while (under && !alone) {
        const asked = performance.now();
        await ask();
        most = Math.max(most, performance.now() - asked);
        await new Promise((resolve) => setTimeout(resolve, 2));
      }
      return most;
    };
    const before = processorMsOf(host.pid!);
    const start = performance.now();
    const stepped = call("study.apply", body, { "x-flocwright-opening": value.opening }).finally(
      () => (under = false),
    );
    const still = latest(() => fetch(`${origin}/`, { headers: { cookie } }).then((page) => page.text()));
    const calls = latest(() => call("host.about", "{}"));
    const answer = await stepped;
    const wholeMs = performance.now() - start;
    if (!answer.ok) throw new Error(answer.message);
    const after = processorMsOf(host.pid!);
    const processorMs = before === null || after === null ? null : after - before;
    return { wholeMs, stillMs: await still, callMs: await calls, processorMs };
  } finally {
    host.kill("SIGTERM");
    await new Promise((resolve) => host.once("exit", resolve));
    rmSync(folder, { recursive: true, force: true });
  }
}

if (import.meta.url === pathToFileURL(process.argv[1] ?? "").href)
  for (const alone of [false, true])
    console.log(
      JSON.stringify({ alone, ...(await timeHostStep(join(import.meta.dirname, "..", ".."), alone)) }),
    );

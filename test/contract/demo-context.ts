import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { createDispatcher } from "../../main/dispatch.ts";
import { createContext, openAtStart, type Context } from "../../main/service.ts";
import { writeDemo } from "../../main/service/standalone.ts";
import { demoCommands } from "../../src/study/demo.ts";

/** The moment of every demo opened here. */
export const now = "2026-03-01T12:00:00.000Z";

/** The invented demo, written to a folder of its own and opened, with the way to call the service on it. */
export function openedDemo(): {
  folder: string;
  path: string;
  context: Context;
  call: ReturnType<typeof createDispatcher>;
} {
  const folder = mkdtempSync(join(tmpdir(), "flocwright-contract-"));
  const path = join(folder, "study.flocwright");
  const written = writeDemo(path, demoCommands, now);
  if (!written.ok) throw new Error(written.message);
  const context = createContext({ host: "loopback", version: "0", folder, dialogs: null, now: () => now });
  if (!openAtStart(context, path).ok) throw new Error("not opened");
  return { folder, path, context, call: createDispatcher(context) };
}

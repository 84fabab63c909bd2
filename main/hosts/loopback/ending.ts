import { closeContext, type Context } from "../../service.ts";
import { whenAncestorsGo } from "./ancestors.ts";
import type { LoopbackHost } from "./server.ts";

/** A closed terminal, Ctrl+C, a system shutting down: what asks a host to end. SIGBREAK is Windows' Ctrl+Break. */
const endings = ["SIGINT", "SIGTERM", "SIGHUP", "SIGBREAK"] as const;

const longestMs = 5000;

/**
 * Makes the one way a loopback host ends: the study closed and its lock given back first, then the port, then the
 * process. It is taken by every signal that asks for an end and by a fault nobody caught. Calling it twice is calling it once.
 * `andAlso` clears up what else was started, within five seconds.
 */
export function endGracefully(
  context: Context,
  running: LoopbackHost,
  andAlso: () => Promise<void> = () => Promise.resolve(),
): (code?: number) => void {
  let ending = false;
  const end = (code = 0) => {
    if (ending) return;
    ending = true;
    closeContext(context);
    setTimeout(() => process.exit(code), longestMs);
    void Promise.allSettled([running.close(), andAlso()]).then(() => process.exit(code));
  };
  for (const signal of endings) process.on(signal, () => end());
  process.on("uncaughtException", (error) => {
    process.stderr.write(`Flocwright had to end: ${error.message}. What was saved is safe.\n`);
    end(1);
  });
  if (process.env["npm_lifecycle_event"] !== undefined) whenAncestorsGo(() => end());
  // A closed terminal also closes what is printed on; nobody reads it any more, which is no fault.
  for (const stream of [process.stdout, process.stderr]) stream.on("error", () => undefined);
  return end;
}

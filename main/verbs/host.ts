import { existsSync } from "node:fs";
import { resolve } from "node:path";
import { closeContext, createContext, openAtStart } from "../service.ts";
import { endGracefully } from "../hosts/loopback/ending.ts";
import { startLoopback } from "../hosts/loopback/server.ts";
import { loopbackSupport } from "../hosts/loopback/support.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { ensureBuilt } from "../hosts/loopback/build.ts";
import { numberOption } from "./decimal-option.ts";
import { readArguments, type Verb } from "./verb.ts";

const usage = "host --study FILE.flocwright --port N --no-window";

/** `host`: serves the screens on 127.0.0.1 until it is ended. */
export const host: Verb = {
  usage,
  stays: true,
  run: runHost,
};

async function runHost(args: string[]): Promise<Outcome<unknown>> {
  const parsed = readArguments(
    args,
    { study: { type: "string" }, port: { type: "string" }, "no-window": { type: "boolean" } },
    usage,
  );
  if (!parsed.ok) return parsed;
  const { positionals, values } = parsed.value;
  if (positionals.length > 0) return bad(`"${positionals[0]}" is not expected here. Usage: ${usage}`);
  if (typeof values["study"] !== "string") return bad(`--study is missing. Usage: ${usage}`);
  if (values["no-window"] !== true)
    return bad("From the terminal the host opens no window: add --no-window (npm start opens one).");
  const port = numberOption("port", String(values["port"] ?? "0"), 0, 65535, true);
  if (!port.ok) return port;
  const path = resolve(values["study"]);
  if (!existsSync(path)) return bad(`${values["study"]}: there is no such file.`);
  const built = await ensureBuilt();
  if (!built.ok) return built;
  const context = createContext(loopbackSupport(path));
  const opened = openAtStart(context, path);
  if (!opened.ok) return bad(`${values["study"]}: ${opened.message}`);
  try {
    const running = await startLoopback(context, { port: port.value, pagesFolder: built.value, once: false });
    endGracefully(context, running);
    return good({ url: running.url });
  } catch (error) {
    closeContext(context);
    return bad(
      (error as NodeJS.ErrnoException).code === "EADDRINUSE"
        ? `Port ${port.value} is in use: choose another, or 0 for a free one.`
        : `Port ${port.value} cannot be used.`,
    );
  }
}

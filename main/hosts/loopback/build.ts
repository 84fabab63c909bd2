import { spawn } from "node:child_process";
import { existsSync, readdirSync, statSync } from "node:fs";
import { join } from "node:path";
import { bad, good, type Outcome } from "../../../src/outcome.ts";

const root = join(import.meta.dirname, "..", "..", "..");
const pages = join(root, "out", "renderer");

function newest(path: string): number {
  const stat = statSync(path);
  if (!stat.isDirectory()) return stat.mtimeMs;
  return Math.max(stat.mtimeMs, ...readdirSync(path).map((name) => newest(join(path, name))));
}

/** Whether the built screens are missing or older than what they are built from. */
function isStale(): boolean {
  const index = join(pages, "index.html");
  if (!existsSync(index)) return true;
  const built = statSync(index).mtimeMs;
  return ["renderer", "src", "main", "package-lock.json", "electron.vite.config.ts"].some((name) => {
    const path = join(root, name);
    return existsSync(path) && newest(path) > built;
  });
}

/** Builds the screens where they are missing or out of date; answers the folder they are in. */
export async function ensureBuilt(): Promise<Outcome<string>> {
  if (!isStale()) return good(pages);
  const code = await new Promise<number | null>((resolve) => {
    const script = join(root, "node_modules", "electron-vite", "bin", "electron-vite.js");
    const child = spawn(process.execPath, [script, "build", "--logLevel", "warn"], {
      cwd: root,
      stdio: ["ignore", 2, 2],
    });
    child.on("exit", resolve);
    child.on("error", () => resolve(1));
  });
  return code === 0 && existsSync(join(pages, "index.html"))
    ? good(pages)
    : bad("The screens could not be built: run npm ci, then try again.");
}

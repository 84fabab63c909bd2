// Packs the desktop app for this machine's system: node scripts/package.mjs [--win] [--mac] [--linux] [--dir].
// electron-builder is fetched for the occasion at one pinned version, since it is needed for nothing else.
import { spawnSync } from "node:child_process";
import { join } from "node:path";

const root = join(import.meta.dirname, "..");
const builder = "electron-builder@26.17.0";

function run(command, args) {
  const shell = process.platform === "win32";
  const { status } = spawnSync(command, args, { cwd: root, stdio: "inherit", shell });
  if (status !== 0) process.exit(status ?? 1);
}

run("npm", ["run", "-s", "build"]);
run("npx", ["--yes", builder, "--publish", "never", ...process.argv.slice(2)]);

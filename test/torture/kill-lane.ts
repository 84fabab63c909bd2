// Kills a working process a number of times on one study and prints the counts: a process of its own, so that the
// looking over of one study does not hold up the kills of another.
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { killAtRandom } from "../storage/kills.ts";

const [seed, kills] = process.argv.slice(2).map(Number) as [number, number];
const folder = mkdtempSync(join(tmpdir(), "flocwright-torture-"));
try {
  console.log(JSON.stringify(await killAtRandom(folder, seed, kills)));
} finally {
  rmSync(folder, { recursive: true, force: true });
}

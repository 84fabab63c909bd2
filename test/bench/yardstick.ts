import { spawnSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";

/** What the refits were timed on, so that anybody can time the same with another program. */
export interface BenchData {
  valley: { x: number[]; fitted: number[]; residuals: number[]; parameters: number[] };
  surface: { design: number[][]; y: number[] };
}

/**
 * With --json writes the data to test-results/bench-data.json; where a python3 with scipy is installed, times the same
 * refits with scipy's curve_fit and numpy's lstsq in this run and prints the ratios (goals 10 and 3).
 */
export function compareWithYardstick(data: BenchData, ours: { refitUs: number; surfaceUs: number }): void {
  const folder = join(import.meta.dirname, "..", "..", "test-results");
  mkdirSync(folder, { recursive: true });
  const path = join(folder, "bench-data.json");
  writeFileSync(path, JSON.stringify(data));
  console.log(JSON.stringify({ name: "data of the refits", file: "test-results/bench-data.json" }));
  const script = join(import.meta.dirname, "yardstick.py");
  for (const python of ["/usr/bin/python3", "python3"]) {
    const result = spawnSync(python, [script, path], { encoding: "utf8", timeout: 120_000 });
    if (result.status !== 0) continue;
    const { curveFitUs, lstsqUs } = JSON.parse(result.stdout) as { curveFitUs: number; lstsqUs: number };
    console.log(
      JSON.stringify({
        name: "bootstrap refits against scipy curve_fit",
        theirsUs: curveFitUs,
        oursUs: ours.refitUs,
        ratio: curveFitUs / ours.refitUs,
        goal: 10,
      }),
    );
    console.log(
      JSON.stringify({
        name: "surface draws against numpy lstsq",
        theirsUs: lstsqUs,
        oursUs: ours.surfaceUs,
        ratio: lstsqUs / ours.surfaceUs,
        goal: 3,
      }),
    );
    return;
  }
  console.log(JSON.stringify({ name: "yardstick", skipped: "no python3 with scipy was found" }));
}

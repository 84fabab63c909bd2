import { rmSync } from "node:fs";
import { expect, test } from "vitest";
import { tallyLine } from "./chance.ts";
import { fuzzFolder } from "./folder.ts";
import { runVerbCases } from "./verb-cases.ts";

for (const seed of [31, 32])
  test(`terminal verbs, seed ${seed}`, { timeout: 180_000 }, async () => {
    const folder = fuzzFolder();
    try {
      const tally = await runVerbCases(seed, 3000, folder);
      process.stdout.write(`${tallyLine(tally)}\n`);
      expect(tally.faults).toEqual([]);
      expect(tally.accepted).toBeGreaterThan(400);
      expect(tally.refused).toBeGreaterThan(800);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

import { rmSync } from "node:fs";
import { expect, test } from "vitest";
import { tallyLine } from "./chance.ts";
import { runContractCases } from "./contract-cases.ts";
import { fuzzFolder } from "./folder.ts";

// One run a seed, so that a failure can be found again by its seed alone.
for (const seed of [11, 12, 13, 14])
  test(`contract calls, seed ${seed}`, { timeout: 180_000 }, async () => {
    const folder = fuzzFolder();
    try {
      const tally = await runContractCases(seed, 3000, folder);
      process.stdout.write(`${tallyLine(tally)}\n`);
      expect(tally.faults).toEqual([]);
      expect(tally.accepted).toBeGreaterThan(400);
      expect(tally.refused).toBeGreaterThan(400);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

import { rmSync } from "node:fs";
import { expect, test } from "vitest";
import { tallyLine } from "./chance.ts";
import { fuzzFolder } from "./folder.ts";
import { runStudyFileCases } from "./study-file-cases.ts";

for (const seed of [21, 22, 23, 24])
  test(`study files, seed ${seed}`, { timeout: 600_000 }, async () => {
    const folder = fuzzFolder();
    try {
      const tally = await runStudyFileCases(seed, 500, folder);
      process.stdout.write(`${tallyLine(tally)}\n`);
      expect(tally.faults).toEqual([]);
      expect(tally.accepted).toBeGreaterThan(30);
      expect(tally.refused).toBeGreaterThan(150);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

import { rmSync } from "node:fs";
import { expect, test } from "vitest";
import { tallyLine } from "./chance.ts";
import { fuzzFolder } from "./folder.ts";
import { runStudyFileCases } from "./study-file-cases.ts";

for (const seed of [21, 22])
  test(`study files, seed ${seed}`, { timeout: 180_000 }, async () => {
    const folder = fuzzFolder();
    try {
      const tally = await runStudyFileCases(seed, 1250, folder);
      process.stdout.write(`${tallyLine(tally)}\n`);
      expect(tally.faults).toEqual([]);
      expect(tally.accepted).toBeGreaterThan(50);
      expect(tally.refused).toBeGreaterThan(300);
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

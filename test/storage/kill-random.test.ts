import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { killAtRandom } from "./kills.ts";

const total = { tried: 0, survived: 0 };

describe.concurrent("a process killed at seeded random moments while it works", () => {
  for (const seed of [7, 8])
    test(`20 kills, seed ${seed}`, { timeout: 240_000 }, async () => {
      const folder = mkdtempSync(join(tmpdir(), "flocwright-kill-"));
      try {
        const count = await killAtRandom(folder, seed, 20);
        total.tried += count.tried;
        total.survived += count.survived;
        process.stdout.write(`kills, seed ${seed}: ${JSON.stringify(count)}\n`);
        expect(count).toMatchObject({ tried: 20, survived: 20 });
        // Otherwise nothing was under way when it was killed, and nothing was shown.
        expect(count.changes).toBeGreaterThan(10);
        expect(count.drafts).toBeGreaterThan(0);
      } finally {
        rmSync(folder, { recursive: true, force: true });
      }
    });
  afterAll(() => {
    process.stdout.write(`kills survived / tried: ${total.survived} / ${total.tried}\n`);
  });
});

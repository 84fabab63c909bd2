import { describe, expect, test } from "vitest";
import { killAtSteps, stepActions } from "./step-kills.ts";

describe("killed between every two writes", () => {
  for (const action of stepActions)
    test(action, { timeout: 240_000 }, () => {
      const { tried, survived } = killAtSteps(action, false);
      process.stdout.write(`kills while ${action}, survived / tried: ${survived} / ${tried}\n`);
      expect(tried).toBeGreaterThan(1);
      expect(survived).toBe(tried);
    });
});

import { expect, test } from "vitest";
import { difference } from "../../../src/units/difference.ts";

test("two numbers that differ by rounding alone differ by nothing; others by what they do", () => {
  // 0.1 + 0.2 is not 0.3 in binary, by 5.6e-17
  expect(0.1 + 0.2 - 0.3).not.toBe(0);
  expect(difference(0.1 + 0.2, 0.3)).toBe(0);
  expect(difference(0, 0)).toBe(0);
  expect(difference(148.2, 148)).toBeCloseTo(0.2, 12);
  expect(difference(1, 1.000001)).toBeCloseTo(-1e-6, 12);
  expect(difference(0, 5e-12)).toBe(-5e-12);
});

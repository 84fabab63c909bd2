import { expect } from "vitest";

/** Digits in which two numbers agree (log relative error); a certified 0 counts absolutely. */
export function digits(found: number, certified: number): number {
  const error = certified === 0 ? Math.abs(found) : Math.abs(found - certified) / Math.abs(certified);
  return error === 0 ? 16 : -Math.log10(error);
}

export function expectDigits(found: number, certified: number, wanted: number, what: string): void {
  expect(digits(found, certified), `${what}: ${found} against ${certified}`).toBeGreaterThanOrEqual(wanted);
}

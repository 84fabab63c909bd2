import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  halfWidth,
  writeMoney,
  writerBeside,
  writerOfRange,
  writeSignificant,
} from "../../src/units/digits.ts";
import { entryShown } from "../../src/units/number-entry.ts";
import { toCanonical, toShown, type QuantityKind } from "../../src/units/display.ts";

const holds = <T extends [unknown, ...unknown[]]>(
  name: string,
  parts: { [I in keyof T]: fc.Arbitrary<T[I]> },
  check: (...args: T) => void,
) => test(name, () => fc.assert(fc.property(...parts, check)));
const decimalsOf = (text: string) => text.split(".")[1]?.length ?? 0;
const significantOf = (text: string) =>
  text.replace(/^-/, "").replace(".", "").replace(/^0+/, "").replace(/0+$/, "").length;
/** a number of any usual size, with digits beyond what anybody measures */
const size = fc
  .tuple(fc.double({ min: 1, max: 9.999, noNaN: true }), fc.integer({ min: -3, max: 6 }))
  .map(([digits, power]) => digits * 10 ** power);
const share = fc.double({ min: 1e-4, max: 3, noNaN: true });

describe("digits by the spread", () => {
  holds("number, spread and both ends end at one place", [size, share], (value, relative) => {
    const spread = value * relative;
    const write = writerBeside(value, spread, ".");
    const texts = [value, spread, value - spread, value + spread].map(write);
    expect(new Set(texts.map(decimalsOf)).size).toBe(1);
  });
  holds(
    "rounding takes less than a quarter of the spread, unless digits run out",
    [size, share],
    (value, relative) => {
      fc.pre(relative > 2e-3);
      const spread = value * relative;
      const write = writerBeside(value, spread, ".");
      expect(Math.abs(Number(write(value)) - value)).toBeLessThanOrEqual(0.25 * spread);
    },
  );
  holds(
    "no digits of noise: five significant ones at most, and none a tenth of the spread's place",
    [size, share],
    (value, relative) => {
      const spread = value * relative;
      const write = writerBeside(value, spread, ".");
      expect(significantOf(write(value))).toBeLessThanOrEqual(5);
      const step = 10 ** -decimalsOf(write(spread));
      // a number surer than its spread keeps two digits, whatever the spread says
      const floor = 10 ** (Math.floor(Math.log10(value)) - 1);
      if (step < 1) expect(step).toBeGreaterThan(Math.min(0.03 * spread, 0.5 * floor));
    },
  );
  holds("without a spread, three significant digits by habit", [size], (value) => {
    expect(significantOf(writeSignificant(value, "."))).toBeLessThanOrEqual(3);
    expect(Math.abs(Number(writeSignificant(value, ".")) / value - 1)).toBeLessThanOrEqual(0.005 + 1e-9);
  });
  holds("both ends of a range end at one place", [size, size], (one, other) => {
    const write = writerOfRange(one, other, ".");
    expect(decimalsOf(write(one))).toBe(decimalsOf(write(other)));
  });
  holds("money keeps its cents at most", [size], (value) => {
    expect(decimalsOf(writeMoney(value, "."))).toBeLessThanOrEqual(2);
  });

  // worked by hand from the rule
  for (const [value, low, high, texts] of [
    [5.214, 4.998, 5.432, ["5.21", "5.00", "5.43"]],
    [10.428, 9.996, 10.864, ["10.4", "10.0", "10.9"]],
    [94.94, 94.3, 95.59, ["94.9", "94.3", "95.6"]],
    [5.2, 4.9, 5.5, ["5.2", "4.9", "5.5"]],
    [1035, 900, 1170, ["1040", "900", "1170"]],
    [4.5, 2.2, 9.8, ["4.5", "2.2", "9.8"]],
  ] as const)
    test(`${value} from ${low} to ${high}`, () => {
      const write = writerBeside(value, halfWidth(value, low, high), ".");
      expect([value, low, high].map(write)).toEqual(texts);
    });
});

describe("entered numbers in another unit", () => {
  const kinds: QuantityKind[] = [
    "densityKgPerL",
    "massKg",
    "flowM3PerH",
    "volumeL",
    "lengthM",
    "pressureKPa",
  ];
  holds(
    "come back as they were typed in that unit, and grow no tail in the other",
    [fc.constantFrom(...kinds), fc.integer({ min: 1, max: 99_999 }), fc.integer({ min: 0, max: 3 })],
    (kind, digits, decimals) => {
      const typed = digits / 10 ** decimals;
      const stored = toCanonical(typed, kind, "us");
      expect(entryShown(stored, toShown(stored, kind, "us"))).toBeCloseTo(typed, 6);
      expect(entryShown(typed, typed)).toBe(typed);
      const shown = entryShown(typed, toShown(typed, kind, "us"));
      expect(significantOf(String(shown))).toBeLessThanOrEqual(Math.max(4, significantOf(String(typed)) + 1));
    },
  );
});

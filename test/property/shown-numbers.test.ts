import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  halfWidth,
  writeFixed,
  writeMoney,
  writerBeside,
  writerOfRange,
  writeSignificant,
} from "../../src/units/digits.ts";
import { mayBeTyped, parseNumber, writeNumber, type DecimalMark } from "../../src/units/number-entry.ts";
import { asEntered, asGiven, byHabit, type Told } from "../../src/units/quantity-text.ts";

const marks = fc.constantFrom<DecimalMark>(".", ",");
/** a number of any size that is stored or reckoned, zero and minus zero among them */
const any = fc.oneof(
  fc.constantFrom(0, -0, 1e-7, -1e-7, 1e21, 1e-320, 0.05, -0.004, 999.96, 1234567.891),
  fc.double({ min: -1e15, max: 1e15, noNaN: true }),
  fc
    .tuple(fc.double({ min: 1, max: 9.999, noNaN: true }), fc.integer({ min: -12, max: 22 }), fc.boolean())
    .map(([digits, power, minus]) => (minus ? -1 : 1) * digits * 10 ** power),
);
const endless = fc.constantFrom(NaN, Infinity, -Infinity);
/** digits with one decimal mark at most: no exponent, no thousands mark, no word */
const plain: Record<DecimalMark, RegExp> = { ".": /^-?\d+(\.\d+)?$/, ",": /^-?\d+(,\d+)?$/ };

/** What a text says, and that it is a number as a person writes it. */
function read(text: string, mark: DecimalMark): number {
  expect(text).toMatch(plain[mark]);
  expect(text).not.toMatch(/^-0([.,]0*)?$/);
  const parsed = parseNumber(text, mark);
  if (!parsed.ok) throw new Error(parsed.message);
  return parsed.value;
}

const told = (mark: DecimalMark): Told => ({ kind: "doseKgPerT", system: "metric", mark });

describe("whatever number is shown", () => {
  const holds = (name: string, check: (value: number, mark: DecimalMark) => void) =>
    test(name, () => fc.assert(fc.property(any, marks, check), { seed: 41 }));
  holds("an entry reads back as it was", (value, mark) => {
    expect(read(writeNumber(value, mark), mark)).toBe(value === 0 ? 0 : value);
  });
  holds("by habit it reads back within half of its third digit", (value, mark) => {
    expect(Math.abs(read(writeSignificant(value, mark), mark) - value)).toBeLessThanOrEqual(
      0.00501 * Math.abs(value),
    );
  });
  holds("money reads back within half a cent or half of its fourth digit", (value, mark) => {
    expect(Math.abs(read(writeMoney(value, mark), mark) - value)).toBeLessThanOrEqual(
      Math.max(0.00501, 0.000501 * Math.abs(value)),
    );
  });
  holds("a quantity is a number too, given or reckoned", (value, mark) => {
    for (const write of [byHabit, asGiven, asEntered]) read(write(told(mark))(value), mark);
  });
  test("with decimals, beside a spread, or at the ends of a range it is a number too", () => {
    fc.assert(
      fc.property(any, any, fc.integer({ min: -4, max: 20 }), marks, (value, other, decimals, mark) => {
        const fixed = read(writeFixed(value, decimals, mark), mark);
        expect(Math.abs(fixed - value)).toBeLessThanOrEqual(
          Math.max(0.51 * 10 ** -decimals, 1e-15 * Math.abs(value)),
        );
        const beside = writerBeside(value, Math.abs(other), mark);
        const range = writerOfRange(value, other, mark);
        for (const write of [beside, range]) for (const one of [value, other]) read(write(one), mark);
        expect(halfWidth(value, other, null)).toBe(Math.abs(value - other));
      }),
      { seed: 42 },
    );
  });
  test("what is no number is nothing at all", () => {
    fc.assert(
      fc.property(endless, marks, (value, mark) => {
        for (const text of [
          writeNumber(value, mark),
          writeFixed(value, 2, mark),
          writeSignificant(value, mark),
          writeMoney(value, mark),
          writerBeside(value, 1, mark)(value),
          writerBeside(1, value, mark)(value),
          writerOfRange(value, 1, mark)(value),
        ])
          expect(text).toBe("");
      }),
    );
  });
});

describe("a number that somebody gave", () => {
  test("is told as it was typed, with up to six digits", () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 999_999 }),
        fc.integer({ min: 0, max: 5 }),
        marks,
        (n, places, mark) => {
          const typed = writeNumber(n / 10 ** places, mark);
          const parsed = parseNumber(typed, mark);
          expect(parsed.ok && mayBeTyped(parsed.value)).toBe(true);
          expect(parsed.ok && asGiven(told(mark))(parsed.value)).toBe(typed);
        },
      ),
    );
  });
  test("a hand-typed 5.275 stays 5.275, in lb per short ton 10.55; what a rule found is 5.21", () => {
    expect(asGiven(told("."))(5.275)).toBe("5.275");
    expect(asGiven({ ...told(","), system: "us" })(5.275)).toBe("10,55");
    expect(asGiven(told(","))(5.213912345)).toBe("5,21");
  });
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { readTable, numberAt } from "../../src/exchange/table.ts";
import { doseFromSyringe, syringeForDose } from "../../src/bench/dose.ts";
import { toCanonical, toShown, type QuantityKind } from "../../src/units/display.ts";
import { writeSignificant } from "../../src/units/digits.ts";
import { parseNumber, parseReading, writeNumber } from "../../src/units/number-entry.ts";

const value = fc.double({ noNaN: true, noDefaultInfinity: true, min: -1e12, max: 1e12 });

describe("number entry", () => {
  test("what is written reads back as the same number under either mark", () => {
    fc.assert(
      fc.property(value, fc.constantFrom("." as const, "," as const), (number, mark) => {
        const parsed = parseNumber(writeNumber(number, mark), mark);
        expect(parsed).toEqual({ ok: true, value: number === 0 ? 0 : number });
      }),
    );
  });
  test("significant digits lose no more than they say", () => {
    fc.assert(
      fc.property(value, (number) => {
        const parsed = parseNumber(writeSignificant(number, ".", 6), ".");
        expect(parsed.ok && Math.abs(parsed.value - number)).toBeLessThanOrEqual(Math.abs(number) * 5.1e-6);
      }),
    );
  });
  test("any text at all is answered without an exception, and never with a number that is not finite", () => {
    fc.assert(
      fc.property(fc.string(), fc.constantFrom("." as const, "," as const, null), (text, mark) => {
        const parsed = parseReading(text, mark);
        expect(parsed.ok ? Number.isFinite(parsed.value.value) : parsed.message.length > 5).toBe(true);
      }),
    );
  });
  test("the rule of the decimal mark, case by case", () => {
    expect(parseNumber("1,234", ",")).toEqual({ ok: true, value: 1.234 });
    expect(parseNumber("1,234", ".").ok).toBe(false);
    expect(parseNumber("1,234", null)).toMatchObject({
      ok: false,
      message: expect.stringContaining("two ways") as string,
    });
    expect(parseNumber("2,5", null)).toEqual({ ok: true, value: 2.5 });
    expect(parseNumber("0,125", null)).toEqual({ ok: true, value: 0.125 });
    for (const text of [
      "1.234,5",
      "1,234.5",
      "1 234",
      "1'234",
      "0x10",
      "NaN",
      "Infinity",
      "5 mg/L",
      "--1",
      "1e999",
      "",
    ])
      expect(parseNumber(text, "."), text).toMatchObject({ ok: false });
    expect(parseReading(">1000", ".")).toEqual({ ok: true, value: { value: 1000, censored: "above" } });
    expect(parseReading("< 2,5", ",")).toEqual({ ok: true, value: { value: 2.5, censored: "below" } });
  });
});

test("a unit system shows a number differently and stores it the same", () => {
  const kinds: QuantityKind[] = [
    "doseKgPerT",
    "flowM3PerH",
    "flowLPerH",
    "temperatureC",
    "densityKgPerL",
    "kgPerH",
    "volumeL",
  ];
  fc.assert(
    fc.property(
      fc.double({ min: 1e-3, max: 1e6, noNaN: true }),
      fc.constantFrom(...kinds),
      (number, kind) => {
        expect(toCanonical(toShown(number, kind, "us"), kind, "us") / number).toBeCloseTo(1, 9);
        expect(toShown(number, kind, "metric")).toBe(number);
      },
    ),
  );
  expect(toShown(1, "doseKgPerT", "us")).toBe(2);
});

test("dose to volume to dose", () => {
  const amount = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
  fc.assert(
    fc.property(
      amount(0.01, 100),
      amount(50, 5000),
      amount(0.9, 1.2),
      amount(0.1, 40),
      amount(0.01, 10),
      (dose, volume, density, ts, strength) => {
        const basis = {
          sampleVolumeMl: volume,
          sampleDensityKgPerL: density,
          totalSolidsPct: ts,
          solutionActivePct: strength,
          solutionDensityKgPerL: 1,
        };
        const syringe = syringeForDose(dose, basis);
        const back = syringe.ok ? doseFromSyringe(syringe.value, basis) : syringe;
        expect(back.ok && back.value / dose).toBeCloseTo(1, 10);
      },
    ),
  );
});

describe("tables", () => {
  test("semicolons and decimal commas, a byte-order mark, and Windows line ends", () => {
    const table = readTable("\uFEFFdose;ntu\r\n2,0;412,5\r\n3;>1000\r\n", "f.csv", null);
    expect(table).toMatchObject({ ok: true, value: { mark: ",", separator: ";", heads: ["dose", "ntu"] } });
    if (table.ok) expect(numberAt(table.value, table.value.rows[0]!, 1)).toEqual({ ok: true, value: 412.5 });
  });
  test("faults name file, line and column", () => {
    const table = readTable("dose,ntu\n2,41x\n", "f.csv", ".");
    expect(table.ok && numberAt(table.value, table.value.rows[0]!, 1)).toMatchObject({
      ok: false,
      message: expect.stringMatching(/^f\.csv: line 2, column ntu: /) as string,
    });
    for (const [text, words] of [
      ["", "empty"],
      ["dose,ntu\n", "no rows"],
      ["dose,dose\n1,2\n", "two columns"],
      [",dose\n1,2\n", "no head"],
      ["dose,ntu\n1,2,3\n", "line 2 has more cells"],
      ['dose,ntu\n"1,2\n', "never closed"],
      ["a;b\n1,5;2.5\n", "another decimal mark"],
    ] as const)
      expect(readTable(text, "f.csv", null), text).toMatchObject({
        ok: false,
        message: expect.stringContaining(words) as string,
      });
  });
  test("a comma that separates is not the decimal mark; with semicolons an undecided number is refused", () => {
    expect(readTable("a,b\n1.234,2.345\n", "f.csv", null)).toMatchObject({ ok: true, value: { mark: "." } });
    const open = readTable("a;b\n1,234;2,345\n", "f.csv", null);
    expect(open).toMatchObject({ ok: true, value: { mark: null } });
    expect(open.ok && numberAt(open.value, open.value.rows[0]!, 0)).toMatchObject({ ok: false });
    const given = readTable("a;b\n1,234;2,345\n", "f.csv", ",");
    expect(given.ok && numberAt(given.value, given.value.rows[0]!, 0)).toEqual({ ok: true, value: 1.234 });
  });
  test("lines are counted through quoted line ends", () => {
    const table = readTable('a,b\n"one\ntwo",1\n3,x\n', "f.csv", ".");
    expect(table.ok && table.value.rows.map((row) => row.line)).toEqual([2, 4]);
  });
});

test("a table's number beyond any measurement is refused in words, before a fit can overflow on it", () => {
  const cell = (text: string) => {
    const table = readTable(`x\n${text}\n`, "trial.csv", ".");
    if (!table.ok) throw new Error(table.message);
    return numberAt(table.value, table.value.rows[0]!, 0);
  };
  expect(cell("1e15")).toEqual({ ok: true, value: 1e15 });
  expect(cell("0")).toEqual({ ok: true, value: 0 });
  expect(cell("-1e308")).toEqual({
    ok: false,
    message: 'trial.csv: line 2, column x: "-1e308" is too large for a measured number.',
  });
  expect(cell("5e-324")).toMatchObject({
    ok: false,
    message: expect.stringContaining("too small") as string,
  });
});

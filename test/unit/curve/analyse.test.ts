import { describe, expect, test } from "vitest";
import { type ResponseName, responseSpecs } from "../../../src/responses/registry.ts";
import { analyseJars } from "../../../src/curve/analyse.ts";
import type { AnalyseRow } from "../../../src/curve/analyse-types.ts";

type Cell = number | string;

function analyse(response: ResponseName, doses: number[], values: Cell[], more: Partial<AnalyseRow>[] = []) {
  const rows = doses.map((dose, i): AnalyseRow => {
    const text = String(values[i]);
    return {
      row: i + 2,
      jar: String(i + 1),
      doseA: dose,
      doseB: 0,
      block: null,
      order: null,
      readings: {
        [response]: { value: Number(text.replace(">", "")), censored: text.startsWith(">") ? "above" : null },
      },
      ...more[i],
    };
  });
  const result = analyseJars(rows, {
    name: "f.csv",
    responses: responseSpecs,
    number: (value) => String(Number(value.toPrecision(3))),
    jar: (row) => String(row - 1),
  });
  if (!result.ok) throw new Error(result.message);
  return result.value.analysis.responses[0]!;
}

const six = [2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 8, 8];
// Values below were drawn once from the shape named and written down; no published source.
const evenValley = [485, 475, 142, 151, 77.6, 72.9, 47.1, 47.6, 50.3, 47.7, 95.4, 111];

describe("a verdict where there is one", () => {
  test("a valley: dose, range over tied models, and the jar that moves it most", () => {
    const { verdict, suggested } = analyse("turbidity_ntu", six, evenValley);
    expect(suggested).toBe("quadratic");
    expect(verdict).toMatchObject({ kind: "optimum", reason: null });
    expect(verdict.dose).toBeGreaterThan(5.4);
    expect(verdict.dose).toBeLessThan(5.9);
    expect(verdict.sentence).toMatch(/^5\.\d+ kg\/t, .* to .*; .*jar \d+ moves it most\.$/);
  });
  test("six single jars of a clear valley are enough, whatever AICc charges", () => {
    const { verdict } = analyse("turbidity_ntu", [2, 3, 4, 5, 6, 8], [430, 146, 66, 45, 55, 130]);
    expect(verdict.kind).toBe("optimum");
    expect(verdict.warnings).toContain("single-jars");
  });
  test("a saturating cake has a knee", () => {
    const doses = [1, 1, 2, 2, 3, 3, 4, 4, 6, 6, 9, 9];
    const noise = [0.1, -0.12, 0.06, -0.05, 0.11, 0.02, -0.1, 0.08, -0.03, 0.07, 0.04, -0.09];
    const { verdict } = analyse(
      "cake_ts_pct",
      doses,
      doses.map((d, i) => 21 - 12 * Math.exp(-0.7 * d) + noise[i]!),
    );
    expect(verdict.kind).toBe("knee");
    expect(verdict.low).toBeLessThan(Math.log(20) / 0.7);
    expect(verdict.high).toBeGreaterThan(Math.log(20) / 0.7);
  });
  test("readings over the range enter as bounds and are said", () => {
    const values: Cell[] = [...evenValley];
    values[0] = ">400";
    values[1] = ">400";
    const { verdict, fits } = analyse("turbidity_ntu", six, values);
    expect(verdict.kind).toBe("optimum");
    expect(verdict.warnings).toContain("censored");
    expect(fits.every((fit) => fit.rss === null && fit.lackOfFit === null)).toBe(true);
  });
  test("no-polymer jars stay out of the ranking; a shape that holds at 0 is refitted with them", () => {
    const result = analyse("cake_ts_pct", [0, 2, 3, 4, 5, 6, 8], [9.6, 15.1, 17.4, 18.8, 19.5, 20.1, 20.3]);
    expect(result.suggested).toBe("saturating-exponential");
    expect(result.fits.filter((fit) => fit.zeroDose === "in").map((fit) => fit.model)).toEqual([
      "saturating-exponential",
    ]);
    // worked 5.3 of the trade table: knee 8.2692 lies beyond the last dose, 90 % at 6.3559 inside
    expect(result.verdict).toMatchObject({ kind: "none", reason: "outside-range" });
    expect(result.verdict.dose).toBeCloseTo(8.2692, 3);
    expect(result.verdict.sentence).toMatch(/90 % of the gain is reached at 6\.36 kg\/t/);
  });
});

describe("a refusal where there is none, with what to do", () => {
  const cases: [string, ResponseName, number[], Cell[], string, RegExp][] = [
    [
      "too few doses",
      "turbidity_ntu",
      [2, 2, 4, 4, 6, 6],
      [400, 420, 60, 66, 55, 58],
      "too-few-doses",
      /at least six doses/,
    ],
    ["five points", "turbidity_ntu", [2, 3, 4, 5, 6], [412, 148, 62, 47, 58], "too-few-doses", /too few/],
    ["one jar", "turbidity_ntu", [4], [60], "too-few-doses", /too few/],
    [
      "noise only",
      "turbidity_ntu",
      six,
      [212, 188, 196, 207, 184, 210, 199, 203, 190, 206, 201, 195],
      "no-effect",
      /does not change/,
    ],
    [
      "still falling",
      "turbidity_ntu",
      six,
      [300, 310, 215, 222, 160, 152, 108, 114, 80, 77, 39, 41],
      "not-curved",
      /add jars above 8 kg\/t/,
    ],
    [
      "only getting worse",
      "turbidity_ntu",
      six,
      [39, 41, 55, 53, 80, 77, 108, 114, 160, 152, 300, 310],
      "not-curved",
      /add jars below 2 kg\/t/,
    ],
    [
      "a hill instead of a valley",
      "turbidity_ntu",
      six,
      [50, 52, 90, 86, 140, 150, 160, 152, 120, 131, 45, 48],
      "not-curved",
      /no valley/,
    ],
    ["all jars equal", "turbidity_ntu", six, six.map(() => 100), "no-effect", /does not change/],
  ];
  for (const [name, response, doses, values, reason, words] of cases)
    test(name, () => {
      const { verdict } = analyse(response, doses, values);
      expect(verdict, verdict.sentence).toMatchObject({ kind: "none", reason });
      expect(verdict.sentence).toMatch(words);
      expect(JSON.stringify(verdict)).not.toMatch(/NaN|Infinity/);
    });
  test("an optimum beyond the doses says on which side to add jars", () => {
    const doses = [2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 8, 8];
    const noise = [0.05, -0.04, 0.03, -0.06, 0.04, 0.02, -0.03, 0.05, -0.05, 0.01, 0.02, -0.02];
    const { verdict } = analyse(
      "turbidity_ntu",
      doses,
      doses.map((d, i) => Math.exp(3.8 + 0.05 * (d - 10) ** 2 + noise[i]!)),
    );
    expect(verdict).toMatchObject({ kind: "none", reason: "outside-range" });
    expect(verdict.sentence).toMatch(/above/);
    expect(verdict.dose).toBeGreaterThan(8);
  });
  test("tied models with optima apart are ambiguous: worked 5.1 of the trade table", () => {
    const { verdict, suggested } = analyse(
      "turbidity_ntu",
      six,
      [412, 455, 148, 131, 62, 70, 47, 43, 58, 52, 121, 136],
    );
    expect(suggested).toBe("cubic-log");
    expect(verdict).toMatchObject({ kind: "none", reason: "ambiguous", dose: null });
    expect(verdict.modelInterval!.low).toBeCloseTo(5.127, 2);
    expect(verdict.high).toBeCloseTo(5.657, 2);
  });
});

test("a re-read is averaged into its jar; one jar with two doses is refused with both lines", () => {
  const rows = six.map((dose, i): AnalyseRow => ({
    row: i + 2,
    jar: i === 11 ? "11" : String(i + 1),
    doseA: dose,
    doseB: 0,
    block: null,
    order: null,
    readings: { turbidity_ntu: { value: evenValley[i]!, censored: null } },
  }));
  const words = { name: "f.csv", responses: responseSpecs, number: String, jar: String };
  const result = analyseJars(rows, words);
  expect(result.ok && result.value.analysis.responses[0]!.fits[0]!.n).toBe(11);
  expect(result.ok && result.value.analysis.responses[0]!.fits[0]!.rowsUsed).toHaveLength(12);
  rows[11] = { ...rows[11]!, doseA: 7 };
  expect(analyseJars(rows, words)).toMatchObject({
    ok: false,
    message: expect.stringMatching(/line 12 .*line 13/) as string,
  });
});

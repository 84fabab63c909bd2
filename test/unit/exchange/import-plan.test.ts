import { describe, expect, test } from "vitest";
import { guessUses, type ColumnUse } from "../../../src/exchange/columns.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import { applyCommand } from "../../../src/study/commands.ts";
import { benchStudy, imported, planned, worked } from "./bench-study.ts";

const firstJar = (state: ReturnType<typeof benchStudy>) => Object.values(state.jar)[0]!;
const refusal = (plan: ReturnType<typeof planned>) => (plan.ok ? "no refusal" : plan.message);

describe("a dose in any unit and basis becomes the volume that was injected (source: worked 1.1, recomputed independently)", () => {
  const cases: [string, string, number][] = [
    ["dose_a_kg_per_t", "3.98804", 3.98804],
    ["dose_a_kg_per_t_active", "3.98804", 3.98804],
    ["dose_a_kg_per_t_as_supplied", "9.49532", 3.98804],
    ["dose_a_lb_per_short_ton", "7.97607", 3.98804],
    ["dose_a_lb_per_short_ton_as_supplied", "18.9906", 3.98804],
    ["dose_a_mg_per_l_feed", "100.000", 3.98804],
    // 100.000 / 0.42, recomputed
    ["dose_a_mg_per_l_feed_as_supplied", "238.095", 3.98804],
    ["syringe_a_ml", "25.00", 3.98804],
  ];
  for (const [head, typed, kgPerT] of cases)
    test(`${head} ${typed}`, () => {
      const state = imported(planned(`jar,${head},turbidity_ntu\n1,${typed},44\n`));
      expect(firstJar(state).syringeAMl).toBeCloseTo(25, 3);
      expect(seriesChain(state, "series").jars[0]!.doseA.value).toBeCloseTo(kgPerT, 4);
      expect(firstJar(state).plannedDoseAKgPerT).toEqual(
        head === "syringe_a_ml" ? null : expect.closeTo(kgPerT, 4),
      );
    });
  test("dose 4.000 kg/t is 25.0750 mL, dose 0 is a no-polymer jar and needs nothing", () => {
    const state = imported(planned("jar,dose_a_kg_per_t,cst_s\n1,4.000,20\n2,0,90\n"));
    const jars = Object.values(state.jar);
    expect(jars[0]!.syringeAMl).toBeCloseTo(25.075, 4);
    expect(jars[1]).toMatchObject({ syringeAMl: 0, role: "no-polymer" });
  });
});

describe("what is missing for a dose is named, and nothing is added", () => {
  const cases: [string, Parameters<typeof benchStudy>[0], string, RegExp][] = [
    [
      "the active share",
      { product: { activePct: null } },
      "dose_a_kg_per_t_as_supplied",
      /column dose_a_kg_per_t_as_supplied.*enter the active share of Emulsion/,
    ],
    [
      "the total solids",
      { sample: { provisionalTotalSolidsPct: null } },
      "dose_a_mg_per_l_feed",
      /total solids of the sample: enter the dish masses/,
    ],
    [
      "the stock's strength",
      { stock: { neatMassG: null } },
      "syringe_a_ml",
      /strength of Stock: weigh the neat product/,
    ],
    ["the stock", { series: { stockAId: null } }, "syringe_a_ml", /pick the stock solution for polymer A/],
    [
      "the stock's density",
      { stock: { solutionDensityKgPerL: null } },
      "dose_a_kg_per_t",
      /enter the density of Stock/,
    ],
    [
      "the sample volume",
      { series: { sampleVolumeMl: null } },
      "dose_a_kg_per_t",
      /enter the sample volume of series "Series"/,
    ],
  ];
  for (const [what, changes, head, words] of cases)
    test(what, () => expect(refusal(planned(`${head}\n5\n`, benchStudy(changes)))).toMatch(words));
});

describe("the unit and the basis of a dose are never guessed", () => {
  test("a guess leaves both open, and an open choice refuses the file", () => {
    const heads = ["Jar no.", "Dose (kg/t)", "Turbidity NTU"];
    const uses = guessUses(heads);
    expect(uses).toEqual([
      { as: "field", field: "jar" },
      { as: "dose", polymer: "a", unit: null, basis: null },
      { as: "field", field: "turbidity_ntu" },
    ]);
    const text = `${heads.join(",")}\n1,4,44\n`;
    expect(refusal(planned(text, benchStudy(), { uses }))).toBe(
      "trial.csv: column Dose (kg/t): choose the unit of this dose.",
    );
    const dose = (unit: "kg-per-t" | "ml-solution"): ColumnUse[] => [
      uses[0]!,
      { as: "dose", polymer: "a", unit, basis: null },
      uses[2]!,
    ];
    expect(refusal(planned(text, benchStudy(), { uses: dose("kg-per-t") }))).toBe(
      "trial.csv: column Dose (kg/t): choose whether this dose is active polymer or product as supplied.",
    );
    expect(planned(text, benchStudy(), { uses: dose("ml-solution") }).ok).toBe(true);
  });
  test("even a head that says both is asked on the screen, and read in the terminal", () => {
    expect(guessUses(["dose_b_kg_per_t"])).toEqual([{ as: "dose", polymer: "b", unit: null, basis: null }]);
    expect(planned("dose_a_kg_per_t\n5\n").ok).toBe(true);
  });
  for (const head of [
    "dose",
    "dose_a",
    "dose_kg_per_t",
    "Dose A (lb/ton)",
    "dose_a_mg_per_l",
    "polymer",
    "lb per ton",
  ])
    test(`the head "${head}" alone is refused in the terminal`, () =>
      expect(refusal(planned(`${head}\n5\n`))).toMatch(/say polymer, unit and basis in the head/));
});

describe("moments", () => {
  const head = "jar,syringe_a_ml,cst_s,mixed_at,cst_taken_at,drained_taken_at";
  test("with their offset are kept as they stand, each at its jar and its reading", () => {
    const plan = planned(
      `${head}\n1,25,20,2026-03-04T09:05:00+01:00,2026-03-04T08:20:30.5Z,\n1,25,21,,2026-03-04T08:21:00Z,\n2,25,22,,,\n`,
    );
    const state = imported(plan);
    expect(Object.values(state.jar).map(({ mixedAt }) => mixedAt)).toEqual([
      "2026-03-04T09:05:00+01:00",
      null,
    ]);
    expect(Object.values(state.reading).map(({ takenAt }) => takenAt)).toEqual([
      "2026-03-04T08:20:30.5Z",
      "2026-03-04T08:21:00Z",
      null,
    ]);
  });
  for (const [given, column] of [
    ["04.03.2026 09:05", "mixed_at"],
    ["2026-03-04T09:05:00", "mixed_at"],
    ["2026-02-30T09:05:00Z", "mixed_at"],
    ["09:05", "cst_taken_at"],
  ] as const)
    test(`"${given}" is refused in words, and nothing is added`, () => {
      const [mixed, read] = column === "mixed_at" ? [given, ""] : ["", given];
      const plan = planned(`${head}\n1,25,20,${mixed},${read},\n`);
      expect(plan.ok && plan.value).toMatchObject({
        added: 0,
        command: null,
        errors: [
          {
            row: 2,
            column,
            message: `"${given}" is not a date and time with its offset, such as 2026-03-04T09:05:00+01:00.`,
          },
        ],
      });
    });
  test("of a reading that is not there is a fault, not lost", () => {
    const plan = planned(`${head}\n1,25,20,,,2026-03-04T08:21:00Z\n`);
    expect(plan.ok && plan.value.errors).toEqual([
      { row: 2, column: "drained_taken_at", message: "has no reading beside it (drained_ml)." },
    ]);
  });
});

describe("rows, jars and re-reads", () => {
  test("the same jar and doses is a re-read, another name is a replicate", () => {
    const plan = planned("jar,dose_a_kg_per_t,cst_s\n1,4,20\n2,4,22\n1,4,21\n");
    const state = imported(plan);
    expect(Object.values(state.jar).map(({ label }) => label)).toEqual(["1", "2"]);
    expect(Object.values(state.reading).filter(({ jarId }) => state.jar[jarId]!.label === "1")).toHaveLength(
      2,
    );
    expect(plan.ok && plan.value.counts).toEqual({
      newSeries: [],
      intoSeries: ["Series"],
      jars: 2,
      readings: 3,
    });
  });
  test("the same jar with another dose names both lines", () => {
    const plan = planned("jar,dose_a_kg_per_t,cst_s\n1,4,20\n1,5,22\n");
    expect(plan.ok && plan.value.errors).toEqual([
      {
        row: 3,
        column: "jar",
        message:
          "jar 1 has other doses on line 2: a jar read again keeps its doses, another jar needs another name.",
      },
    ]);
  });
  test("without a jar column each row is a jar, numbered on", () => {
    const first = imported(planned("dose_a_kg_per_t\n4\n5\n"));
    const second = imported(planned("dose_a_kg_per_t\n6\n", first), first);
    expect(Object.values(second.jar).map(({ label, order }) => [label, order])).toEqual([
      ["1", 1],
      ["2", 2],
      ["3", 3],
    ]);
  });
  test("a name that the series has already is a fault of its row", () => {
    const first = imported(planned("jar,dose_a_kg_per_t\nx,4\n"));
    const plan = planned("jar,dose_a_kg_per_t\nX,4\ny,5\n", first, { skipBad: true });
    expect(plan.ok && plan.value).toMatchObject({ rows: 2, added: 1, errors: [{ row: 2, column: "jar" }] });
  });
  test("rows of jars that are there add their readings to them, where that was chosen", () => {
    const first = imported(planned("jar,syringe_a_ml\nx,25\ny,30\n"));
    const plan = planned("jar,turbidity_ntu\nX,44\nx,46\ny,>1000\n", first, { readAgain: true });
    expect(plan.ok && plan.value.counts).toMatchObject({ jars: 0, readings: 3, newSeries: [] });
    const state = imported(plan, first);
    expect(Object.keys(state.jar)).toEqual(Object.keys(first.jar));
    expect(
      Object.values(state.reading).map(({ jarId, result }) => [state.jar[jarId]!.label, result]),
    ).toMatchObject([
      ["x", { value: 44 }],
      ["x", { value: 46 }],
      ["y", { value: 1000, censored: "above" }],
    ]);
    const other = planned("jar,syringe_a_ml,cst_s\nx,26,20\nz,10,20\n", first, { readAgain: true });
    expect(other.ok && other.value.errors).toMatchObject([
      { row: 2, column: "jar", message: expect.stringMatching(/was dosed otherwise/) as string },
    ]);
    // without a dose a row can only read a jar again that is there
    const stray = planned("jar,cst_s\nz,20\n", first, { readAgain: true });
    expect(stray.ok && stray.value.errors).toMatchObject([{ row: 2, column: "jar" }]);
  });
  test("one bad row keeps everything out unless bad rows are skipped", () => {
    const text = "jar;dose_a_kg_per_t;turbidity_ntu\n1;2,5;44,5\n2;3,5;abc\n3;-1;>1000\n";
    const plan = planned(text);
    expect(plan.ok && plan.value).toMatchObject({
      rows: 3,
      added: 0,
      command: null,
      errors: [
        { row: 3, column: "turbidity_ntu", message: '"abc" is not a number: enter digits only.' },
        { row: 4, column: "dose_a_kg_per_t", message: "a dose cannot be negative (-1)." },
      ],
    });
    const skipped = planned(text, benchStudy(), { skipBad: true });
    expect(skipped.ok && skipped.value).toMatchObject({ rows: 3, added: 1 });
  });
  test("beyond the instrument's range stays a bound, never a number", () => {
    const state = imported(
      planned("jar,dose_a_kg_per_t,turbidity_ntu,filtrate_tss_mg_per_l\n1,4,>1000,<5\n"),
    );
    expect(Object.values(state.reading).map(({ result }) => result)).toEqual([
      { kind: "turbidity", value: 1000, censored: "above", dilution: 1 },
      { kind: "filtrate-tss", mgPerL: 5, censored: "below" },
    ]);
  });
  test("a value its kind does not allow is refused with its row and column", () => {
    const plan = planned(
      "jar,dose_a_kg_per_t,floc_grade,cake_ts_pct,cake_dish_tare_g,cake_dish_wet_g,cake_dish_dry_g\n1,4,6,,,,\n2,4,,101,,,\n3,4,,,9,8,7\n4,4,,,,9,\n5,4,,30,1,11,3\n",
    );
    expect(plan.ok && plan.value.errors.map(({ row, column, message }) => [row, column, message])).toEqual([
      [2, "floc_grade", '"6" must be 1 to 5.'],
      [3, "cake_ts_pct", expect.stringContaining("is above 100")],
      [4, "cake_dish_tare_g", expect.stringMatching(/must weigh more/)],
      [5, "cake_dish_tare_g", "is empty, but a cake dish needs it."],
      [6, "cake_ts_pct", expect.stringMatching(/make 20:/)],
    ]);
  });
  test("a dose beside its volume must agree with it", () => {
    const good = planned("syringe_a_ml,dose_a_kg_per_t\n25,3.99\n");
    expect(good.ok && good.value.errors).toEqual([]);
    // source: worked 1.1, basis blunder: a solution of 0.20 % product logged as 0.20 % active
    const slip = planned("syringe_a_ml,dose_a_kg_per_t\n25,1.67498\n");
    expect(slip.ok && slip.value.errors).toMatchObject([{ row: 2, column: "dose_a_kg_per_t" }]);
  });
});

describe("series", () => {
  test("a new series is set up like the study's last one, with the file's own volume and drain time", () => {
    const state = imported(
      planned("dose_a_kg_per_t,sample_volume_ml,drained_ml,drained_at_s\n4,400,90,30\n", benchStudy(), {
        seriesName: "Next",
      }),
    );
    const made = Object.values(state.series).find(({ label }) => label === "Next");
    expect(made).toMatchObject({
      sampleId: "sample",
      stockAId: "stock",
      stockBId: null,
      sampleVolumeMl: 400,
      protocol: { drainS: 30 },
    });
    expect(firstJar(state).sampleVolumeMl).toBeNull();
  });
  test("a study without a series takes its only sample and stock; without a sample it says so", () => {
    const bare = benchStudy({ series: null });
    const state = imported(
      planned("dose_a_kg_per_t,sample_volume_ml\n4,500\n", bare, { seriesName: null }),
      bare,
    );
    expect(Object.values(state.series)).toMatchObject([
      { label: "trial", sampleId: "sample", stockAId: "stock" },
    ]);
    expect(refusal(planned("dose_a_kg_per_t\n4\n", benchStudy({ series: null, sample: null })))).toMatch(
      /no sludge sample yet/,
    );
  });
  test("a name taken from the file never falls into a series that is there", () => {
    expect(
      refusal(
        planned("dose_a_kg_per_t\n4\n", benchStudy({ series: { label: "TRIAL" } }), { seriesName: null }),
      ),
    ).toMatch(/already a series called "trial"/);
  });
  test("of several samples or stock solutions none is picked: the file, or a person, says which", () => {
    const base = benchStudy({ series: null });
    const twoStocks = applyCommand(base, {
      do: "add",
      kind: "stock",
      record: { ...worked.stock, id: "other", label: "Other stock" },
    });
    const twoSamples = applyCommand(base, {
      do: "add",
      kind: "sample",
      record: { ...worked.sample, id: "other", label: "Other sample" },
    });
    if (!twoStocks.ok || !twoSamples.ok) throw new Error("no second record");
    const text = "syringe_a_ml,sample_volume_ml\n25,500\n";
    expect(refusal(planned(text, twoStocks.value.state, { seriesName: null }))).toMatch(
      /several stock solutions: say in a column stock_a/,
    );
    expect(refusal(planned(text, twoSamples.value.state, { seriesName: null }))).toMatch(
      /2 samples: say in a column sample/,
    );
    const named = planned(
      "stock_a,syringe_a_ml,sample_volume_ml\nother stock,25,500\n",
      twoStocks.value.state,
      { seriesName: null },
    );
    const state = imported(named, twoStocks.value.state);
    expect(Object.values(state.series)[0]!.stockAId).toBe("other");
  });
  test("an unknown stock is named", () => {
    expect(
      refusal(planned("series,stock_a,dose_a_kg_per_t\nNext,Other,4\n", benchStudy(), { seriesName: null })),
    ).toMatch(/line 2, column stock_a: this study has no stock solution called "Other"/);
  });
});

describe("the decimal mark", () => {
  test("only columns of numbers decide it", () => {
    const state = imported(planned("jar;dose_a_kg_per_t;note\n1.5;2,5;3.25 of them\n"));
    expect(firstJar(state)).toMatchObject({ label: "1.5", note: "3.25 of them" });
    expect(firstJar(state).plannedDoseAKgPerT).toBe(2.5);
  });
  test("a number that can be read two ways is refused for the whole file", () => {
    expect(refusal(planned("jar;dose_a_kg_per_t;turbidity_ntu\n1;4;1,234\n"))).toMatch(
      /line 2, column turbidity_ntu: "1,234" could be read two ways/,
    );
  });
  test("more rows than one step can keep are refused in words", () => {
    const rows = Array.from({ length: 40_001 }, (_, index) => `${index},4,20,2`).join("\n");
    expect(refusal(planned(`jar,dose_a_kg_per_t,cst_s,floc_grade\n${rows}\n`))).toMatch(
      /makes 120003 jars and readings; 120000 at once is the most/,
    );
  });
});

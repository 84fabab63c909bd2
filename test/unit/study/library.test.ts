import { describe, expect, test } from "vitest";
import { responseSpecs } from "../../../src/responses/registry.ts";
import { costAt } from "../../../src/choice/cost.ts";
import { analyseJars, speakingFit } from "../../../src/curve/analyse.ts";
import type { AnalyseRow } from "../../../src/curve/analyse-types.ts";
import { normalFrom, seededRandom } from "../../../src/curve/random.ts";
import { surfaceBounds, surfaceMean } from "../../../src/curve/surface-bands.ts";
import type { Command } from "../../../src/study/commands.ts";
import { choiceChain } from "../../../src/study/derive/choice.ts";
import { methodVersion, upstreamOf } from "../../../src/study/derive/decision.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import { pairChain } from "../../../src/study/derive/pair-choice.ts";
import { analyseRows } from "../../../src/study/derive/points.ts";
import { seriesSummarySchema, type SeriesSummary } from "../../../src/study/library/row.ts";
import { summariseStudy } from "../../../src/study/library/summary.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";
import { apply, demoState } from "./state.ts";

const words = { name: "", responses: responseSpecs, number: String, jar: String };

const after = (state: StudyState, ...commands: Command[]) => commands.reduce(apply, state);
const demo = demoState("2026-01-01T12:00:00Z");

function summaries(state: StudyState): { rows: SeriesSummary[]; steps: number } {
  const work = summariseStudy(state);
  for (let steps = 0; ; steps++) {
    const next = work.next();
    if (next.done) return { rows: next.value, steps };
  }
}

function approve(
  seriesId: string,
  doseAKgPerT: number,
  doseBKgPerT: number | null,
  state = demo,
): StudyState {
  return after(state, {
    do: "add",
    kind: "decision",
    record: {
      id: `approved-${seriesId}`,
      seriesId,
      doseAKgPerT,
      doseBKgPerT,
      rule: "own",
      reason: "for the test",
      byName: "Ilse K.",
      at: "2026-01-02T12:00:00Z",
      methodVersion,
      snapshot: upstreamOf(state, seriesId),
    },
  });
}

/** A valley read in 12 jars with noise, two of them without polymer. */
function noisyRows(seed: number): AnalyseRow[] {
  const normal = normalFrom(seededRandom(seed));
  return [0, 0, 2, 3, 4, 5, 5.5, 6, 7, 8, 10, 12].map((dose, i) => ({
    row: i + 1,
    jar: `j${i}`,
    doseA: dose,
    doseB: 0,
    block: null,
    order: null,
    readings: {
      turbidity_ntu: {
        value: Math.exp(3.6 + 0.03 * (dose - 6) ** 2 + 0.1 * normal()),
        censored: dose === 12 ? ("above" as const) : null,
      },
      cake_ts_pct: { value: 20 - 5 * Math.exp(-dose / 3) + 0.3 * normal(), censored: null },
    },
  }));
}

describe("the fit without its verdict", () => {
  test("is the very fit that the verdict speaks of", () => {
    const sets = [
      ...["series-1", "series-2"].map((id) => analyseRows(seriesChain(demo, id)).rows),
      ...Array.from({ length: 6 }, (_, seed) => noisyRows(seed + 1)),
    ];
    let fits = 0;
    for (const rows of sets) {
      const whole = analyseJars(rows, words);
      if (!whole.ok) throw new Error(whole.message);
      for (const { analysis, fit, surface } of whole.value.workings) {
        const alone = speakingFit(rows, analysis.name, words);
        if (!alone.ok) throw new Error(alone.message);
        expect(alone.value.fit?.model.name).toBe(fit?.model.name);
        expect(alone.value.fit?.estimate.parameters).toEqual(fit?.estimate.parameters);
        expect(alone.value.fit?.estimate.covariance).toEqual(fit?.estimate.covariance);
        expect(alone.value.surface?.coded).toEqual(surface?.coded);
        fits += 1;
      }
    }
    expect(fits).toBeGreaterThan(15);
  });
});

describe("a series as it is compared with others", () => {
  test("says what the study's own curves say at the approved dose", () => {
    const { rows, steps } = summaries(demo);
    expect(steps).toBeGreaterThan(3);
    const [one, two] = rows;
    for (const row of rows) expect(seriesSummarySchema.parse(row)).toEqual(row);
    const chain = seriesChain(demo, "series-1");
    const analysed = analyseJars(analyseRows(chain).rows, words);
    if (!analysed.ok) throw new Error(analysed.message);
    const choice = choiceChain(demo, chain, analysed.value.workings, String)!;
    const at = (response: string) => choice.curves.find((curve) => curve.response === response)!;
    const cost = costAt(5.2, choice.cost);
    expect(one).toMatchObject({
      seriesLabel: "E-42 alone",
      streamLabel: "Blended sludge, line 2",
      sludgeClass: "mixed",
      productA: "Flocculant E-42 (invented)",
      productB: null,
      jars: 13,
      standing: "approved",
      doseAKgPerT: 5.2,
      turbidity: at("turbidity_ntu").mean(5.2),
      turbidityLow: at("turbidity_ntu").low95(5.2),
      turbidityHigh: at("turbidity_ntu").high95(5.2),
      filtrateTssMgPerL: at("filtrate_tss_mg_per_l").mean(5.2),
      cakePct: at("cake_ts_pct").mean(5.2),
      capturePct: at("capture_pct").mean(5.2),
      polymerCost: cost.polymer,
      disposalCost: cost.disposal,
      returnCost: cost.returnLoad,
      totalCost: cost.total,
      why: "",
    });
    expect(two).toMatchObject({ standing: "no dose approved", doseAKgPerT: null, turbidity: null, why: "" });
  });

  test("of two polymers is read off its surfaces at the approved pair", () => {
    const state = approve("series-2", 6, 3);
    const two = summaries(state).rows[1]!;
    const chain = seriesChain(state, "series-2");
    const analysed = analyseJars(analyseRows(chain).rows, words);
    if (!analysed.ok) throw new Error(analysed.message);
    const pair = pairChain(state, chain, analysed.value.workings, String)!;
    const turbidity = pair.surfaces.find(({ response }) => response === "turbidity_ntu")!.surface;
    const cost = pair.costAt({ a: 6, b: 3 });
    expect(two).toMatchObject({
      doseAKgPerT: 6,
      doseBKgPerT: 3,
      turbidity: surfaceMean(turbidity, 6, 3),
      turbidityLow: surfaceBounds(turbidity, 6, 3).low,
      filtrateTssMgPerL: null,
      cakePct: pair.cakeAt({ a: 6, b: 3 }),
      polymerCost: cost.polymerA! + cost.polymerB!,
      disposalCost: cost.disposal,
      totalCost: cost.total,
    });
  });

  test("offers nothing outside the tested doses, and says so", () => {
    expect(summaries(approve("series-1", 30, null)).rows[0]).toMatchObject({
      doseAKgPerT: 30,
      turbidity: null,
      totalCost: null,
      why: "the approved dose lies outside the tested doses",
    });
    expect(summaries(approve("series-2", 30, 30)).rows[1]).toMatchObject({
      turbidity: null,
      why: "the approved pair lies outside the tested pairs",
    });
    expect(summaries(approve("series-2", 6, null)).rows[1]!.why).toBe(
      "the series varies both polymers, the approval names one dose",
    );
  });

  test("of a study that holds no series is its name alone; a withdrawn approval counts no more", () => {
    const bare = after(emptyState(), { do: "add", kind: "study", record: { id: "study", name: "Bare" } });
    expect(summaries(bare).rows).toMatchObject([{ studyName: "Bare", seriesId: null, jars: 0 }]);
    const withdrawn = after(demo, {
      do: "set",
      kind: "decision",
      id: "decision-1",
      fields: { withdrawn: { byName: "Ilse K.", at: "2026-01-02T12:00:00Z", reason: "another machine" } },
    });
    expect(summaries(withdrawn).rows[0]).toMatchObject({ standing: "no dose approved", approvedBy: "" });
  });
});

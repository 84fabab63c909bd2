import { describe, expect, test } from "vitest";
import { presentDoseKgPerT } from "../../../src/plant/present-dose.ts";
import { cylinderBand } from "../../../src/plant/cylinder.ts";
import { driftedDose, loadingKgPerHPerM, pipeForDelay } from "../../../src/plant/load.ts";
import { checkPump, fitPumpLine, settingFor, steadinessPct } from "../../../src/plant/pump-line.ts";
import { plantRates, ratesInputSchema, type RatesInput } from "../../../src/plant/rates.ts";
import { kgPerLb, lPerUsGal } from "../../../src/units/constants.ts";
import published from "../../reference/data/published.json" with { type: "json" };

// Source of all figures here: the project's trade table, section 7, each recomputed independently.
const feed = { flowM3PerH: 20, totalSolidsPct: 2.5, densityKgPerL: 1.003, hoursPerDay: 8, daysPerYear: 250 };
const emulsion = {
  form: "emulsion" as const,
  doseKgPerT: 4,
  activePct: 42,
  densityKgPerL: 1.03,
  solutionActivePct: 0.2,
  solutionDensityKgPerL: 1,
};
const had = <T>(outcome: { ok: true; value: T } | { ok: false; message: string }): T => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.value;
};
const draws = [
  { setting: 20, flow: 14.1 },
  { setting: 40, flow: 31.6 },
  { setting: 60, flow: 49 },
  { setting: 80, flow: 66.9 },
  { setting: 100, flow: 84.2 },
];

test("worked 7.1, rates of one polymer", () => {
  const input: RatesInput = {
    feed,
    polymers: [{ ...emulsion, carrierActivePct: 0.1, pricePerKgNeat: 3.2, batchL: 1000, ageingMin: 30 }],
    capturePct: 97,
    cakeTsPct: 20,
    disposalPerWetT: 90,
  };
  const rates = had(plantRates(input));
  const [polymer] = rates.polymers;
  expect(rates.dsKgPerH).toBeCloseTo(501.5, 8);
  expect(rates.dsKgPerH / kgPerLb).toBeCloseTo(1105.62, 2);
  expect(polymer!.activeKgPerH).toBeCloseTo(2.006, 8);
  expect(polymer!.neatKgPerH).toBeCloseTo(4.77619, 5);
  expect(polymer!.neatLPerH).toBeCloseTo(4.63708, 5);
  expect(polymer!.neatLPerH! / lPerUsGal).toBeCloseTo(1.22499, 5);
  expect(polymer!.neatMlPerMin).toBeCloseTo(77.2846, 4);
  expect(polymer!.solutionLPerH).toBeCloseTo(1003, 8);
  expect(polymer!.makeUpWaterKgPerH).toBeCloseTo(998.224, 3);
  expect(polymer!.carrierLPerH).toBeCloseTo(1003, 8);
  expect(polymer!.batchHours).toBeCloseTo(0.99701, 5);
  expect(polymer!.ageingVolumeL).toBeCloseTo(501.5, 8);
  expect(polymer!.neatKgPerYear).toBeCloseTo(9552.38, 2);
  expect(polymer!.neatLPerYear).toBeCloseTo(9274.16, 2);
  expect(polymer!.costPerTDs).toBeCloseTo(30.4762, 4);
  expect(polymer!.costPerYear).toBeCloseTo(30567.6, 1);
  expect(rates.wetCakeKgPerH).toBeCloseTo(2432.28, 1);
  expect(rates.disposalPerTDs).toBeCloseTo(436.5, 6);
  expect(rates.disposalPerYear).toBeCloseTo(437809.5, 1);
  expect(rates.returnKgPerH).toBeCloseTo(15.045, 6);
});

test("dual polymer, and a dry product by mass", () => {
  const rates = had(
    plantRates({
      feed,
      polymers: [
        {
          form: "solution",
          doseKgPerT: 3,
          activePct: 40,
          densityKgPerL: 1.15,
          solutionActivePct: 5,
          solutionDensityKgPerL: 1,
        },
        { ...emulsion, doseKgPerT: 3.5 },
      ],
    }),
  );
  expect(rates.polymers[0]!.activeKgPerH).toBeCloseTo(1.5045, 6);
  expect(rates.polymers[0]!.neatKgPerH).toBeCloseTo(3.76125, 6);
  expect(rates.polymers[0]!.neatLPerH).toBeCloseTo(3.27065, 5);
  expect(rates.polymers[0]!.solutionLPerH).toBeCloseTo(30.09, 6);
  expect(rates.polymers[1]!.neatLPerH).toBeCloseTo(4.05744, 5);
  expect(rates.polymers[1]!.solutionLPerH).toBeCloseTo(877.625, 6);
  const dry = had(plantRates({ feed, polymers: [{ ...emulsion, form: "dry", activePct: 92 }] }));
  expect(dry.polymers[0]).toMatchObject({ neatLPerH: null, neatMlPerMin: null, neatLPerYear: null });
  expect(dry.polymers[0]!.neatGPerMin).toBeCloseTo(2006 / 0.92 / 60, 6);
});

describe("worked 7.2, the pump line", () => {
  const line = had(fitPumpLine(draws));
  test("line, inversion and its interval", () => {
    expect(line.slope).toBeCloseTo(0.8775, 8);
    expect(line.intercept).toBeCloseTo(-3.49, 8);
    expect(line.residualSd).toBeCloseTo(0.149443, 6);
    const setting = settingFor(line, 77.2846);
    expect(setting.pct).toBeCloseTo(92.0509, 3);
    expect(setting.high! - setting.pct!).toBeCloseTo(0.6542, 4);
    expect(had(checkPump(draws)).linearityPct).toBeCloseTo(0.2257, 4);
    expect(had(checkPump(draws)).turndown).toBeCloseTo(5.97, 2);
  });
  test("settings by feed flow, out of range in words", () => {
    for (const [q, flow, setting] of [
      [8, 30.9139, 39.2067],
      [12, 46.3708, 56.8214],
      [16, 61.8277, 74.4361],
      [20, 77.2846, 92.0509],
    ] as const) {
      const neat = had(plantRates({ feed: { ...feed, flowM3PerH: q }, polymers: [emulsion] })).polymers[0]!
        .neatMlPerMin!;
      expect(neat).toBeCloseTo(flow, 4);
      expect(settingFor(line, neat).pct).toBeCloseTo(setting, 4);
    }
    expect(settingFor(line, 92.7416)).toEqual({ status: "above", pct: null, low: null, high: null });
    expect(settingFor(line, 5)).toEqual({ status: "below", pct: null, low: null, high: null });
  });
  test("two draws make a line without an interval; one, or a falling flow, is refused", () => {
    expect(settingFor(had(fitPumpLine(draws.slice(0, 2))), 20)).toMatchObject({
      status: "ok",
      low: null,
      high: null,
    });
    expect(fitPumpLine(draws.slice(0, 1)).ok).toBe(false);
    expect(fitPumpLine([draws[0]!, { setting: 20, flow: 15 }]).ok).toBe(false);
    expect(fitPumpLine([draws[4]!, { setting: 10, flow: 99 }]).ok).toBe(false);
  });
  test("check figures: steadiness, repeatability, stroke times speed", () => {
    expect(steadinessPct([48.8, 49.3])).toBeCloseTo(0.5097, 3);
    const repeated = had(checkPump([...draws, { setting: 40, flow: 31.9 }, { setting: 40, flow: 31.2 }]));
    expect(repeated.repeatabilityPct).toBeCloseTo(0.8314, 4);
  });
  test("the cylinder band holds the expected volume and widens with a shorter time", () => {
    const long = cylinderBand(line, 92, 60, { cylinderLimitMl: 1, watchLimitS: 0.3 })!;
    const short = cylinderBand(line, 92, 15, { cylinderLimitMl: 1, watchLimitS: 0.3 })!;
    expect(long.expectedMl).toBeCloseTo(-3.49 + 0.8775 * 92, 6);
    expect(long.low).toBeLessThan(long.expectedMl);
    expect(short.relativePct).toBeGreaterThan(long.relativePct);
  });
});

test("drift at fixed pumps, loading, pipe for a delay", () => {
  [5, 4.4444, 4, 3.6364, 3.3333, 3.0769].forEach((dose, i) =>
    expect(driftedDose(4, 2.5, 2 + 0.25 * i)).toBeCloseTo(dose, 4),
  );
  // 40, 50 and 60 kg DS per hour and metre for excess, treatment-plant and flotation or livestock sludge: common practice, no source
  [
    [40, 12.538],
    [50, 10.03],
    [60, 8.3583],
  ].forEach(([loading, width]) => expect(loadingKgPerHPerM(501.5, width!)).toBeCloseTo(loading!, 2));
  expect(loadingKgPerHPerM(501.5, 10)).toBeCloseTo(50.15, 8);
  const pipe = pipeForDelay(20.6, 60, 100);
  expect(pipe.velocityMPerS).toBeCloseTo(0.728576, 5);
  expect(pipe.volumeL).toBeCloseTo(343.33, 2);
  expect(pipe.lengthM).toBeCloseTo(43.715, 3);
});

test("published conversions (each source in data/published.json)", () => {
  const of = (id: string) => published.examples.find((one) => one.id === id)!;
  const share = of("polymer-share-of-dry-solids");
  const solids = share.inputs.drySolidsKgPerDay! / 24;
  const rates = had(
    plantRates({
      feed: {
        flowM3PerH: solids / 10,
        totalSolidsPct: 1,
        densityKgPerL: 1,
        hoursPerDay: 24,
        daysPerYear: 365,
      },
      polymers: [
        { doseKgPerT: 20, activePct: 100, densityKgPerL: 1, solutionActivePct: 5, solutionDensityKgPerL: 1 },
      ],
    }),
  );
  expect(rates.polymers[0]!.activeKgPerH * 24).toBeCloseTo(share.outputs.polymerKgPerDay!, 6);
  expect(rates.polymers[0]!.solutionLPerH * 24).toBeCloseTo(share.outputs.solutionLPerDay!, 6);
  const bases = of("three-bases-of-one-number");
  const { wantedMgPerL, totalSolidsFraction, activeFractionOfSolids } = bases.inputs;
  expect(wantedMgPerL! / totalSolidsFraction!).toBeCloseTo(bases.outputs.totalSolidsBasisMgProductPerL!, 8);
  expect(wantedMgPerL! / (totalSolidsFraction! * activeFractionOfSolids!)).toBeCloseTo(
    bases.outputs.activeBasisMgProductPerL!,
    8,
  );
  const batch = of("batch-make-up-500-gal");
  const polymerLb =
    (batch.inputs.batchGal! * batch.inputs.waterLbPerGal! * batch.inputs.strengthPctAsSupplied!) / 100;
  expect(polymerLb).toBeCloseTo(batch.outputs.polymerLb!, 2);
  expect(polymerLb / batch.inputs.productLbPerGal!).toBeCloseTo(batch.outputs.polymerGal!, 2);
  const dilution = of("dilution-feed-1-mgd");
  const active = (dilution.inputs.flowMgd! * 1e6 * dilution.inputs.dosePpmActive!) / 1e6 / 24;
  expect(active).toBeCloseTo(dilution.outputs.activeGalPerH!, 5);
  expect(active / (dilution.inputs.solutionPct! / 100)).toBeCloseTo(dilution.outputs.solutionGalPerH!, 3);
  expect(active / (dilution.inputs.neatActivePct! / 100)).toBeCloseTo(dilution.outputs.neatGalPerH!, 4);
  // exact constants, trade table section 1
});

test("the present dose read back from a pump's flow is the dose its rates were made for (worked 7.1)", () => {
  const run = { feedM3PerH: 20, totalSolidsPct: 2.5, densityKgPerL: 1.003 };
  expect(
    had(
      presentDoseKgPerT({ ...run, flowMlPerMin: 77.28463553706273, flowDensityKgPerL: 1.03, activePct: 42 }),
    ),
  ).toBeCloseTo(4, 8);
  expect(
    had(presentDoseKgPerT({ ...run, flowMlPerMin: 1003000 / 60, flowDensityKgPerL: 1, activePct: 0.2 })),
  ).toBeCloseTo(4, 8);
  expect(presentDoseKgPerT({ ...run, flowMlPerMin: 0, flowDensityKgPerL: 1, activePct: 0.2 }).ok).toBe(false);
});

test("impossible inputs are refused with their path", () => {
  const refuse = (change: object) => {
    const input = { feed, polymers: [{ ...emulsion, ...change }] };
    const parsed = ratesInputSchema.safeParse(input);
    if (!parsed.success) return parsed.error.issues[0]!.path.join(".");
    const rates = plantRates(parsed.data);
    return rates.ok ? "accepted" : rates.message;
  };
  expect(refuse({ activePct: 0 })).toBe("polymers.0.activePct");
  expect(refuse({ activePct: "42" })).toBe("polymers.0.activePct");
  expect(refuse({ doseKgPerT: -1 })).toBe("polymers.0.doseKgPerT");
  expect(refuse({ densityKgPerL: undefined })).toMatch(/polymers\[0\]\.densityKgPerL is missing/);
  expect(refuse({ solutionActivePct: 50 })).toMatch(/above the neat product/);
  expect(refuse({ pump: { stream: "neat", draws: [] } })).toBe("polymers.0.pump.draws");
  expect(refuse({ extra: 1 })).toBe("polymers.0");
});

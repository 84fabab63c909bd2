import { describe, expect, test } from "vitest";
import { capturePct } from "../../../src/bench/capture.ts";
import { basisSlip, doseFromSyringe, drySolidsG, syringeForDose } from "../../../src/bench/dose.ts";
import {
  combineUncertainty,
  rectangular,
  type UncertaintyPart,
} from "../../../src/bench/dose-uncertainty.ts";
import {
  cstAt20C,
  drainedPct,
  filtrationResistance,
  normalisedCst,
  normalisedFilterTime,
  pressureKPa,
} from "../../../src/bench/measurements.ts";
import {
  gradientPerS,
  inLineGradientPerS,
  pouringGradientPerS,
  stirredMixing,
  stirrerPowerW,
} from "../../../src/bench/mixing.ts";
import { waterViscosityMPaS } from "../../../src/bench/water.ts";
import { asSuppliedDose } from "../../../src/product/make-down.ts";
import { quotedHalfWidth } from "../../../src/choice/quoted-dose.ts";

// Source of all figures here: the project's trade table, sections 1, 2 and 4, each recomputed independently.
const basis = {
  sampleVolumeMl: 500,
  sampleDensityKgPerL: 1.003,
  totalSolidsPct: 2.5,
  solutionActivePct: 0.2,
  solutionDensityKgPerL: 1,
};
const had = <T>(outcome: { ok: true; value: T } | { ok: false; message: string }): T => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.value;
};

describe("worked 1.1, the jar's dose", () => {
  test("mass basis and every other basis of the same number", () => {
    expect(drySolidsG(basis)).toBeCloseTo(12.5375, 10);
    const dose = had(doseFromSyringe(25, basis));
    expect(dose).toBeCloseTo(3.98804, 5);
    expect(dose * 2).toBeCloseTo(7.97607, 5);
    expect(had(syringeForDose(4, basis))).toBeCloseTo(25.075, 10);
    expect(asSuppliedDose(dose, 42)).toBeCloseTo(9.49532, 5);
    expect(asSuppliedDose(dose, 42) * 2).toBeCloseTo(18.9906, 4);
  });
  test("volumes for 2, 3, 4, 5, 6 and 8 kg/t", () => {
    const volumes = [12.5375, 18.8063, 25.075, 31.3438, 37.6125, 50.15];
    [2, 3, 4, 5, 6, 8].forEach((dose, i) =>
      expect(had(syringeForDose(dose, basis))).toBeCloseTo(volumes[i]!, 3),
    );
  });
  test("the slip of bases: 0.2 % of product logged as active", () => {
    expect(had(doseFromSyringe(25, { ...basis, solutionActivePct: 0.2 * 0.42 }))).toBeCloseTo(1.67498, 5);
    expect(basisSlip(12, 42, { low: 3, high: 8 })).toBe("read-as-supplied");
    expect(basisSlip(1.7, 42, { low: 3, high: 8 })).toBe("read-as-active");
    expect(basisSlip(5, 42, { low: 3, high: 8 })).toBeNull();
  });
  test("missing or impossible inputs are said, never computed", () => {
    for (const bad of [{ totalSolidsPct: 0 }, { sampleVolumeMl: 0 }, { solutionActivePct: -1 }])
      expect(doseFromSyringe(25, { ...basis, ...bad }).ok).toBe(false);
  });
});

test("worked 2.2, dose uncertainty split into shared and per-jar, and what cancels by provenance", () => {
  const parts: UncertaintyPart[] = [
    { name: "neat-mass", relative: 0.03 / 2.381, shared: true },
    { name: "active-share", relative: rectangular(0.01, 0.42), shared: true },
    { name: "total-mass", relative: rectangular(1, 500), shared: true },
    { name: "syringe", relative: Math.hypot(rectangular(0.5, 25), 0.2 / 25), shared: false },
    { name: "sample-volume", relative: rectangular(5, 500), shared: false },
    { name: "total-solids", relative: 0.03 / 2.5, shared: true },
    { name: "density", relative: rectangular(0.005, 1.003), shared: true },
  ];
  const all = combineUncertainty(parts, ["active-share", "total-solids", "density"]);
  expect(all.total * 100).toBeCloseTo(2.7056, 3);
  expect(all.shared * 100).toBeCloseTo(2.239, 3);
  expect(all.perJar * 100).toBeCloseTo(1.519, 3);
  expect(all.sharedLeft * 100).toBeCloseTo(1.265, 3);
  expect(2 * all.total * 3.98804).toBeCloseTo(0.2158, 4);
  // worked 5.1: the quoted dose
  expect(quotedHalfWidth(5.53644, 0.1147, 0.02239)).toBeCloseTo(0.2732, 4);
});

test("worked 3.2, capture by the three-stream balance with added water", () => {
  const solids = { feedPct: 2.5, cakePct: 20, filtratePct: 0.06 };
  expect(had(capturePct({ ...solids, dilution: 0 }))).toBeCloseTo(97.8937, 4);
  expect(had(capturePct({ ...solids, dilution: 0.05 }))).toBeCloseTo(97.7733, 4);
  expect(had(capturePct({ ...solids, dilution: 0.35 }))).toBeCloseTo(97.0512, 4);
  expect(capturePct({ feedPct: 2.5, cakePct: 2, filtratePct: 0.06, dilution: 0 }).ok).toBe(false);
});

test("worked 4, CST, drainage, press, time to filter", () => {
  expect(had(normalisedCst(14.2, 8, 25))).toBeCloseTo(0.248, 10);
  expect(cstAt20C(18, 15)).toBeCloseTo(15.85, 2);
  expect(drainedPct(196, 500, 25)).toBeCloseTo(37.33, 2);
  expect(pressureKPa(300, 50)).toBeCloseTo(152.79, 2);
  expect(normalisedFilterTime(95, 25)).toBeCloseTo(3.8, 10);
});

test("worked 4.1, specific resistance", () => {
  const volumes = [20, 40, 60, 80, 100, 120];
  const seconds = [6.6, 16.4, 29.5, 45.8, 65.2, 87.9];
  const srf = had(
    filtrationResistance(
      volumes.map((volumeMl, i) => ({ volumeMl, seconds: seconds[i]! })),
      { diameterMm: 70, pressureKPa: 49, viscosityMPaS: waterViscosityMPaS(20), cakeKgPerM3: 25 },
    ),
  );
  expect(srf.slope / 1e9).toBeCloseTo(4.02762, 5);
  expect(srf.intercept / 1e5).toBeCloseTo(2.49511, 5);
  expect(srf.r2).toBeCloseTo(0.9999875, 7);
  expect(srf.srfMPerKg / 1e11).toBeCloseTo(2.33467, 4);
  expect(srf.mediumPerM / 1e10).toBeCloseTo(4.6978, 3);
});

test("worked 4.2, mixing", () => {
  for (const [rpm, power, gradient] of [
    [100, 0.0189958, 97.38],
    [200, 0.151967, 275.4],
    [300, 0.512888, 506],
  ] as const) {
    const p = stirrerPowerW(1.6, 0.998204, rpm, 76.2);
    expect(p / power).toBeCloseTo(1, 4);
    expect(stirredMixing(p, waterViscosityMPaS(20), 2, 30).gradientPerS / gradient).toBeCloseTo(1, 3);
  }
  expect(gradientPerS(0.0628319, waterViscosityMPaS(20), 0.5)).toBeCloseTo(354.2, 1);
  expect(pouringGradientPerS(10, 0.15, 15, waterViscosityMPaS(20), 0.998204)).toBeCloseTo(988.6, 1);
  expect(inLineGradientPerS(15, waterViscosityMPaS(20), 1)).toBeCloseTo(3870, 0);
});

test("water viscosity, Pátek et al. 2009 (coefficients from memory)", () => {
  [1.5182, 1.3059, 1.13755, 1.00157, 0.889997, 0.797206, 0.719121].forEach((value, i) =>
    expect(waterViscosityMPaS(5 + 5 * i)).toBeCloseTo(value, 4),
  );
});

import fc from "fast-check";
import { expect, test } from "vitest";
import { nextDose, benchFactor } from "../../src/plant/bench-factor.ts";
import { choosePumpModel } from "../../src/plant/pump-model.ts";
import { fitPumpLine, flowAt, settingFor } from "../../src/plant/pump-line.ts";
import { plantRates } from "../../src/plant/rates.ts";
import { activeOfStream, doseOfRate } from "../../src/plant/run-dose.ts";
import { toCanonical, toShown, type QuantityKind } from "../../src/units/display.ts";

const amount = (low: number, high: number) => fc.double({ min: low, max: high, noNaN: true });
const had = <T>(outcome: { ok: true; value: T } | { ok: false; message: string }): T => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.value;
};
const polymer = (doseKgPerT: number, activePct: number, densityKgPerL: number) => ({
  doseKgPerT,
  activePct,
  densityKgPerL,
  solutionActivePct: 0.2,
  solutionDensityKgPerL: 1,
});
const feed = (flowM3PerH: number, totalSolidsPct: number, densityKgPerL = 1.003) => ({
  flowM3PerH,
  totalSolidsPct,
  densityKgPerL,
  hoursPerDay: 8,
  daysPerYear: 250,
});

test("a setting never falls when the feed rises, on a line and on a curve", () => {
  const draws = [20, 40, 60, 80, 100].flatMap((setting) =>
    [-0.1, 0.1].map((off) => ({ setting, flow: 2 + 0.6 * setting + 0.004 * setting ** 2 + off })),
  );
  const lines = [
    had(fitPumpLine(draws)),
    had(choosePumpModel(draws, { shape: "curve", weights: "equal" })).line,
  ];
  fc.assert(
    fc.property(amount(1, 40), amount(1, 40), fc.constantFrom(...lines), (one, other, line) => {
      const [less, more] = [Math.min(one, other), Math.max(one, other)].map((flow) =>
        settingFor(
          line,
          had(plantRates({ feed: feed(flow, 2.5), polymers: [polymer(4, 42, 1.03)] })).polymers[0]!
            .neatMlPerMin!,
        ),
      );
      const rank = { below: 0, ok: 1, above: 2 };
      expect(rank[less!.status]).toBeLessThanOrEqual(rank[more!.status]);
      if (less!.pct !== null && more!.pct !== null)
        expect(more!.pct - less!.pct).toBeGreaterThanOrEqual(-1e-9);
    }),
  );
});

test("dose to rate to dose, by neat product and by solution", () => {
  fc.assert(
    fc.property(
      amount(0.1, 50),
      amount(0.5, 200),
      amount(0.2, 8),
      amount(3, 99),
      amount(0.8, 1.4),
      (dose, flow, ts, active, density) => {
        const rates = had(plantRates({ feed: feed(flow, ts), polymers: [polymer(dose, active, density)] }));
        const [one] = rates.polymers;
        const neat = activeOfStream(one!.neatMlPerMin!, density, active);
        const solution = activeOfStream((one!.solutionLPerH * 1000) / 60, 1, 0.2);
        expect(had(doseOfRate(neat, rates.dsKgPerH)) / dose).toBeCloseTo(1, 10);
        expect(had(doseOfRate(solution, rates.dsKgPerH)) / dose).toBeCloseTo(1, 10);
      },
    ),
  );
});

test("setting to flow to setting, inside what was proven", () => {
  const draws = [10, 30, 50, 70, 90].map((setting) => ({
    setting,
    flow: 1 + 0.5 * setting + 0.003 * setting ** 2,
  }));
  const line = had(choosePumpModel(draws, { shape: "curve", weights: "relative" })).line;
  fc.assert(
    fc.property(amount(10, 90), (setting) => {
      const back = settingFor(line, flowAt(line, setting).flow);
      expect(back.status).toBe("ok");
      expect(back.pct!).toBeCloseTo(setting, 6);
    }),
  );
});

test("typed in either unit system, the same plant has the same rates", () => {
  const typed = (value: number, kind: QuantityKind) => toCanonical(toShown(value, kind, "us"), kind, "us");
  fc.assert(
    fc.property(
      amount(1, 100),
      amount(0.5, 6),
      amount(0.95, 1.1),
      amount(1, 12),
      (flow, ts, density, dose) => {
        const metric = had(
          plantRates({ feed: feed(flow, ts, density), polymers: [polymer(dose, 42, 1.03)] }),
        );
        const us = had(
          plantRates({
            feed: feed(typed(flow, "flowM3PerH"), ts, typed(density, "densityKgPerL")),
            polymers: [polymer(typed(dose, "doseKgPerT"), 42, typed(1.03, "densityKgPerL"))],
          }),
        );
        expect(us.dsKgPerH / metric.dsKgPerH).toBeCloseTo(1, 10);
        expect(us.polymers[0]!.neatMlPerMin! / metric.polymers[0]!.neatMlPerMin!).toBeCloseTo(1, 10);
      },
    ),
  );
});

test("a factor does not depend on the order of its trials nor on the unit of its doses, and holds its own trials' range", () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ plantDoseKgPerT: amount(0.5, 20), benchDoseKgPerT: amount(0.5, 20) }), {
        minLength: 2,
        maxLength: 9,
      }),
      (trials) => {
        const one = had(benchFactor(trials));
        const turned = had(
          benchFactor(
            [...trials].reverse().map((t) => ({
              plantDoseKgPerT: 2 * t.plantDoseKgPerT,
              benchDoseKgPerT: 2 * t.benchDoseKgPerT,
            })),
          ),
        );
        expect(turned.factor / one.factor).toBeCloseTo(1, 10);
        const ratios = trials.map((t) => t.plantDoseKgPerT / t.benchDoseKgPerT);
        expect(one.factor).toBeGreaterThanOrEqual(Math.min(...ratios) * (1 - 1e-12));
        expect(one.factor).toBeLessThanOrEqual(Math.max(...ratios) * (1 + 1e-12));
        const next = nextDose(5, 0.02, one);
        expect(next.low! <= next.doseKgPerT && next.doseKgPerT <= next.high!).toBe(true);
      },
    ),
  );
});

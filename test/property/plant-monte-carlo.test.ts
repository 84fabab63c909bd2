import { describe, expect, test } from "vitest";
import { normalFrom, seededRandom } from "../../src/curve/random.ts";
import { benchFactor, nextDose } from "../../src/plant/bench-factor.ts";
import { cylinderBand } from "../../src/plant/cylinder.ts";
import { relativeOfProduct } from "../../src/plant/feed.ts";
import { choosePumpModel } from "../../src/plant/pump-model.ts";
import { drawError, fitPumpLine, settingError, settingFor, type Draw } from "../../src/plant/pump-line.ts";
import { drySolidsKgPerH } from "../../src/plant/rates.ts";
import { applyCommand, type Command } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { doseOfFlow } from "../../src/study/derive/plant-polymer.ts";
import { plantChain } from "../../src/study/derive/plant.ts";
import { emptyState, type StudyState } from "../../src/study/schema/records.ts";

// Seeded simulations of what the formulas propagate: every width must agree within 5 %. 95 % coverage of 20 000
// simulations is known to 0.0015, so that its own bounds can be tight.
const runs = 20_000;
const had = <T>(outcome: { ok: true; value: T } | { ok: false; message: string }): T => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.value;
};
const spread = (values: number[]) => {
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / (values.length - 1));
};
const settings = [20, 20, 40, 60, 60, 80, 100, 100];
const sd = 0.25;

test("dry-solids load: the propagated standard uncertainty", () => {
  const random = seededRandom(11);
  const normal = normalFrom(random);
  const relative = relativeOfProduct([0.015, 0.02, 0.005 / Math.sqrt(3) / 1.003]);
  const loads = Array.from({ length: runs }, () =>
    drySolidsKgPerH(
      20 * (1 + 0.015 * normal()),
      1.003 + 0.005 * (2 * random() - 1),
      2.5 * (1 + 0.02 * normal()),
    ),
  );
  expect(spread(loads) / (relative * drySolidsKgPerH(20, 1.003, 2.5))).toBeGreaterThan(0.95);
  expect(spread(loads) / (relative * drySolidsKgPerH(20, 1.003, 2.5))).toBeLessThan(1.05);
});

describe.each([
  ["line", (s: number) => -3.49 + 0.8775 * s],
  ["curve", (s: number) => 2 + 0.3 * s + 0.004 * s * s],
] as const)("a pump's %s", (shape, truth) => {
  test("scatter of an inverted setting and coverage of its interval", () => {
    const normal = normalFrom(seededRandom(shape === "line" ? 21 : 22));
    const target = truth(70);
    const found: number[] = [];
    let inside = 0;
    const errors: number[] = [];
    for (let i = 0; i < runs / 4; i++) {
      const draws: Draw[] = settings.map((setting) => ({ setting, flow: truth(setting) + sd * normal() }));
      const line = had(choosePumpModel(draws, { shape, weights: "equal" })).line;
      // what one further draw at the true setting would be called: its own scatter and the line's error
      const setting = settingFor(line, target + sd * normal());
      found.push(setting.pct!);
      errors.push(settingError({ ...line, residualSd: sd }, 70)!);
      if (setting.low! <= 70 && 70 <= setting.high!) inside += 1;
    }
    const said = errors.reduce((sum, value) => sum + value, 0) / errors.length;
    expect(spread(found) / said).toBeGreaterThan(0.95);
    expect(spread(found) / said).toBeLessThan(1.05);
    expect(inside / (runs / 4)).toBeGreaterThan(0.94);
    expect(inside / (runs / 4)).toBeLessThan(0.96);
  });
});

test("the cylinder band holds 95 % of draw-downs, and its half-width agrees with the simulated one", () => {
  const random = seededRandom(31);
  const normal = normalFrom(random);
  const truth = (s: number) => -3.49 + 0.8775 * s;
  const reading = { cylinderLimitMl: 1, watchLimitS: 0.3 };
  let inside = 0;
  for (let i = 0; i < runs; i++) {
    const line = had(
      fitPumpLine(settings.map((setting) => ({ setting, flow: truth(setting) + sd * normal() }))),
    );
    const band = cylinderBand(line, 70, 60, reading)!;
    const seconds = 60 + reading.watchLimitS * (2 * random() - 1);
    const caught =
      ((truth(70) + sd * normal()) * seconds) / 60 + reading.cylinderLimitMl * (2 * random() - 1);
    if (caught >= band.low && caught <= band.high) inside += 1;
  }
  // the rectangular parts make the band a little generous, never too narrow
  expect(inside / runs).toBeGreaterThan(0.945);
  expect(inside / runs).toBeLessThan(0.98);

  // With the scatter known, the band's half-width against the simulated 95 % point of the same sum.
  const known = {
    ...had(
      fitPumpLine(settings.map((setting) => ({ setting, flow: truth(setting) + 0.05 * (setting % 3) }))),
    ),
    residualSd: 0.6,
    n: 400,
  };
  const band = cylinderBand(known, 70, 60, reading)!;
  const error = drawError(known, 70)!;
  const deviations = Array.from({ length: runs }, () =>
    Math.abs(
      error * normal() +
        (2 * random() - 1) * reading.cylinderLimitMl +
        ((2 * random() - 1) * reading.watchLimitS * band.expectedMl) / 60,
    ),
  ).sort((a, b) => a - b);
  const half = deviations[Math.floor(0.95 * runs)]!;
  expect((band.high - band.expectedMl) / half).toBeGreaterThan(0.95);
  expect((band.high - band.expectedMl) / half).toBeLessThan(1.05);
});

test("the next dose's range: covers the next trial's own dose about 95 times in 100, with few trials", () => {
  const normal = normalFrom(seededRandom(41));
  const bench = 0.02;
  const between = 0.06;
  for (const n of [3, 6]) {
    let inside = 0;
    for (let i = 0; i < runs; i++) {
      const trial = () => Math.exp(Math.log(1.1) + between * normal());
      const factor = had(
        benchFactor(Array.from({ length: n }, () => ({ plantDoseKgPerT: 5 * trial(), benchDoseKgPerT: 5 }))),
      );
      const next = nextDose(5 * Math.exp(bench * normal()), bench, factor);
      const wanted = 5 * trial();
      if (wanted >= next.low! && wanted <= next.high!) inside += 1;
    }
    expect(inside / runs, `${n} trials`).toBeGreaterThan(0.935);
    expect(inside / runs, `${n} trials`).toBeLessThan(0.975);
  }
});

test("what a caught flow means as a dose: its range against simulated feed, solids, density, strength, scale and fit", () => {
  const at = "2026-03-01T12:00:00Z";
  const demo = [
    ...demoCommands(at),
    {
      do: "set" as const,
      kind: "feedCase" as const,
      id: "feed-2",
      fields: { totalSolidsPct: 2.5, totalSolidsUncertaintyPct: 0.04, densityLimitKgPerL: 0.01 },
    },
    { do: "set" as const, kind: "pump" as const, id: "pump-1", fields: { stream: "solution" } },
  ].reduce<StudyState>((state, command) => had(applyCommand(state, command as Command)).state, emptyState());
  const usual = plantChain(demo, "series-1", { a: 5.2, b: null }).cases[1]!;
  const { polymer } = usual.polymers[0]!;
  const flow = 17_000;
  const said = doseOfFlow(polymer, flow, { ...usual.load, parts: usual.feed.parts });
  const part = (name: string) => polymer.doseParts.find((one) => one.name === name)!.relative!;
  const random = seededRandom(51);
  const normal = normalFrom(random);
  const box = (limit: number) => limit * (2 * random() - 1);
  const doses = Array.from({ length: runs }, () => {
    const load = drySolidsKgPerH(
      16 * (1 + 0.015 * normal()),
      usual.densityKgPerL! + box(0.01),
      2.5 + 0.04 * normal(),
    );
    const active = (flow * 60 * 1 * (0.2 + box(0.01))) / 100 / 1000;
    const scale = 1 + part("bench scale") * normal() + part("fit of the bench curve") * normal();
    return (scale * 1000 * active) / load;
  }).sort((a, b) => a - b);
  const half = (doses[Math.floor(0.975 * runs)]! - doses[Math.floor(0.025 * runs)]!) / 2;
  expect((said.high! - said.low!) / 2 / half).toBeGreaterThan(0.95);
  expect((said.high! - said.low!) / 2 / half).toBeLessThan(1.05);
});

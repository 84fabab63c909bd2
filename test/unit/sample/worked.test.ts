import { expect, test } from "vitest";
import { dryMatterDensityKgPerL, sludgeDensityKgPerL } from "../../../src/sample/density.ts";
import {
  replicates,
  suspendedSolidsMgPerL,
  totalSolidsPct,
  volatileSolidsPct,
} from "../../../src/sample/solids.ts";
import { recipeFor, strengthFromMasses } from "../../../src/product/make-down.ts";

// Source of all figures here: the project's trade table, sections 0, 2 and 3, each recomputed independently.
const dishes = [
  { tareG: 48.1235, wetG: 73.4567, dryG: 48.753, ashG: 48.283 },
  { tareG: 47.881, wetG: 73.0125, dryG: 48.503, ashG: 48.0405 },
  { tareG: 50.2245, wetG: 75.881, dryG: 50.8611, ashG: 50.3849 },
];
const had = <T>(outcome: { ok: true; value: T } | { ok: false; message: string }): T => {
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.value;
};

test("worked 3.1, dishes, their mean and spread", () => {
  const ts = dishes.map((dish) => had(totalSolidsPct(dish)));
  [2.48488, 2.47498, 2.48124].forEach((value, i) => expect(ts[i]).toBeCloseTo(value, 5));
  const vs = dishes.map((dish) => had(volatileSolidsPct(dish)));
  [74.6624, 74.3569, 74.8036].forEach((value, i) => expect(vs[i]).toBeCloseTo(value, 4));
  const all = had(replicates(ts));
  expect(all.mean).toBeCloseTo(2.48037, 5);
  expect(all.sd).toBeCloseTo(0.0050075, 6);
  expect(all.relativeSdPct).toBeCloseTo(0.20188, 4);
  expect(all.standardError).toBeCloseTo(0.0028911, 6);
  expect(all.halfWidth95).toBeCloseTo(0.012439, 5);
  expect(had(replicates(vs)).mean).toBeCloseTo(74.6077, 4);
  expect(had(replicates(ts.slice(0, 2))).relativeDifferencePct).toBeCloseTo(0.3992, 4);
});

test("a cake dish, a filter, and masses out of order", () => {
  expect(had(totalSolidsPct({ tareG: 8.215, wetG: 63.015, dryG: 19.8412, ashG: null }))).toBeCloseTo(
    21.2157,
    4,
  );
  expect(had(suspendedSolidsMgPerL(0.125, 0.1893, 100))).toBeCloseTo(643, 6);
  expect(totalSolidsPct({ tareG: 50, wetG: 60, dryG: 61, ashG: null })).toMatchObject({ ok: false });
  expect(totalSolidsPct({ tareG: 50, wetG: null, dryG: 61, ashG: null })).toEqual({
    ok: false,
    message: "the dish with wet sludge is not weighed yet",
  });
});

test("worked densities (section 0)", () => {
  expect(dryMatterDensityKgPerL(75)).toBeCloseTo(1.1765, 4);
  expect(sludgeDensityKgPerL(2.5, 75)).toBeCloseTo(1.002, 4);
  expect(sludgeDensityKgPerL(5, 70)).toBeCloseTo(1.0073, 4);
  expect(sludgeDensityKgPerL(22, 75)).toBeCloseTo(1.0326, 4);
});

test("worked 2.1, make-down both ways", () => {
  for (const [activePct, density, dry, neat, ml, water] of [
    [92, null, true, 1.08696, null, 498.913],
    [42, 1.03, false, 2.38095, 2.3116, 497.619],
    [5, 1.01, false, 20, 19.802, 480],
  ] as const) {
    const recipe = had(recipeFor(0.2, 500, { activePct, densityKgPerL: density, dry }));
    expect(recipe.neatG).toBeCloseTo(neat, 5);
    expect(recipe.waterG).toBeCloseTo(water, 4);
    if (ml === null) expect(recipe.neatMl).toBeNull();
    else expect(recipe.neatMl).toBeCloseTo(ml, 4);
    expect(had(strengthFromMasses(recipe.neatG, 500, activePct))).toBeCloseTo(0.2, 12);
  }
  expect((0.5 * 42) / 100).toBeCloseTo(0.21, 10);
});

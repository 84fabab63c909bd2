import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { fitModel } from "../../src/curve/fit.ts";
import { fisherQuantile } from "../../src/curve/distributions.ts";
import { solveLeastSquares } from "../../src/curve/least-squares.ts";
import { models, modelNamed } from "../../src/curve/models/registry.ts";
import { previewPolynomial } from "../../src/curve/preview.ts";
import { heldDeviance } from "../../src/curve/profile.ts";

const doses = [1, 1, 2, 2, 3, 4, 4, 5, 6, 7, 8, 10];
// Never all alike: a perfect fit has no scatter to measure anything by.
const noisy = fc
  .array(fc.integer({ min: -300, max: 300 }), { minLength: 12, maxLength: 12 })
  .map((noise) => noise.map((value, i) => value / 1000 + 0.02 * Math.sin(7 * i + 1)));
const valley = (noise: number[], scale = 1) =>
  doses.map((x, i) => ({ x: x * scale, y: Math.exp(4 + 0.12 * (x - 5.5) ** 2 + noise[i]!), row: i + 2 }));

describe("fits", () => {
  test("do not depend on the order of rows", () => {
    fc.assert(
      fc.property(
        noisy,
        fc.constantFrom("quadratic", "quadratic-log", "gaussian-valley", "plateau"),
        (noise, name) => {
          const points = valley(noise);
          const a = fitModel(modelNamed(name)!, points, { scale: "log", influence: false }).report;
          const b = fitModel(modelNamed(name)!, [...points].reverse(), {
            scale: "log",
            influence: false,
          }).report;
          expect(b.status).toBe(a.status);
          if (a.rss !== null) expect(b.rss! / a.rss).toBeCloseTo(1, 7);
          if (a.optimum) expect(b.optimum!.dose / a.optimum.dose).toBeCloseTo(1, 5);
        },
      ),
      { numRuns: 25 },
    );
  });
  test("do not depend on the unit of dose", () => {
    fc.assert(
      fc.property(noisy, fc.constantFrom("quadratic", "quadratic-log", "cubic-log"), (noise, name) => {
        const kg = fitModel(modelNamed(name)!, valley(noise), { scale: "log", influence: false }).report
          .optimum;
        const lb = fitModel(modelNamed(name)!, valley(noise, 2), { scale: "log", influence: false }).report
          .optimum;
        expect(lb === null).toBe(kg === null);
        if (kg && lb) expect(lb.dose / kg.dose).toBeCloseTo(2, 6);
      }),
      { numRuns: 25 },
    );
  });
  test("Fieller's limits are those of the profile F", () => {
    fc.assert(
      fc.property(noisy, (noise) => {
        const fit = fitModel(modelNamed("quadratic")!, valley(noise), { scale: "log", influence: false });
        const [profile, fieller] = fit.report.optimum!.intervals;
        expect(fieller!.kind).toBe(profile!.kind);
        if (profile!.kind === "interval") {
          expect(profile!.low).toBeCloseTo(fieller!.low!, 6);
          expect(profile!.high).toBeCloseTo(fieller!.high!, 6);
          // at a limit the drop in fit is exactly F's 95 % point
          const { estimate, problem } = fit;
          const held =
            Math.exp(heldDeviance(fit.model, problem, new Map(), estimate.parameters, fieller!.low!) / 12) *
            12;
          expect((held / estimate.rss! - 1) * estimate.df).toBeCloseTo(
            fisherQuantile(0.95, 1, estimate.df),
            4,
          );
        }
      }),
      { numRuns: 25 },
    );
  });
  test("sums of squares decompose, and leverages add up to the parameters", () => {
    fc.assert(
      fc.property(noisy, (noise) => {
        const fit = fitModel(modelNamed("quadratic")!, valley(noise), { scale: "log", influence: false });
        const y = fit.problem.y;
        const mean = y.reduce((sum, value) => sum + value, 0) / y.length;
        const total = y.reduce((sum, value) => sum + (value - mean) ** 2, 0);
        const explained = y.reduce(
          (sum, value, i) => sum + (value - fit.estimate.residuals[i]! - mean) ** 2,
          0,
        );
        expect(explained + fit.estimate.rss!).toBeCloseTo(total, 8);
        expect(fit.estimate.leverage.reduce((sum, value) => sum + value, 0)).toBeCloseTo(3, 8);
      }),
    );
  });
  test("a bound nowhere near the curve changes nothing that matters: likelihood meets least squares", () => {
    const points = valley(doses.map((_, i) => 0.1 * Math.sin(i)));
    const plain = fitModel(modelNamed("quadratic")!, points, { scale: "log" }).report;
    const bound = fitModel(
      modelNamed("quadratic")!,
      [...points, { x: 5, y: 1e-6, row: 99, censored: "above" as const }],
      { scale: "log" },
    ).report;
    expect(bound.rss).toBeNull();
    bound.parameters.forEach((parameter, k) =>
      expect(parameter.value).toBeCloseTo(plain.parameters[k]!.value, 6),
    );
    expect(bound.warnings).toContain("censored");
  });
});

test("gradients agree with central differences", () => {
  for (const model of Object.values(models)) {
    // Any place on the model's own grid will do; what enters linearly is given a size.
    const grid = model.grid({ low: 1, high: 9 });
    const parameters = [...grid[Math.floor(grid.length / 2)]!];
    model.linear.forEach((k, j) => (parameters[k] = [3, 0.7, -0.05, 0.004][j]!));
    expect(parameters, model.name).toHaveLength(model.parameterNames.length);
    for (const x of [0.7, 2, 5.1, 9]) {
      const gradient = model.gradient(x, parameters);
      parameters.forEach((value, k) => {
        const step = 1e-5 * Math.max(1, Math.abs(value));
        const moved = (sign: number) =>
          model.value(
            x,
            parameters.map((p, j) => (j === k ? p + sign * step : p)),
          );
        expect(gradient[k], `${model.name} ${model.parameterNames[k]} at ${x}`).toBeCloseTo(
          (moved(1) - moved(-1)) / (2 * step),
          5,
        );
      });
    }
  }
});

test("the instant preview agrees with our own least squares to 1e-6", () => {
  fc.assert(
    fc.property(noisy, fc.constantFrom(1 as const, 2 as const, 3 as const), (noise, order) => {
      const points = valley(noise).map(({ x, y }) => ({ x, y: Math.log(y) }));
      const preview = previewPolynomial(points, order)!;
      const own = solveLeastSquares(
        points.map(({ x }) => Array.from({ length: order + 1 }, (_, k) => x ** k)),
        points.map(({ y }) => y),
      );
      if (own.status !== "fitted") throw new Error("singular");
      for (const x of [1, 3.3, 7, 10]) {
        const exact = own.coefficients.reduceRight((sum, b) => sum * x + b, 0);
        expect(Math.abs(preview.at(x) - exact)).toBeLessThan(1e-6 * Math.max(1, Math.abs(exact)));
      }
    }),
    { numRuns: 40 },
  );
});

import { describe, expect, test } from "vitest";
import { fitModel } from "../../src/curve/fit.ts";
import { solveLeastSquares } from "../../src/curve/least-squares.ts";
import { modelNamed } from "../../src/curve/models/registry.ts";
import nist from "./data/nist.json" with { type: "json" };
import { expectDigits } from "./digits.ts";

// Source: NIST Statistical Reference Datasets (StRD), linear least squares, certified values.
const sets = [
  { name: "Norris", degree: 1, parameters: 9, errors: 8, rss: 8 },
  { name: "Pontius", degree: 2, parameters: 9, errors: 8, rss: 8 },
  { name: "Wampler4", degree: 5, parameters: 9, errors: 8, rss: 8 },
  { name: "Filip", degree: 10, parameters: 10, errors: 8, rss: 8 },
] as const;

describe("NIST StRD linear sets, as polynomials", () => {
  for (const set of sets)
    test(set.name, () => {
      const data = nist.linear[set.name];
      const points = (data.x as number[]).map((x, i) => ({ x, y: data.y[i]!, row: i + 2 }));
      const { report } = fitModel(modelNamed("polynomial", set.degree)!, points, { scale: "linear" });
      expect(report.status).toBe("converged");
      report.parameters.forEach((parameter, k) => {
        expectDigits(parameter.value, data.params[k]!, set.parameters, `${set.name} b${k}`);
        expectDigits(parameter.se!, data.se[k]!, set.errors, `${set.name} se b${k}`);
      });
      expectDigits(report.rss!, data.rss, set.rss, `${set.name} rss`);
    });

  test("Wampler1, certified residuals of 0", () => {
    const data = nist.linear.Wampler1;
    const points = (data.x as number[]).map((x, i) => ({ x, y: data.y[i]!, row: i + 2 }));
    const { report } = fitModel(modelNamed("polynomial", 5)!, points, { scale: "linear" });
    report.parameters.forEach((parameter, k) =>
      expectDigits(parameter.value, data.params[k]!, 9, `Wampler1 b${k}`),
    );
    expect(report.rss!).toBeLessThan(1e-8);
    report.parameters.forEach((parameter) => expect(parameter.se!).toBeLessThan(1e-5));
  });

  test("Longley by the least-squares core", () => {
    const data = nist.linear.Longley;
    const rows = (data.x as unknown as number[][]).map((row) => [1, ...row]);
    const solved = solveLeastSquares(rows, data.y);
    if (solved.status !== "fitted") throw new Error("Longley was called singular");
    const variance = solved.rss / solved.df;
    solved.coefficients.forEach((value, k) => {
      expectDigits(value, data.params[k]!, 8, `Longley b${k}`);
      expectDigits(
        Math.sqrt(variance * solved.unscaledCovariance[k]![k]!),
        data.se[k]!,
        8,
        `Longley se b${k}`,
      );
    });
    expectDigits(solved.rss, data.rss, 8, "Longley rss");
  });
});

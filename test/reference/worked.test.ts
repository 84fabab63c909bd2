import { describe, expect, test } from "vitest";
import { eigenvaluesOf, secondOrderOf, secondOrderRow, stationaryPoint } from "../../src/curve/canonical.ts";
import { fitModel } from "../../src/curve/fit.ts";
import { lackOfFitTest, pureError, pureErrorCells } from "../../src/curve/lack-of-fit.ts";
import { solveLeastSquares } from "../../src/curve/least-squares.ts";
import { modelNamed } from "../../src/curve/models/registry.ts";
import { fitSurface } from "../../src/curve/surface.ts";
import { targetDesirability, desirability, overallDesirability } from "../../src/choice/desirability.ts";
import nist from "./data/nist.json" with { type: "json" };
import worked from "./data/worked.json" with { type: "json" };
import { expectDigits } from "./digits.ts";

// Each entry names its own source in data/worked.json; published figures stand beside recomputed ones there.
const line = (x: number[], y: number[], degree = 1) =>
  fitModel(
    modelNamed("polynomial", degree)!,
    x.map((dose, i) => ({ x: dose, y: y[i]!, row: i + 2 })),
    { scale: "linear" },
  ).report;

describe("lack of fit of published lines", () => {
  test("load cell, NIST handbook 4.6.1.5", () => {
    const { x, y } = nist.linear.Pontius;
    const straight = line(x as number[], y);
    const { computed } = worked.nist_handbook_4615_loadcell_lof;
    expectDigits(straight.residualSd!, computed.straight.s, 9, "sd");
    expectDigits(straight.lackOfFit!.f, computed.straight.lof.F, 6, "F");
    expectDigits(line(x as number[], y, 2).lackOfFit!.f, computed.quadratic.lof.F, 6, "F of the quadratic");
    // as printed in the handbook, to the digits printed there
    expect(straight.lackOfFit!.f).toBeCloseTo(214.7, 1);
  });

  for (const name of ["montgomery_runger_S11_1_lof", "draper_smith_lof"] as const)
    test(name, () => {
      const { x, y, computed } = worked[name];
      const report = line(x, y);
      expectDigits(report.parameters[1]!.value, computed.b[1]!, 9, "slope");
      expectDigits(report.lackOfFit!.f, computed.lof.F, 8, "F");
      expectDigits(report.lackOfFit!.p, computed.lof.p, 8, "p");
    });
});

describe("Fieller's three kinds, and the profile agrees", () => {
  for (const one of worked.fieller_quadratic_constructed.cases)
    test(one.case, () => {
      const report = fitModel(
        modelNamed("quadratic")!,
        one.x.map((x, i) => ({ x, y: one.y[i]!, row: i + 2 })),
        { scale: "linear" },
      ).report;
      expectDigits(report.optimum!.dose, one.optimum, 9, "optimum");
      const kind = one.fieller.kind === "whole line" ? "all" : one.fieller.kind;
      for (const method of ["fieller", "profile"]) {
        const interval = report.optimum!.intervals.find((found) => found.method === method)!;
        expect(interval.kind, method).toBe(kind);
        if (kind === "all") continue;
        expectDigits(interval.low!, one.fieller.lo!, 7, `${method} low`);
        expectDigits(interval.high!, one.fieller.hi!, 7, `${method} high`);
      }
    });
});

describe("response surfaces", () => {
  const { coded, y, computed, computed_with_exact_sqrt2_axial: exact } = worked.montgomery_ccd_yield;
  const rows = (axial: number) =>
    coded.x1.map((x1, i) => ({
      a: 85 + 5 * (Math.abs(x1) > 1 ? Math.sign(x1) * axial : x1),
      b: 175 + 5 * (Math.abs(coded.x2[i]!) > 1 ? Math.sign(coded.x2[i]!) * axial : coded.x2[i]!),
      y: y[i]!,
      row: i + 2,
    }));

  for (const [axial, name, values] of [
    [1.414, "axial points at 1.414", computed],
    [Math.SQRT2, "axial points at the square root of 2", exact],
  ] as const)
    test(`composite-design yield, ${name}`, () => {
      const { report } = fitSurface(rows(axial), "linear");
      report.parameters.forEach((parameter, k) =>
        expectDigits(parameter.value, values.natural_b[k]!, 8, parameter.name),
      );
      const at = values.stationary_coded;
      expectDigits(report.stationary!.x1, 85 + 5 * at[0]!, 9, "time");
      expectDigits(report.stationary!.x2, 175 + 5 * at[1]!, 9, "temperature");
      expect(report.stationary!.kind).toBe("maximum");
      expect(report.stationary!.value).toBeCloseTo(80.21, 2);
      expect(report.lackOfFit!.p).toBeCloseTo(0.289, 2);
    });

  test("blocks as an additive shift: chemical reaction in two runs", () => {
    const { x1, x2, block, y: response, computed: values } = worked.chemreact_rsm_blocks;
    const fit = fitSurface(
      x1.map((a, i) => ({ a, b: x2[i]!, y: response[i]!, row: i + 2, block: `B${block[i]! + 1}` })),
      "linear",
    );
    // the reference codes by its own units; ours by half-range, so compare in the file's units
    [0, 1, 2, 3, 4, 5].forEach((k) =>
      expectDigits(fit.report.parameters[k]!.value, values.b[k]!, 8, `b[${k}]`),
    );
    expectDigits(fit.report.parameters[6]!.value, values.b[6]!, 8, "block");
    expectDigits(fit.report.lackOfFit!.f, values.lack_of_fit.F, 7, "F");
    expectDigits(fit.report.stationary!.x1, values.stationary_coded[0]!, 8, "x1");
    expectDigits(fit.report.stationary!.x2, values.stationary_coded[1]!, 8, "x2");
    values.eigenvalues.forEach((value, k) =>
      expectDigits(fit.report.stationary!.eigenvalues[k]!, value, 8, "eigenvalue"),
    );
  });

  test("reduced models of the vapour-deposition example, coded levels rounded to 0.71", () => {
    const { pressure, h2wf6, uniformity, computed: values } = worked.nist_handbook_5473_cvd;
    const round = (value: number) =>
      Math.abs(Math.abs(value) - 0.7071) < 0.01 ? Math.sign(value) * 0.71 : Math.round(value * 100) / 100;
    const code = pressure.map((p, i) => [round((p - 42) / 38), round((h2wf6[i]! - 6) / 4)] as const);
    const solved = solveLeastSquares(
      code.map(([p, h]) => [1, p, h, p * h]),
      uniformity,
    );
    if (solved.status !== "fitted") throw new Error("singular");
    solved.coefficients.forEach((b, k) =>
      expectDigits(b, values.rounded071.uniformity_reduced.b[k]!, 8, `b${k}`),
    );
    const cells = pureErrorCells(
      code.map(([p, h]) => [p, h]),
      code.map(() => ""),
    );
    const lof = lackOfFitTest(solved.rss, 4, pureError(uniformity, cells))!;
    expectDigits(lof.f, values.rounded071.uniformity_reduced.lof.F, 7, "F");
    expect(lof.p).toBeCloseTo(0.7588, 4);
  });

  test("three factors: odour of a chemical process", () => {
    const { data, computed: values } = worked.sas_rsreg_smell;
    const rows3 = data.map(([, t, r, h]) => [(t! - 80) / 40, (r! - 0.5) / 0.2, (h! - 4) / 2]);
    // our columns: 1, x, x squared, cross terms in the order 12, 13, 23
    const solved = solveLeastSquares(
      rows3.map(secondOrderRow),
      data.map(([odour]) => odour!),
    );
    if (solved.status !== "fitted") throw new Error("singular");
    const surface = secondOrderOf(solved.coefficients, 3);
    const point = stationaryPoint(surface)!;
    values.stationary_coded.forEach((value, k) => expectDigits(point.at[k]!, value, 8, `x${k + 1}`));
    expectDigits(point.value, values.y_stationary, 8, "value");
    values.eigenvalues.forEach((value, k) =>
      expectDigits(eigenvaluesOf(surface.quadratic)[k]!, value, 8, "eigenvalue"),
    );
  });

  test("tyre tread, four responses and their desirability (data and optimum from memory, checked by refit)", () => {
    const { design, y: responses, computed: values } = worked.derringer_suich_tyre_tread;
    const fits = [0, 1, 2, 3].map((k) => {
      const solved = solveLeastSquares(
        design.map((x) => secondOrderRow(x)),
        responses.map((row) => row[k]!),
      );
      if (solved.status !== "fitted") throw new Error("singular");
      expectDigits(Math.sqrt(solved.rss / solved.df), values.s[k]!, 8, "s");
      return solved.coefficients;
    });
    const at = worked.derringer_suich_tyre_tread.published.optimum;
    const y = fits.map((b) => secondOrderRow(at).reduce((sum, value, j) => sum + value * b[j]!, 0));
    values.at_published.y.forEach((value, k) => expectDigits(y[k]!, value, 8, `y${k + 1}`));
    const d = [
      desirability(y[0]!, { worst: 120, best: 170, weight: 1 }),
      desirability(y[1]!, { worst: 1000, best: 1300, weight: 1 }),
      targetDesirability(y[2]!, 400, 500, 600),
      targetDesirability(y[3]!, 60, 67.5, 75),
    ];
    values.at_published.d.forEach((value, k) => expect(d[k]).toBeCloseTo(value, 8));
    expect(overallDesirability(d.map((one) => ({ desirability: one, weight: 1 })))).toBeCloseTo(
      values.at_published.D,
      8,
    );
  });
});

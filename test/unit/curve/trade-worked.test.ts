import { describe, expect, test } from "vitest";
import { fitModel } from "../../../src/curve/fit.ts";
import { modelNamed } from "../../../src/curve/models/registry.ts";
import { fitSurface } from "../../../src/curve/surface.ts";
import { ninetyDose } from "../../../src/curve/analyse-verdict.ts";
import type { Scale } from "../../../src/curve/types.ts";

// Source of all figures here: the project's trade table, section 5 and 6, each recomputed independently.
const points = (x: number[], y: number[]) => x.map((dose, i) => ({ x: dose, y: y[i]!, row: i + 2 }));
const uShape = points(
  [2, 2, 3, 3, 4, 4, 5, 5, 6, 6, 8, 8],
  [412, 455, 148, 131, 62, 70, 47, 43, 58, 52, 121, 136],
);
const fit = (name: string, data: ReturnType<typeof points>, scale: Scale) =>
  fitModel(modelNamed(name)!, data, { scale });
const interval = (report: ReturnType<typeof fit>["report"], method: string) =>
  report.optimum!.intervals.find((one) => one.method === method)!;

describe("worked 5.1, a U-shape", () => {
  test("quadratic in ln dose: coefficients, optimum and its three intervals", () => {
    const { report } = fit("quadratic-log", uShape, "log");
    [10.906988, -8.713077, 2.756836].forEach((value, k) =>
      expect(report.parameters[k]!.value).toBeCloseTo(value, 5),
    );
    expect(report.rss).toBeCloseTo(0.401044, 6);
    expect(report.optimum!.dose).toBeCloseTo(4.85625, 5);
    expect(report.residualSd).toBeCloseTo(0.211093, 6);
    expect(report.r2).toBeCloseTo(0.94273, 5);
    expect(report.lackOfFit!.f).toBeCloseTo(19.986, 3);
    expect(report.lackOfFit!.p).toBeCloseTo(0.00159, 5);
    expect(report.aicc).toBeCloseTo(-27.069, 3);
    expect(interval(report, "delta").low).toBeCloseTo(4.5055, 4);
    expect(interval(report, "delta").high).toBeCloseTo(5.2343, 4);
    for (const method of ["profile", "fieller"]) {
      expect(interval(report, method).low).toBeCloseTo(4.551, 4);
      expect(interval(report, method).high).toBeCloseTo(5.3267, 4);
    }
  });

  test("quadratic in dose, with both AICc scales", () => {
    const { report } = fit("quadratic", uShape, "log");
    [9.231967, -1.95367, 0.1764375].forEach((value, k) =>
      expect(report.parameters[k]!.value).toBeCloseTo(value, 5),
    );
    expect(report.optimum!.dose).toBeCloseTo(5.53644, 5);
    expect(report.optimum!.value).toBeCloseTo(45.777, 3);
    expect(report.lackOfFit!.f).toBeCloseTo(3.5134, 4);
    expect(report.lackOfFit!.p).toBeCloseTo(0.089, 4);
    expect(report.aicc).toBeCloseTo(-43.667, 3);
    expect(report.aiccNatural).toBeCloseTo(67.775, 2);
    expect(fit("quadratic", uShape, "linear").report.aiccNatural).toBeCloseTo(104.274, 3);
    expect(interval(report, "fieller").low).toBeCloseTo(5.4276, 4);
    expect(interval(report, "fieller").high).toBeCloseTo(5.6571, 4);
  });

  test("cubic in ln dose has the lowest AICc; the Gaussian valley runs away and says so", () => {
    const { report } = fit("cubic-log", uShape, "log");
    [5.643838, 4.671201, -7.554296, 2.466061].forEach((value, k) =>
      expect(report.parameters[k]!.value).toBeCloseTo(value, 5),
    );
    expect(report.optimum!.dose).toBeCloseTo(5.27189, 5);
    expect(report.aicc).toBeCloseTo(-44.842, 3);
    expect(fit("gaussian-valley", uShape, "log").report).toMatchObject({
      status: "not-converged",
      parameters: [],
      rss: null,
    });
  });
});

test("worked 5.2, a Gaussian valley with its shoulders", () => {
  const data = points(
    [0, 0, 1, 2, 3, 4, 5, 6, 7, 8, 10, 12],
    [905, 870, 760, 430, 165, 72, 50, 61, 112, 215, 520, 690],
  );
  const { report } = fit("gaussian-valley", data, "log");
  [6.76197, 2.89043, 5.35914, 2.10346].forEach((value, k) =>
    expect(report.parameters[k]!.value).toBeCloseTo(value, 5),
  );
  expect(report.parameters[2]!.se).toBeCloseTo(0.10146, 5);
  expect(report.rss).toBeCloseTo(0.260197, 6);
  expect(report.aicc).toBeCloseTo(-25.975, 3);
  expect(interval(report, "delta").low).toBeCloseTo(5.1252, 4);
  expect(interval(report, "delta").high).toBeCloseTo(5.5931, 4);
  expect(report.optimum!.value).toBeCloseTo(48.016, 3);
  const quadratic = fit("quadratic", data, "log").report;
  expect(quadratic.rss).toBeCloseTo(2.275115, 6);
  expect(quadratic.optimum!.dose).toBeCloseTo(5.9434, 4);
  expect(quadratic.aicc).toBeCloseTo(-6.24, 3);
});

const cake = points([0, 2, 3, 4, 5, 6, 8], [9.6, 15.1, 17.4, 18.8, 19.5, 20.1, 20.3]);

test("worked 5.3, cake: saturating curve and hockey stick", () => {
  const saturating = fit("saturating-exponential", cake, "linear");
  const [start, gain, rate] = saturating.report.parameters;
  expect(start!.value + gain!.value).toBeCloseTo(21.2775, 4);
  expect(start!.value).toBeCloseTo(9.49715, 5);
  expect(rate!.value).toBeCloseTo(0.362276, 6);
  expect(rate!.se).toBeCloseTo(0.03947, 5);
  expect(saturating.report.rss).toBeCloseTo(0.479202, 6);
  expect(saturating.report.optimum!.dose).toBeCloseTo(8.2692, 4);
  expect(saturating.report.optimum!.value).toBeCloseTo(20.6884, 4);
  expect(ninetyDose(saturating)).toBeCloseTo(6.3559, 4);
  const stick = fit("plateau", cake, "linear").report;
  expect(stick.parameters[0]!.value).toBeCloseTo(19.9667, 4);
  expect(stick.parameters[1]!.value).toBeCloseTo(2.35143, 5);
  expect(stick.optimum!.dose).toBeCloseTo(4.2665, 4);
  expect(stick.rss).toBeCloseTo(1.13352, 5);
});

test("worked 5.4, drainage: log-logistic with ED90 and ED95", () => {
  const drained = fit(
    "log-logistic",
    points([1, 2, 3, 4, 5, 6, 8], [22, 61, 138, 196, 228, 241, 250]),
    "linear",
  );
  [18.5422, 256.326, 2.99338, 3.80384].forEach((value, k) =>
    expect(drained.report.parameters[k]!.value).toBeCloseTo(value, k === 1 ? 3 : 4),
  );
  expect(drained.report.rss).toBeCloseTo(3.6378, 4);
  expect(ninetyDose(drained)).toBeCloseTo(5.33365, 5);
  expect(drained.report.optimum!.dose).toBeCloseTo(6.49137, 5);
});

test("worked 6.1, two polymers: coefficients and the stationary point in the file's units", () => {
  const grid = [-1, 0, 1].flatMap((x2) => [-1, 0, 1].map((x1) => [x1, x2] as const));
  const y = [210, 120, 96, 95, 47, 52, 88, 55, 83, 44, 50];
  const rows = [...grid, [0, 0] as const, [0, 0] as const].map(([x1, x2], i) => ({
    a: 6 + 3 * x1,
    b: 3 + x2,
    y: y[i]!,
    row: i + 2,
  }));
  const surface = fitSurface(rows, "log");
  [3.869687, -0.240648, -0.299239, 0.351522, 0.496374, 0.181066].forEach((value, k) =>
    expect(surface.coded.coefficients[k]).toBeCloseTo(value, 6),
  );
  expect(surface.report.residualSd).toBeCloseTo(0.100196, 6);
  expect(surface.report.r2).toBeCloseTo(0.978446, 6);
  expect(surface.report.lackOfFit).toMatchObject({ df1: 3, df2: 2 });
  expect(surface.report.lackOfFit!.f).toBeCloseTo(3.4276, 4);
  expect(surface.report.lackOfFit!.p).toBeCloseTo(0.234, 3);
  const stationary = surface.report.stationary!;
  expect(stationary.kind).toBe("minimum");
  expect(stationary.inside).toBe(true);
  expect(stationary.x1).toBeCloseTo(6.83313, 5);
  expect(stationary.x2).toBeCloseTo(3.25077, 5);
  expect(stationary.value).toBeCloseTo(44.6454, 4);
  expect(stationary.codedEigenvalues[0]).toBeCloseTo(0.30801, 6);
  expect(stationary.codedEigenvalues[1]).toBeCloseTo(0.539887, 6);
});

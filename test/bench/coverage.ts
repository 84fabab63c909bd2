// How often the 95 % intervals of the optimum hold the true dose, by simulation. Part of npm run bench.
// usage: node test/bench/coverage.ts [runs]
import { fitModel } from "../../src/curve/fit.ts";
import { modelNamed } from "../../src/curve/models/registry.ts";
import { normalFrom, seededRandom } from "../../src/curve/random.ts";

interface Case {
  name: string;
  model: string;
  value(dose: number): number;
  sd: number;
  doses: number[];
}

const truth = 6.5;
const spread = (n: number) => Array.from({ length: n }, (_, i) => 2 + (10 * i) / (n - 1));
const quadratic = (d: number) => 20 + 2 * (d - truth) ** 2;
const gaussian = (d: number) => 100 - 80 * Math.exp(-((d - truth) ** 2) / (2 * 2 ** 2));

const cases: Case[] = [
  { name: "quadratic, sd 3, 8 jars", model: "quadratic", value: quadratic, sd: 3, doses: spread(8) },
  { name: "quadratic, sd 8, 8 jars", model: "quadratic", value: quadratic, sd: 8, doses: spread(8) },
  { name: "quadratic, sd 8, 24 jars", model: "quadratic", value: quadratic, sd: 8, doses: spread(24) },
  { name: "Gaussian, sd 8, 8 jars", model: "gaussian-valley", value: gaussian, sd: 8, doses: spread(8) },
  { name: "Gaussian, sd 8, 24 jars", model: "gaussian-valley", value: gaussian, sd: 8, doses: spread(24) },
];

/** Prints the coverage of each case as a JSON line. */
export function printCoverage(runs: number): void {
  for (const one of cases) {
    const normal = normalFrom(seededRandom(17));
    const held = { profile: 0, delta: 0 };
    let unbounded = 0;
    let fitted = 0;
    for (let run = 0; run < runs; run++) {
      const points = one.doses.map((x, i) => ({ x, y: one.value(x) + one.sd * normal(), row: i + 2 }));
      const { report } = fitModel(modelNamed(one.model)!, points, { scale: "linear", influence: false });
      if (report.status !== "converged" || !report.optimum) continue;
      fitted += 1;
      for (const method of ["profile", "delta"] as const) {
        const interval = report.optimum.intervals.find((found) => found.method === method);
        if (!interval) continue;
        if (method === "profile" && interval.kind !== "interval") unbounded += 1;
        const above = interval.low === null || truth >= interval.low;
        const below = interval.high === null || truth <= interval.high;
        const inside =
          interval.kind === "complement" ? truth <= interval.low! || truth >= interval.high! : above && below;
        if (inside) held[method] += 1;
      }
    }
    const share = (count: number) => Number((count / fitted).toFixed(3));
    console.log(
      JSON.stringify({
        name: `coverage of 95 %: ${one.name}`,
        runs,
        fitted,
        profile: share(held.profile),
        delta: share(held.delta),
        unbounded: share(unbounded),
      }),
    );
  }
}

if (process.argv[1]?.endsWith("coverage.ts")) printCoverage(Number(process.argv[2] ?? 500));

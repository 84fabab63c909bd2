import { modelWords } from "../../words/curve.ts";
import { ladder, type CurveModel } from "./model.ts";

// 1 / (1 + (ed50/x)^slope), with its limits at dose 0.
function share(x: number, ed50: number, slope: number): number {
  if (x <= 0) return slope > 0 ? 0 : slope < 0 ? 1 : 0.5;
  const z = slope * Math.log(x / ed50);
  return z >= 0 ? 1 / (1 + Math.exp(-z)) : Math.exp(z) / (1 + Math.exp(z));
}

const positiveLow = ({ low, high }: { low: number; high: number }) => (low > 0 ? low : high / 20);

/** y = lower + (upper - lower) / (1 + (ed50/x)^slope): an S-shape in ln dose. */
export const logLogistic: CurveModel = {
  name: "log-logistic",
  get words() {
    return modelWords["log-logistic"];
  },
  parameterNames: ["lower", "upper", "ed50", "slope"],
  linear: [0, 1],
  nonlinear: [2, 3],
  positive: [2],
  logDose: true,
  definedAtZero: true,
  holdsAtZero: true,
  runAway: ([, , , slope = 0]) => Math.abs(slope) > 120 || Math.abs(slope) < 1e-2,
  ninetyDose: ([, , ed50 = 0, slope = 0]) => ed50 * 9 ** (1 / Math.abs(slope)),
  value: (x, [lower = 0, upper = 0, ed50 = 1, slope = 1]) => lower + (upper - lower) * share(x, ed50, slope),
  gradient: (x, [lower = 0, upper = 0, ed50 = 1, slope = 1]) => {
    const s = share(x, ed50, slope);
    const turn = (upper - lower) * s * (1 - s);
    return [1 - s, s, (-turn * slope) / ed50, x > 0 ? turn * Math.log(x / ed50) : 0];
  },
  basis: (x, parameters) => {
    const s = share(x, parameters[2] ?? 1, parameters[3] ?? 1);
    return [1 - s, s];
  },
  grid: (range) =>
    ladder(positiveLow(range) / 3, range.high * 3, 25).flatMap((ed50) =>
      ladder(0.5, 24, 14).map((slope) => [0, 0, ed50, slope]),
    ),
  turning: ([lower = 0, upper = 0, ed50 = 0, slope = 0]) =>
    slope === 0 || lower === upper || !(ed50 > 0)
      ? null
      : { dose: ed50 * 19 ** (1 / Math.abs(slope)), kind: "knee", gainPct: 95 },
  held: (dose, [, , , slope = 1]) => {
    const sign = slope < 0 ? -1 : 1;
    return {
      basis: (x, size) => {
        const s = share(x, dose / 19 ** (1 / size), sign * size);
        return [1 - s, s];
      },
      grid: ladder(0.2, 120, 28),
    };
  },
};

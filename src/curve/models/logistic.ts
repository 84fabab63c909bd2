import { modelWords } from "../../words/curve.ts";
import { ladder, steps, type CurveModel } from "./model.ts";

function sigmoid(z: number): number {
  return z >= 0 ? 1 / (1 + Math.exp(-z)) : Math.exp(z) / (1 + Math.exp(z));
}

const knee = Math.log(19);

/** y = lower + (upper - lower) / (1 + e^(-steepness (x - mid))): an S-shape in dose. */
export const logistic: CurveModel = {
  name: "logistic",
  get words() {
    return modelWords.logistic;
  },
  parameterNames: ["lower", "upper", "mid", "steepness"],
  linear: [0, 1],
  nonlinear: [2, 3],
  positive: [],
  logDose: false,
  definedAtZero: true,
  holdsAtZero: true,
  runAway: ([, , , steepness = 0], span) =>
    Math.abs(steepness) * span > 1e3 || Math.abs(steepness) * span < 1e-2,
  ninetyDose: ([, , mid = 0, steepness = 0]) => mid + Math.log(9) / Math.abs(steepness),
  value: (x, [lower = 0, upper = 0, mid = 0, steepness = 1]) =>
    lower + (upper - lower) * sigmoid(steepness * (x - mid)),
  gradient: (x, [lower = 0, upper = 0, mid = 0, steepness = 1]) => {
    const s = sigmoid(steepness * (x - mid));
    const slope = (upper - lower) * s * (1 - s);
    return [1 - s, s, -slope * steepness, slope * (x - mid)];
  },
  basis: (x, parameters) => {
    const s = sigmoid((parameters[3] ?? 1) * (x - (parameters[2] ?? 0)));
    return [1 - s, s];
  },
  grid: ({ low, high }) => {
    const span = Math.max(high - low, 1e-12);
    return steps(low - 0.2 * span, high + 0.2 * span, 25).flatMap((mid) =>
      ladder(1.2 / span, 60 / span, 14).map((steepness) => [0, 0, mid, steepness]),
    );
  },
  turning: ([lower = 0, upper = 0, mid = 0, steepness = 0]) =>
    steepness === 0 || lower === upper
      ? null
      : { dose: mid + knee / Math.abs(steepness), kind: "knee", gainPct: 95 },
  held: (dose, [, , , steepness = 1], { low, high }) => {
    const sign = steepness < 0 ? -1 : 1;
    const span = Math.max(high - low, 1e-12);
    return {
      basis: (x, size) => {
        const s = sigmoid(sign * size * (x - dose + knee / size));
        return [1 - s, s];
      },
      grid: ladder(0.3 / span, 200 / span, 28),
    };
  },
};

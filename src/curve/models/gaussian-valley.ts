import type { FastShape } from "../fast-refit.ts";
import { modelWords } from "../../words/curve.ts";
import { ladder, steps, type CurveModel } from "./model.ts";

// Both shoulders must have been tested, or the flat ends are only believed.
const shoulderSpreads = 1.75;

function bell(x: number, centre: number, spread: number): number {
  const z = (x - centre) / spread;
  return Math.exp(-0.5 * z * z);
}

// Values and gradients for all doses at once.
const fast: FastShape = {
  parameters: 4,
  fill(x, parameters, fitted, jacobian) {
    const base = parameters[0]!;
    const depth = parameters[1]!;
    const centre = parameters[2]!;
    const scale = 1 / parameters[3]!;
    for (let i = 0, at = 0; i < x.length; i++, at += 4) {
      const z = (x[i]! - centre) * scale;
      const bell = Math.exp(-0.5 * z * z);
      const slope = -depth * bell * z * scale;
      fitted[i] = base - depth * bell;
      jacobian[at] = 1;
      jacobian[at + 1] = -bell;
      jacobian[at + 2] = slope;
      jacobian[at + 3] = slope * z;
    }
  },
};

/** y = base - depth e^(-(x-centre)^2 / (2 spread^2)): a valley between two flat shoulders. */
export const gaussianValley: CurveModel = {
  name: "gaussian-valley",
  get words() {
    return modelWords["gaussian-valley"];
  },
  parameterNames: ["base", "depth", "centre", "spread"],
  linear: [0, 1],
  nonlinear: [2, 3],
  positive: [3],
  logDose: false,
  definedAtZero: true,
  holdsAtZero: true,
  fast,
  runAway: ([, , , spread = 0], span) => spread > 4 * span,
  carriedBy: ([, , centre = 0, spread = 1], { low, high }) =>
    low <= centre - shoulderSpreads * spread && high >= centre + shoulderSpreads * spread,
  value: (x, [base = 0, depth = 0, centre = 0, spread = 1]) => base - depth * bell(x, centre, spread),
  gradient: (x, [, depth = 0, centre = 0, spread = 1]) => {
    const e = bell(x, centre, spread);
    const z = (x - centre) / spread;
    return [1, -e, (-depth * e * z) / spread, (-depth * e * z * z) / spread];
  },
  basis: (x, parameters) => [1, -bell(x, parameters[2] ?? 0, parameters[3] ?? 1)],
  grid: ({ low, high }) => {
    const span = Math.max(high - low, 1e-12);
    return steps(low - 0.15 * span, high + 0.15 * span, 27).flatMap((centre) =>
      ladder(0.04 * span, 3 * span, 15).map((spread) => [0, 0, centre, spread]),
    );
  },
  turning: ([, depth = 0, centre = 0]) =>
    depth === 0 ? null : { dose: centre, kind: depth > 0 ? "minimum" : "maximum" },
  held: (dose, _estimate, { low, high }) => ({
    basis: (x, spread) => [1, -bell(x, dose, spread)],
    grid: ladder(0.03 * Math.max(high - low, 1e-12), 30 * Math.max(high - low, 1e-12), 28),
  }),
};

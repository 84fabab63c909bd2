import { modelWords } from "../../words/curve.ts";
import { ladder, steps, type CurveModel } from "./model.ts";

function bell(x: number, centre: number, spread: number): number {
  const z = (x - centre) / spread;
  return Math.exp(-0.5 * z * z);
}

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

import { modelWords } from "../../words/curve.ts";
import { steps, type CurveModel } from "./model.ts";

/** y = top - slope max(0, knee - x): a straight line up to the knee, level after it. */
export const plateau: CurveModel = {
  name: "plateau",
  get words() {
    return modelWords.plateau;
  },
  parameterNames: ["top", "slope", "knee"],
  linear: [0, 1],
  nonlinear: [2],
  positive: [],
  logDose: false,
  definedAtZero: true,
  holdsAtZero: true,
  corner: 2,
  value: (x, [top = 0, slope = 0, knee = 0]) => top - slope * Math.max(0, knee - x),
  gradient: (x, [, slope = 0, knee = 0]) => [1, -Math.max(0, knee - x), x < knee ? -slope : 0],
  basis: (x, parameters) => [1, -Math.max(0, (parameters[2] ?? 0) - x)],
  grid: ({ low, high }) =>
    steps(low, high, 64)
      .slice(1)
      .map((knee) => [0, 0, knee]),
  turning: ([, slope = 0, knee = 0]) => (slope !== 0 ? { dose: knee, kind: "knee", gainPct: 100 } : null),
  held: (dose) => ({ basis: (x) => [1, -Math.max(0, dose - x)], grid: [] }),
};

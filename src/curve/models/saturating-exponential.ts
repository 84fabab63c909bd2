import { modelWords } from "../../words/curve.ts";
import { ladder, type CurveModel } from "./model.ts";

const knee = Math.log(20);

/** y = start + gain (1 - e^(-rate x)): each step of dose does a fixed share of what is left to do. */
export const saturatingExponential: CurveModel = {
  name: "saturating-exponential",
  get words() {
    return modelWords["saturating-exponential"];
  },
  parameterNames: ["start", "gain", "rate"],
  linear: [0, 1],
  nonlinear: [2],
  positive: [2],
  logDose: false,
  definedAtZero: true,
  holdsAtZero: true,
  runAway: ([, , rate = 0], span) => rate * span < 5e-3 || rate * span > 2e3,
  ninetyDose: ([, , rate = 0]) => Math.log(10) / rate,
  value: (x, [start = 0, gain = 0, rate = 1]) => start - gain * Math.expm1(-rate * x),
  gradient: (x, [, gain = 0, rate = 1]) => [1, -Math.expm1(-rate * x), gain * x * Math.exp(-rate * x)],
  basis: (x, parameters) => [1, -Math.expm1(-(parameters[2] ?? 1) * x)],
  grid: ({ low, high }) => {
    const span = Math.max(high - Math.min(0, low), 1e-12);
    return ladder(1e-3 / span, 60 / span, 48).map((rate) => [0, 0, rate]);
  },
  turning: ([, gain = 0, rate = 0]) =>
    rate > 0 && gain !== 0 ? { dose: knee / rate, kind: "knee", gainPct: 95 } : null,
  held: (dose) => ({ basis: (x) => [1, -Math.expm1((-knee / dose) * x)], grid: [] }),
};

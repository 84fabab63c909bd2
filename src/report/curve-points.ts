import type { ResponseWorking } from "../curve/analyse-types.ts";
import { meanAt, meanBand, predictionBand } from "../curve/bands.ts";
import type { Fit } from "../curve/fit.ts";

const curveSteps = 120;
const predictionSteps = 60;
const beyondSteps = 12;
/** how far a curve is drawn past the doses tested, as a share of their range */
const beyondShare = 0.1;

export interface CurvePoint {
  dose: number;
  mean: number;
  low: number;
  high: number;
}

/** One fitted curve as points in kg/t, for any chart of it. */
export interface DrawnCurve {
  /** the doses of the jars that were fitted; null where nothing was */
  tested: { low: number; high: number } | null;
  /** fitted mean with its 95 % band over the doses tested */
  curve: CurvePoint[];
  /** where one more jar would fall, 95 % */
  prediction: { dose: number; low: number; high: number }[];
  /** the mean a little below and above the doses tested, where it is only the model's word */
  beyond: { dose: number; mean: number }[][];
}

const nothing: DrawnCurve = { tested: null, curve: [], prediction: [], beyond: [] };

const known = new WeakMap<Fit, DrawnCurve>();

/** The points of a response's fitted curve; all empty where no fit converged. Several charts of one fit share them. */
export function drawnCurve({ fit }: ResponseWorking): DrawnCurve {
  if (!fit || fit.report.status !== "converged") return nothing;
  const drawn = known.get(fit) ?? pointsOf(fit);
  known.set(fit, drawn);
  return drawn;
}

function pointsOf(fit: Fit): DrawnCurve {
  const { low, high } = fit.problem.range;
  const from = fit.model.definedAtZero ? low : Math.max(low, high / 1000);
  const doses = (start: number, end: number, steps: number) =>
    Array.from({ length: steps + 1 }, (_, i) => start + ((end - start) * i) / steps);
  const reach = (high - low) * beyondShare;
  const means = (start: number, end: number) =>
    end > start
      ? doses(start, end, beyondSteps)
          .map((dose) => ({ dose, mean: meanAt(fit, dose) }))
          .filter(({ mean }) => Number.isFinite(mean))
      : [];
  return {
    tested: { low: from, high },
    curve: doses(from, high, curveSteps)
      .map((dose) => ({ dose, mean: meanAt(fit, dose), ...meanBand(fit, dose) }))
      .filter((at) => [at.mean, at.low, at.high].every(Number.isFinite)),
    prediction: doses(from, high, predictionSteps)
      .map((dose) => ({ dose, ...predictionBand(fit, dose) }))
      .filter((at) => Number.isFinite(at.low) && Number.isFinite(at.high)),
    beyond: [means(Math.max(0, from - reach, high / 1000), from), means(high, high + reach)].filter(
      (piece) => piece.length > 1,
    ),
  };
}

import type { Fit } from "../curve/fit.ts";
import { curvesRoomWords } from "../words/curves-room.ts";
import type { Plot } from "./plot.ts";

/** How far one jar lies from its curve. */
export interface Residual {
  jar: string;
  /** its dose, or its place in the running order */
  at: number;
  deviations: number;
}

/** How far every jar of a fit lies from it; `at` places a jar by its dose in kg/t and its place in the running order. */
export function residualsOf(
  { problem, estimate }: Fit,
  jarName: (row: number) => string,
  at: (dose: number, order: number) => number,
): Residual[] {
  const sd = estimate.residualSd || 1;
  return problem.x.map((dose, i) => ({
    jar: jarName(problem.rows[i]!),
    at: at(dose, problem.order[i] ?? i + 1),
    deviations: estimate.residuals[i]! / sd,
  }));
}

/** deviations beyond which a jar is counted */
export const far = 2;
/** deviations from which a jar is named */
const named = 1.8;

/** Every jar's distance from the curve in standard deviations of the scatter. */
export function residualPlot(
  title: string,
  xTitle: string,
  residuals: Residual[],
  number: (value: number, digits?: number) => string,
): Plot {
  const says = curvesRoomWords.residuals;
  const places = residuals.map(({ at }) => at);
  const [low, high] = [Math.min(...places), Math.max(...places)];
  const air = (high - low || 1) * 0.06;
  const reach = Math.max(2.8, ...residuals.map(({ deviations }) => Math.abs(deviations) * 1.12));
  return {
    title,
    sentence: says.drawing(
      residuals.filter(({ deviations }) => Math.abs(deviations) > far).length,
      residuals.length,
    ),
    x: { title: xTitle, low: low - air, high: high + air },
    y: { title: says.deviations, low: -reach, high: reach },
    levels: [
      { look: "limit", name: `+${says.twoDeviations}`, value: far },
      { look: "zero", name: "", value: 0 },
      { look: "limit", name: `-${says.twoDeviations}`, value: -far },
    ],
    points: residuals.map(({ jar, at, deviations }) => ({
      x: at,
      y: deviations,
      look: "point",
      name: Math.abs(deviations) > named ? says.jar(jar) : "",
      says: says.point(jar, number(deviations, 2), number(at)),
    })),
  };
}

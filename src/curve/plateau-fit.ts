import { solveColumns } from "./deviance.ts";
import { finish, noEstimate, type Estimate, type Fixed } from "./estimate-result.ts";
import { goldenMinimum } from "./minimise.ts";
import type { CurveModel } from "./models/model.ts";
import type { Problem } from "./problem.ts";

/**
 * The plateau has a corner at each dose, so its knee is searched between every pair of neighbouring doses and the
 * best of all is taken. A knee that ends on the last dose says only that no level was reached: not converged.
 */
export function estimatePlateau(model: CurveModel, problem: Problem, fixed: Fixed, free: number[]): Estimate {
  const doses = [...new Set(problem.x)].sort((a, b) => a - b);
  const freeLinear = model.linear.filter((k) => !fixed.has(k));
  const solveAt = (knee: number) => {
    const basis = problem.x.map((x) => model.basis(x, [0, 0, knee]));
    const offset = basis.map((row) => row.reduce((sum, value, j) => sum + value * (fixed.get(j) ?? 0), 0));
    return solveColumns(
      basis.map((row) => row.filter((_, j) => !fixed.has(j))),
      problem,
      offset,
    );
  };
  let best: { at: number; value: number } | null = null;
  for (let i = 0; i + 1 < doses.length; i++) {
    // Left of the second dose a single dose would carry the whole slope.
    if (i === 0) continue;
    const place = goldenMinimum((knee) => solveAt(knee)?.deviance ?? Infinity, doses[i]!, doses[i + 1]!, 70);
    if (best === null || place.value < best.value) best = place;
  }
  const solved = best && solveAt(best.at);
  if (!best || !solved) return noEstimate("singular");
  const last = doses.at(-1)!;
  if (last - best.at < 1e-6 * (last - doses[0]!)) return noEstimate("not-converged", 1);
  const parameters = [fixed.get(0) ?? 0, fixed.get(1) ?? 0, best.at];
  freeLinear.forEach((k, j) => (parameters[k] = solved.coefficients[j]!));
  const shifts = solved.coefficients.slice(freeLinear.length);
  return finish(model, problem, free, parameters, shifts, doses.length);
}

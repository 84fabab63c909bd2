import { tQuantile } from "./distributions.ts";
import type { Estimate, Fixed } from "./estimate-result.ts";
import { estimate as estimateModel } from "./estimate.ts";
import type { CurveModel } from "./models/model.ts";
import { withoutRow, type Problem } from "./problem.ts";

/** Externally studentised residuals; NaN where one cannot be formed. */
function studentisedResiduals(result: Estimate): number[] {
  const rss = result.rss ?? NaN;
  const df = result.df;
  return result.residuals.map((r, i) => {
    const room = 1 - result.leverage[i]!;
    if (room < 1e-9 || df < 2) return NaN;
    const variance = (rss - (r * r) / room) / (df - 1);
    return variance > 0 ? r / Math.sqrt(variance * room) : Math.sign(r) * Infinity;
  });
}

/** Jars whose externally studentised residual lies beyond the Bonferroni cut at 5 % over all jars. */
export function findOutliers(problem: Problem, result: Estimate): { row: number; t: number; cut: number }[] {
  const n = problem.x.length;
  if (result.df < 2 || !(result.residualSd > 1e-12)) return [];
  const cut = tQuantile(1 - 0.05 / (2 * n), result.df - 1);
  return studentisedResiduals(result)
    .map((t, i) => ({ row: problem.rows[i]!, t, cut }))
    .filter(({ t }) => Number.isFinite(t) && Math.abs(t) > cut);
}

/** How far the optimum moves without each row: refits warm-started from the whole fit, largest shift first. */
export function influenceOf(
  model: CurveModel,
  problem: Problem,
  fixed: Fixed,
  result: Estimate,
  dose: number,
): { row: number; shift: number }[] {
  const shifts: { row: number; shift: number }[] = [];
  for (let i = 0; i < problem.x.length; i++) {
    const rest = withoutRow(problem, i);
    const again = estimateModel(model, rest, fixed, result.parameters);
    if (again.status !== "converged") continue;
    const turning = model.turning(again.parameters, problem.range);
    if (turning && Number.isFinite(turning.dose))
      shifts.push({ row: problem.rows[i]!, shift: turning.dose - dose });
  }
  return shifts.sort((a, b) => Math.abs(b.shift) - Math.abs(a.shift) || a.row - b.row);
}

/** Whether residuals drift with the running order (t test of their correlation at 1 %, at least six jars). */
export function orderTrend(problem: Problem, result: Estimate): boolean {
  const pairs = problem.order.flatMap((order, i) =>
    order === null ? [] : [[order, result.residuals[i]!] as const],
  );
  const n = pairs.length;
  if (n < 6) return false;
  const mean = (k: 0 | 1) => pairs.reduce((sum, pair) => sum + pair[k], 0) / n;
  const [mx, my] = [mean(0), mean(1)];
  let sxy = 0;
  let sxx = 0;
  let syy = 0;
  for (const [x, y] of pairs) {
    sxy += (x - mx) * (y - my);
    sxx += (x - mx) ** 2;
    syy += (y - my) ** 2;
  }
  if (!(sxx > 0) || !(syy > 0)) return false;
  const r = sxy / Math.sqrt(sxx * syy);
  const t = (r * Math.sqrt(n - 2)) / Math.sqrt(Math.max(1e-15, 1 - r * r));
  return Math.abs(t) > tQuantile(0.995, n - 2);
}

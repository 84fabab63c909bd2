import type { Censoring } from "./likelihood.ts";
import type { Range } from "./models/model.ts";
import type { DosePoint, Scale } from "./types.ts";

/** The data of one fit on the fit's own scale. Rows keep the order they came in. */
export interface Problem {
  scale: Scale;
  x: number[];
  /** on the fit's scale */
  y: number[];
  rows: number[];
  /** every row behind each point: more than one where a jar was read again */
  allRows: number[][];
  censored: Censoring[];
  anyCensored: boolean;
  /** block names beyond the first, and one 0/1 column for each */
  blockNames: string[];
  blockColumns: number[][];
  /** the block of each row, for pure-error cells */
  blockOf: string[];
  /** jars of one planned dose share a group; empty where none was given */
  groupOf: string[];
  order: (number | null)[];
  range: Range;
  distinctDoses: number;
}

/** On the fit's scale. */
export function onScale(y: number, scale: Scale): number {
  return scale === "log" ? Math.log(y) : y;
}

/** Back from the fit's scale: the median, for a log. */
export function offScale(value: number, scale: Scale): number {
  return scale === "log" ? Math.exp(value) : value;
}

/** Lays out points for a fit. The caller has refused y <= 0 on the log scale. */
export function buildProblem(points: DosePoint[], scale: Scale): Problem {
  const blockOf = points.map((point) => point.block ?? "");
  const blockNames = [...new Set(blockOf)].sort().slice(1);
  const x = points.map((point) => point.x);
  const censored = points.map((point): Censoring =>
    point.censored === "above" ? 1 : point.censored === "below" ? -1 : 0,
  );
  return {
    scale,
    x,
    y: points.map((point) => onScale(point.y, scale)),
    rows: points.map((point) => point.row),
    allRows: points.map((point) => point.allRows ?? [point.row]),
    censored,
    anyCensored: censored.some((sign) => sign !== 0),
    blockNames,
    blockColumns: points.map((_, i) => blockNames.map((name) => (blockOf[i] === name ? 1 : 0))),
    blockOf,
    groupOf: points.map((point) => point.group ?? ""),
    order: points.map((point) => point.order ?? null),
    range: { low: Math.min(...x), high: Math.max(...x) },
    distinctDoses: countDistinct(x),
  };
}

/** Doses that differ by more than 1 %. */
export function countDistinct(x: number[]): number {
  const sorted = [...x].sort((a, b) => a - b);
  let count = 0;
  let head = NaN;
  for (const value of sorted) {
    if (count === 0 || Math.abs(value - head) > 0.01 * Math.abs(value) + 1e-12) {
      count += 1;
      head = value;
    }
  }
  return count;
}

/** The same problem without one row. */
export function withoutRow(problem: Problem, index: number): Problem {
  const drop = <T>(list: T[]) => list.filter((_, i) => i !== index);
  const x = drop(problem.x);
  const blockOf = drop(problem.blockOf);
  const blockNames = problem.blockNames.filter((name) => blockOf.includes(name));
  const censored = drop(problem.censored);
  return {
    ...problem,
    x,
    y: drop(problem.y),
    rows: drop(problem.rows),
    allRows: drop(problem.allRows),
    censored,
    anyCensored: censored.some((sign) => sign !== 0),
    blockOf,
    blockNames,
    blockColumns: blockOf.map((block) => blockNames.map((name) => (block === name ? 1 : 0))),
    groupOf: drop(problem.groupOf),
    order: drop(problem.order),
    distinctDoses: countDistinct(x),
  };
}

import { fisherUpperTail } from "./distributions.ts";
import type { FTest } from "./types.ts";

const sameDose = 0.01;

/**
 * Cells of equal conditions for pure error: doses within 1 % of the lowest of their cell count as one,
 * and jars of different blocks never share a cell. Answers a cell number for each observation.
 */
export function pureErrorCells(doses: number[][], blocks: string[]): number[] {
  const order = doses.map((_, i) => i).sort((i, j) => compare(doses[i]!, doses[j]!));
  const heads: { dose: number[]; block: string; cell: number }[] = [];
  const cells = new Array<number>(doses.length).fill(0);
  for (const i of order) {
    const dose = doses[i]!;
    const head = heads.find(
      (candidate) =>
        candidate.block === blocks[i]! &&
        candidate.dose.every((value, k) => Math.abs(value - dose[k]!) <= sameDose * Math.abs(value) + 1e-12),
    );
    if (head) cells[i] = head.cell;
    else {
      heads.push({ dose, block: blocks[i]!, cell: heads.length });
      cells[i] = heads.length - 1;
    }
  }
  return cells;
}

function compare(a: number[], b: number[]): number {
  for (let k = 0; k < a.length; k++) if (a[k] !== b[k]) return a[k]! - b[k]!;
  return 0;
}

export interface PureError {
  ss: number;
  df: number;
  /** number of distinct cells */
  cells: number;
}

/** Pure-error sum of squares within cells (source: Draper & Smith; Box & Draper). */
export function pureError(y: number[], cells: number[]): PureError {
  const sums = new Map<number, { n: number; mean: number; ss: number }>();
  for (const [i, value] of y.entries()) {
    const cell = sums.get(cells[i]!) ?? { n: 0, mean: 0, ss: 0 };
    cell.n += 1;
    const shift = value - cell.mean;
    cell.mean += shift / cell.n;
    cell.ss += shift * (value - cell.mean);
    sums.set(cells[i]!, cell);
  }
  const ss = [...sums.values()].reduce((sum, cell) => sum + cell.ss, 0);
  return { ss, df: y.length - sums.size, cells: sums.size };
}

/** The lack-of-fit F test, or null where replicates or doses do not allow it. */
export function lackOfFitTest(rss: number, freeParameters: number, error: PureError): FTest | null {
  const df1 = error.cells - freeParameters;
  if (df1 <= 0 || error.df <= 0 || !(error.ss > 0)) return null;
  const f = Math.max(0, rss - error.ss) / df1 / (error.ss / error.df);
  return { f, df1, df2: error.df, p: fisherUpperTail(f, df1, error.df) };
}

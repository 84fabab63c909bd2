import { contours } from "d3-contour";
import { surfaceMean } from "../curve/surface-bands.ts";
import type { SurfaceFit } from "../curve/surface.ts";

const steps = 60;
const levelCount = 8;
/** points of each line are 0 to `steps` along a dose; the drawing puts them where it likes */
export const gridSide = steps + 1;

export interface PairGrid {
  rangeA: { low: number; high: number };
  rangeB: { low: number; high: number };
  /** row by row from low B to high B, low A to high A within a row; kg/t */
  doses: { a: number; b: number }[];
  values: number[];
  /** round values between the lowest and the highest */
  levels: number[];
}

/** A fitted surface on a regular grid over the doses tested, with the levels worth a line. */
export function pairGrid(surface: SurfaceFit): PairGrid {
  const range = (k: 0 | 1) => ({
    low: surface.middle[k] - surface.half[k],
    high: surface.middle[k] + surface.half[k],
  });
  const [rangeA, rangeB] = [range(0), range(1)];
  const at = ({ low, high }: { low: number; high: number }, i: number) => low + ((high - low) * i) / steps;
  const doses = Array.from({ length: gridSide * gridSide }, (_, i) => ({
    a: at(rangeA, i % gridSide),
    b: at(rangeB, Math.floor(i / gridSide)),
  }));
  const values = doses.map(({ a, b }) => surfaceMean(surface, a, b));
  return { rangeA, rangeB, doses, values, levels: levelsOf(values, surface.scale === "log") };
}

function levelsOf(values: number[], log: boolean): number[] {
  const low = Math.min(...values);
  const high = Math.max(...values);
  if (!(high > low)) return [];
  return Array.from({ length: levelCount }, (_, i) => {
    const share = (i + 0.6) / levelCount;
    return log && low > 0
      ? Number((low * (high / low) ** share).toPrecision(2))
      : Number((low + (high - low) * share).toPrecision(3));
  });
}

/** Where a grid takes a value, as lines of shares (0 to 1) along both doses; the grid's own edges are left away. */
export function levelLines(values: number[], level: number): { a: number; b: number }[][] {
  const [shape] = contours().size([gridSide, gridSide]).thresholds([level])(values);
  return (shape?.coordinates ?? []).flat().flatMap((ring) => {
    const pieces: { a: number; b: number }[][] = [[]];
    for (const [column = 0, row = 0] of ring) {
      // The library puts the value of a grid point at its index and a half.
      const point = { a: (column - 0.5) / steps, b: (row - 0.5) / steps };
      const onEdge = [point.a, point.b].some((share) => share <= 0 || share >= 1);
      if (onEdge) pieces.push([]);
      else pieces.at(-1)!.push(point);
    }
    return pieces.filter((piece) => piece.length > 1);
  });
}

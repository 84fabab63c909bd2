/** One jar of a two-polymer series. */
export interface PairPoint {
  a: number;
  b: number;
  value: number;
  label: string;
  leftOut?: boolean;
}

/** A response over both doses, on a regular grid in display units. */
export interface ContourData {
  labelA: string;
  labelB: string;
  valueLabel: string;
  rangeA: { low: number; high: number };
  rangeB: { low: number; high: number };
  /** row by row from low B to high B, low A to high A within a row, natural scale */
  grid: { columns: number; rows: number; values: number[] };
  levels: number[];
  points: PairPoint[];
  stationary: { a: number; b: number; label: string } | null;
  /** how far each grid point is from being the stationary point, 1 at the edge of the 95 % region; same order as the grid */
  region: number[] | null;
  /** limit lines with the failing side marked; grid of that response's values */
  limits: { label: string; values: number[]; limit: number; failing: "above" | "below" }[];
}

/** One jar on a dose chart. */
export interface ChartPoint {
  dose: number;
  value: number;
  label: string;
  /** left out of the fit: drawn hollow */
  leftOut?: boolean;
  /** "above": the true value is at least this; drawn with an arrow */
  censored?: "above" | "below" | null;
}

/** A vertical mark with its words, for example the plant's present dose. */
export interface DoseMark {
  dose: number;
  label: string;
  tone: "accent" | "soft" | "warn";
}

/** Everything one response's chart shows, in display units. */
export interface DoseChartData {
  doseLabel: string;
  valueLabel: string;
  /** the unit of the values alone, for a chart too low for the whole label */
  valueUnit: string;
  logValue: boolean;
  doseRange: { low: number; high: number };
  tested: { low: number; high: number } | null;
  points: ChartPoint[];
  /** plant runs on the same axes, each with a mark of its own */
  plantPoints?: ChartPoint[];
  /** fitted mean with its band, in rising dose; empty where there is no fit */
  curve: { dose: number; mean: number; low: number; high: number }[];
  /** where one more jar would fall (95 % prediction); empty where it is not shown */
  prediction: { dose: number; low: number; high: number }[];
  /** the mean a little past the doses tested, in pieces: only the model's word, drawn faint and dotted */
  beyond: { dose: number; mean: number }[][];
  /** instant preview polynomial, drawn dotted and labelled; empty otherwise */
  preview: { dose: number; mean: number }[];
  limit: {
    value: number;
    side: "at-most" | "at-least";
    label: string;
    /** the same words for another value, while the line is dragged to it */
    wordsAt?: (value: number) => string;
  } | null;
  interval: { low: number; high: number } | null;
  marks: DoseMark[];
  polymer: "a" | "b";
}

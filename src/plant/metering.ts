import { good, type Outcome } from "../outcome.ts";
import { bySetting, checkPump, steadinessPct, type Draw } from "./pump-line.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/**
 * Limits of the API 675-style check: steadiness 1 % of the mean, repeatability and linearity 3 % of the top flow,
 * turndown 10 : 1. Source: API 675, third edition 2012, as quoted in a secondary page; the reading of its terms is our
 * own. The standard covers reciprocating controlled-volume pumps only.
 */
const meteringLimits = {
  steadinessPct: 1,
  repeatabilityPct: 3,
  linearityPct: 3,
  turndown: 10,
} as const;

export interface MeteringFigure {
  name: "steadiness" | "repeatability" | "linearity" | "turndown";
  /** null where the draws do not allow it */
  value: number | null;
  limit: number;
  within: boolean | null;
  /** what is missing, or "" */
  missing: string;
}

/** Steadiness, repeatability, linearity and turndown of a draw-down calibration against their limits. */
export function meteringFigures(draws: Draw[]): Outcome<MeteringFigure[]> {
  const check = checkPump(draws);
  if (!check.ok) return check;
  const repeated = bySetting(draws).filter(({ flows }) => flows.length > 1);
  const steadiness =
    repeated.length === 0 ? null : Math.max(...repeated.map(({ flows }) => steadinessPct(flows)));
  const figure = (
    name: MeteringFigure["name"],
    value: number | null,
    limit: number,
    within: (value: number) => boolean,
  ): MeteringFigure => ({
    name,
    value,
    limit,
    within: value === null ? null : within(value),
    missing: value === null ? plantFormulaWords.pump.repeat : "",
  });
  const { repeatabilityPct, linearityPct, turndown } = check.value;
  return good([
    figure("steadiness", steadiness, meteringLimits.steadinessPct, (value) => value <= 1),
    figure("repeatability", repeatabilityPct, meteringLimits.repeatabilityPct, (value) => value <= 3),
    figure("linearity", linearityPct, meteringLimits.linearityPct, (value) => value <= 3),
    figure("turndown", turndown, meteringLimits.turndown, (value) => value >= 10),
  ]);
}

/** A lowest and a highest value of something the pump has to follow. */
export interface Span {
  low: number;
  high: number;
}

/** Turndown that the feed and the dose ask of a pump: highest over lowest of flow x dose x solids, all independent. */
export function turndownNeeded(spans: { feedM3PerH: Span; doseKgPerT: Span; totalSolidsPct: Span }): number {
  return Object.values(spans).reduce((product, { low, high }) => (product * high) / low, 1);
}

import type { QuantityKind } from "../../units/display.ts";

/** One named value that went into a result, in the unit it was entered or derived in. */
export interface MadeInput {
  name: string;
  value: number | string | null;
  unit: string;
  /** reckoned upstream and given by nobody, though it may have few digits by chance */
  derived?: boolean;
}

/** How a number was made: its formula in plain signs, what went in, and where the formula comes from. */
export interface Made {
  formula: string;
  inputs: MadeInput[];
  source: string;
}

/**
 * A derived number as every screen, sheet and report shows it. `value` is in the quantity's canonical (metric) unit;
 * where it could not be had it is null and `missing` says which input is missing. `spread` is a 95 % half-width.
 */
export interface Figure {
  quantity: QuantityKind;
  value: number | null;
  spread: number | null;
  low: number | null;
  high: number | null;
  missing: string | null;
  /** somebody gave it: told as it was typed, wherever it is shown */
  given: boolean;
  made: Made;
}

/** A figure that was had. */
export function figure(
  quantity: QuantityKind,
  value: number,
  made: Made,
  bounds: { spread?: number | null; low?: number | null; high?: number | null; given?: boolean } = {},
): Figure {
  return {
    quantity,
    value,
    spread: bounds.spread ?? null,
    low: bounds.low ?? null,
    high: bounds.high ?? null,
    missing: null,
    given: bounds.given ?? false,
    made,
  };
}

/** A figure that could not be had, with the sentence that says which input is missing. */
export function missingFigure(quantity: QuantityKind, missing: string, made: Made): Figure {
  return { quantity, value: null, spread: null, low: null, high: null, missing, given: false, made };
}

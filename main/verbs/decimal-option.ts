import { bad, good, type Outcome } from "../../src/outcome.ts";
import type { DecimalMark } from "../../src/units/number-entry.ts";

/** The value of --decimal: a point, a comma, or nothing said. */
export function decimalOption(value: unknown): Outcome<DecimalMark | null> {
  if (value === undefined) return good(null);
  if (value === "." || value === ",") return good(value);
  return bad(`--decimal takes "." or ",", not "${String(value)}".`);
}

/** A number given on the command line: always with a point. */
export function numberOption(
  name: string,
  value: string,
  low: number,
  high: number,
  whole = false,
): Outcome<number> {
  const number = /^[+-]?(\d+(\.\d*)?|\.\d+)(e[+-]?\d+)?$/i.test(value.trim()) ? Number(value) : NaN;
  if (!Number.isFinite(number)) return bad(`--${name} takes a number, not "${value}".`);
  if (number < low || number > high || (whole && !Number.isInteger(number)))
    return bad(
      `--${name} takes ${whole ? "a whole number" : "a number"} from ${low} to ${high}, not ${value}.`,
    );
  return good(number);
}

import { bad, good, type Outcome } from "../outcome.ts";
import { numberEntryWords as words } from "../words/number-entry.ts";

export type DecimalMark = "." | ",";

/** A typed reading: a number, or a number the instrument could only say the true value is above or below. */
export interface TypedReading {
  value: number;
  censored: "above" | "below" | null;
}

// A run of three digits after a single mark is how other programs print thousands: readable two ways.
const couldBeThousands = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;
const plainNumber = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d{1,3})?$/i;

/** Whether a number could have a decimal mark or a thousands mark in it, so that its file's mark must be known first. */
export function readsTwoWays(text: string): boolean {
  return couldBeThousands.test(text.trim().replace(/^\u2212/, "-"));
}

/**
 * Reads a number as people type it, under the decimal mark in force (null where none is known yet).
 * No thousands mark is ever accepted. Refused text gets one sentence that says what to do.
 */
export function parseNumber(text: string, mark: DecimalMark | null): Outcome<number> {
  const trimmed = text.trim().replace(/^\u2212/, "-");
  if (trimmed === "") return bad(words.empty);
  const shown = trimmed.length > 30 ? `${trimmed.slice(0, 30)}…` : trimmed;
  if (/^[+-]?[\d.,\s'\u00a0\u202f]+$/.test(trimmed) && /\d[\s'\u00a0\u202f]+\d/.test(trimmed))
    return bad(words.gap(shown));
  if (/[.,].*[.,]/.test(trimmed) && /^[+-]?[\d.,]+$/.test(trimmed)) return bad(words.marks(shown));
  if (!plainNumber.test(trimmed)) {
    if (/^[+-]?[\d.,]+\s*[^\d.,\s]/.test(trimmed)) return bad(words.more(shown));
    return bad(words.notNumber(shown));
  }
  const used = trimmed.includes(",") ? "," : trimmed.includes(".") ? "." : null;
  if (mark === null && readsTwoWays(trimmed)) return bad(words.twoWays(shown));
  if (used !== null && mark !== null && used !== mark) return bad(words.otherMark(shown, mark));
  const value = Number(trimmed.replace(",", "."));
  if (!Number.isFinite(value)) return bad(words.tooLarge(shown));
  return good(Object.is(value, -0) ? 0 : value);
}

/** As parseNumber, with ">" or "<" before the number for a reading beyond the instrument's range. */
export function parseReading(text: string, mark: DecimalMark | null): Outcome<TypedReading> {
  const trimmed = text.trim();
  const sign = /^[<>]/.exec(trimmed)?.[0];
  const parsed = parseNumber(sign ? trimmed.slice(1) : trimmed, mark);
  if (!parsed.ok) return parsed;
  return good({ value: parsed.value, censored: sign === ">" ? "above" : sign === "<" ? "below" : null });
}

/** What a cell says about the decimal mark of its file: a mark it decides, or null where it could be either. */
export function decidedMark(text: string): DecimalMark | null {
  const trimmed = text.trim().replace(/^[<>]\s*/, "");
  if (!plainNumber.test(trimmed) || couldBeThousands.test(trimmed)) return null;
  return trimmed.includes(",") ? "," : trimmed.includes(".") ? "." : null;
}

/** The text of a number without its exponent: 1e-7 is 0.0000001. */
export function withoutExponent(text: string): string {
  const parts = /^(-?)(\d+)(?:\.(\d+))?e([+-]\d+)$/.exec(text);
  if (!parts) return text;
  const [, sign = "", whole = "", rest = "", power = "0"] = parts;
  const digits = whole + rest;
  const at = whole.length + Number(power);
  if (at <= 0) return `${sign}0.${"0".repeat(-at)}${digits}`;
  return sign + (at < digits.length ? `${digits.slice(0, at)}.${digits.slice(at)}` : digits.padEnd(at, "0"));
}

/**
 * A number as text under a decimal mark: shortest text that reads back as the same number, no thousands marks, no
 * exponent.
 */
export function writeNumber(value: number, mark: DecimalMark): string {
  if (!Number.isFinite(value)) return "";
  const text = withoutExponent(String(value));
  return mark === "," ? text.replace(".", ",") : text;
}

/** a stored number with more significant digits than this was typed in another unit than the one it is stored in */
const typedAtMost = 12;
/** a number with more significant digits than this was typed by nobody */
const typedByHand = 6;

const significantDigits = (value: number) => value.toExponential().split("e")[0]!.replace(/\D/g, "").length;

/** Whether somebody may have typed this number; one that was reckoned or moved to carries more digits. */
export const mayBeTyped = (value: number) => significantDigits(value) <= typedByHand;

/**
 * An entered number as it is shown: as it was entered. Told in another unit it gets as many significant digits as were
 * entered and one more, four at least, so that a round entry does not grow a tail; in the unit that it was typed in it
 * comes back as it was typed.
 */
export function entryShown(stored: number, shown: number): number {
  const typed = significantDigits(stored);
  if (shown === stored) return typed > typedAtMost ? Number(stored.toPrecision(6)) : stored;
  return Number(shown.toPrecision(Math.min(8, Math.max(4, typed + 1))));
}

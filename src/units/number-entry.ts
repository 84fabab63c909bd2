import { bad, good, type Outcome } from "../outcome.ts";

export type DecimalMark = "." | ",";

/** A typed reading: a number, or a number the instrument could only say the true value is above or below. */
export interface TypedReading {
  value: number;
  censored: "above" | "below" | null;
}

// A run of three digits after a single mark is how other programs print thousands: readable two ways.
const couldBeThousands = /^[+-]?[1-9]\d{0,2}[.,]\d{3}$/;
const plainNumber = /^[+-]?(\d+([.,]\d*)?|[.,]\d+)(e[+-]?\d{1,3})?$/i;

/**
 * Reads a number as people type it, under the decimal mark in force (null where none is known yet).
 * No thousands mark is ever accepted. Refused text gets one sentence that says what to do.
 */
export function parseNumber(text: string, mark: DecimalMark | null): Outcome<number> {
  const trimmed = text.trim().replace(/^\u2212/, "-");
  if (trimmed === "") return bad("Nothing is entered here.");
  const shown = trimmed.length > 30 ? `${trimmed.slice(0, 30)}…` : trimmed;
  if (/^[+-]?[\d.,\s'\u00a0\u202f]+$/.test(trimmed) && /\d[\s'\u00a0\u202f]+\d/.test(trimmed))
    return bad(`"${shown}" has a gap between its digits: enter the number without thousands marks.`);
  if (/[.,].*[.,]/.test(trimmed) && /^[+-]?[\d.,]+$/.test(trimmed))
    return bad(`"${shown}" has more than one mark: enter the number without thousands marks.`);
  if (!plainNumber.test(trimmed)) {
    if (/^[+-]?[\d.,]+\s*[^\d.,\s]/.test(trimmed))
      return bad(
        `"${shown}" is more than a number: enter the number alone, its unit stands beside the cell.`,
      );
    return bad(`"${shown}" is not a number: enter digits only.`);
  }
  const used = trimmed.includes(",") ? "," : trimmed.includes(".") ? "." : null;
  if (used !== null && mark === null && couldBeThousands.test(trimmed))
    return bad(
      `"${shown}" could be read two ways: say first whether the decimal mark is a point or a comma.`,
    );
  if (used !== null && mark !== null && used !== mark)
    return bad(
      `"${shown}" uses a ${used === "," ? "comma" : "point"}, but the decimal mark here is a ${mark === "," ? "comma" : "point"}: enter it with that.`,
    );
  const value = Number(trimmed.replace(",", "."));
  if (!Number.isFinite(value)) return bad(`"${shown}" is too large a number.`);
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

/** A number as text under a decimal mark: shortest text that reads back as the same number, no thousands marks. */
export function writeNumber(value: number, mark: DecimalMark): string {
  if (!Number.isFinite(value)) return "";
  const text = String(value);
  return mark === "," ? text.replace(".", ",") : text;
}

/** A number with a fixed count of decimals under a decimal mark. */
export function writeFixed(value: number, decimals: number, mark: DecimalMark): string {
  if (!Number.isFinite(value)) return "";
  const text = value.toFixed(Math.min(20, Math.max(0, decimals)));
  const clean = /^-0(\.0*)?$/.test(text) ? text.slice(1) : text;
  return mark === "," ? clean.replace(".", ",") : clean;
}

/** Decimals worth showing beside an uncertainty: enough for two significant digits of it. */
export function decimalsFor(uncertainty: number): number {
  if (!(uncertainty > 0) || !Number.isFinite(uncertainty)) return 0;
  const rounded = Number(uncertainty.toPrecision(2));
  return Math.min(12, Math.max(0, 1 - Math.floor(Math.log10(rounded))));
}

/** A number without a known uncertainty, to a count of significant digits (four unless said). */
export function writeSignificant(value: number, mark: DecimalMark, digits = 4): string {
  if (!Number.isFinite(value)) return "";
  if (value === 0) return "0";
  const magnitude = Math.floor(Math.log10(Math.abs(value)));
  if (magnitude > 14 || magnitude < -9) return writeNumber(Number(value.toPrecision(digits)), mark);
  return writeFixed(Number(value.toPrecision(digits)), Math.max(0, digits - 1 - magnitude), mark)
    .replace(/([.,]\d*?)0+$/, "$1")
    .replace(/[.,]$/, "");
}

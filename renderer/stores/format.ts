import { defineStore } from "pinia";
import { computed } from "vue";
import type { Figure } from "../../src/study/derive/figure.ts";
import { inputDigits, writeFixed, writeMoney, writeSignificant } from "../../src/units/digits.ts";
import { kindOfUnit, toCanonical, toShown, unitText, type QuantityKind } from "../../src/units/display.ts";
import { doseWords } from "../../src/units/dose-words.ts";
import { mayBeTyped, type DecimalMark } from "../../src/units/number-entry.ts";
import {
  asEntered,
  asGiven,
  beside,
  byHabit,
  inInterval,
  overRange,
  spreadText,
  type QuantityWriter,
  type Told,
} from "../../src/units/quantity-text.ts";
import { useStudy } from "./study.ts";

/** Numbers as this study shows them: its units, its decimal mark, and the digits of `src/units/digits.ts`. */
export const useFormat = defineStore("format", () => {
  const study = useStudy();
  const mark = computed<DecimalMark>(() => study.study?.decimalMark ?? ".");
  const system = computed(() => study.study?.unitSystem ?? "metric");

  const unit = (kind: QuantityKind) => unitText(kind, system.value);
  const told = (kind: QuantityKind): Told => ({ kind, system: system.value, mark: mark.value });

  /** An entered value: every digit that was entered, and no more than a unit change can carry. */
  function entry(value: number, kind?: QuantityKind): string {
    return asEntered(told(kind ?? "ratio"))(value);
  }

  /** A derived number without unit or spread. */
  const plain = (value: number, digits?: number) => writeSignificant(value, mark.value, digits);

  /** With a fixed count of decimals, for columns. */
  const fixed = (value: number, decimals: number) => writeFixed(value, decimals, mark.value);

  /** An amount of money, without its currency. */
  const money = (value: number) => writeMoney(value, mark.value);

  /** A derived canonical value without spread in the shown unit, as text without the unit. */
  const shown = (value: number, kind: QuantityKind, digits?: number) => byHabit(told(kind), digits)(value);

  const withUnit = (value: number, kind: QuantityKind, digits?: number) =>
    `${shown(value, kind, digits)} ${unit(kind)}`.trim();

  /** A canonical value that somebody gave, as it was typed; one moved to or reckoned by habit, or as `otherwise` writes. */
  const given = (value: number, kind: QuantityKind, otherwise?: QuantityWriter) =>
    asGiven(told(kind), otherwise)(value);

  const givenWithUnit = (value: number, kind: QuantityKind) => `${given(value, kind)} ${unit(kind)}`.trim();

  /** A writer for a canonical value and both ends of its interval, all to one place. An open end is null. */
  const interval = (
    value: number,
    low: number | null,
    high: number | null,
    kind: QuantityKind = "ratio",
  ): QuantityWriter => inInterval(told(kind), value, low, high);

  /** A writer for a canonical value to the place of its spread. */
  const besideSpread = (value: number, spread: number | null, kind: QuantityKind = "ratio"): QuantityWriter =>
    beside(told(kind), value, spread);

  /** A writer for both ends of a range that is no uncertainty, to one place. */
  const range = (low: number, high: number, kind: QuantityKind = "ratio"): QuantityWriter =>
    overRange(told(kind), low, high);

  function figure(fig: Figure): { value: string; spread: string; unit: string } {
    const { value, spread, low, high, quantity } = fig;
    const text = unit(quantity);
    if (value === null) return { value: "", spread: "", unit: text };
    const write =
      spread !== null && spread > 0
        ? beside(told(quantity), value, spread)
        : inInterval(told(quantity), value, low, high);
    const number = (fig.given ? asGiven(told(quantity), write) : write)(value);
    if (spread === null || !(spread > 0)) return { value: number, spread: "", unit: text };
    return {
      value: number,
      spread: `± ${spreadText(told(quantity), value, spread)}`,
      unit: text,
    };
  }

  /** An input of a formula without its unit: as it was typed, else with digits to work the result out again. */
  const inputNumber = (value: number) => (mayBeTyped(value) ? entry(value) : plain(value, inputDigits));

  /** An input of a formula: metric, as the formula takes it, with US customary beside it where the study shows that. */
  function input(value: number, unitOfInput: string, derived = false): string {
    const metric = `${derived ? plain(value, inputDigits) : inputNumber(value)} ${unitOfInput}`.trim();
    const kind = system.value === "us" ? kindOfUnit(unitOfInput) : null;
    return kind ? `${metric} (${withUnit(value, kind, inputDigits)})` : metric;
  }

  /** doses within sentences, in the unit shown */
  const doses = computed(() => doseWords(mark.value, system.value));

  return {
    doses,
    input,
    inputNumber,
    mark,
    system,
    unit,
    entry,
    plain,
    fixed,
    money,
    shown,
    withUnit,
    given,
    givenWithUnit,
    interval,
    besideSpread,
    range,
    figure,
    toCanonical: (value: number, kind: QuantityKind) => toCanonical(value, kind, system.value),
    toShown: (value: number, kind: QuantityKind) => toShown(value, kind, system.value),
  };
});

import { defineStore } from "pinia";
import { computed } from "vue";
import type { Figure } from "../../src/study/derive/figure.ts";
import {
  doseWords,
  kindOfUnit,
  spreadToShown,
  toCanonical,
  toShown,
  unitText,
  type QuantityKind,
} from "../../src/units/display.ts";
import {
  decimalsFor,
  writeFixed,
  writeNumber,
  writeSignificant,
  type DecimalMark,
} from "../../src/units/number-entry.ts";
import { useStudy } from "./study.ts";

/** Numbers as this study shows them: its units, its decimal mark, digits by the uncertainty where there is one. */
export const useFormat = defineStore("format", () => {
  const study = useStudy();
  const mark = computed<DecimalMark>(() => study.study?.decimalMark ?? ".");
  const system = computed(() => study.study?.unitSystem ?? "metric");

  const unit = (kind: QuantityKind) => unitText(kind, system.value);

  /** A value for an entry cell: every digit that was entered, and no more than a unit change can carry. */
  function entry(value: number, kind?: QuantityKind): string {
    const shown = kind ? toShown(value, kind, system.value) : value;
    return writeNumber(shown === value ? value : Number(shown.toPrecision(8)), mark.value);
  }

  /** A number without unit or uncertainty, to a few significant digits. */
  const plain = (value: number, digits = 4) => writeSignificant(value, mark.value, digits);

  /** A canonical value in the shown unit, as text without the unit. */
  const shown = (value: number, kind: QuantityKind, digits = 4) =>
    plain(toShown(value, kind, system.value), digits);

  const withUnit = (value: number, kind: QuantityKind, digits = 4) =>
    `${shown(value, kind, digits)} ${unit(kind)}`.trim();

  function figure(fig: Figure, digits = 4): { value: string; spread: string; unit: string } {
    const text = unit(fig.quantity);
    if (fig.value === null) return { value: "", spread: "", unit: text };
    const value = toShown(fig.value, fig.quantity, system.value);
    if (fig.spread === null || !(fig.spread > 0))
      return { value: plain(value, digits), spread: "", unit: text };
    const spread = spreadToShown(fig.spread, fig.quantity, system.value);
    const decimals = decimalsFor(spread);
    return {
      value: writeFixed(value, decimals, mark.value),
      spread: `± ${writeFixed(spread, decimals, mark.value)}`,
      unit: text,
    };
  }

  /** An input of a formula: metric, as the formula takes it, with US customary beside it where the study shows that. */
  function input(value: number, unitOfInput: string): string {
    const metric = `${plain(value)} ${unitOfInput}`.trim();
    const kind = system.value === "us" ? kindOfUnit(unitOfInput) : null;
    return kind ? `${metric} (${withUnit(value, kind)})` : metric;
  }

  /** doses within sentences, in the unit shown */
  const doses = computed(() => doseWords((value) => plain(value, 3), system.value));

  return {
    doses,
    input,
    mark,
    system,
    unit,
    entry,
    plain,
    shown,
    withUnit,
    figure,
    toCanonical: (value: number, kind: QuantityKind) => toCanonical(value, kind, system.value),
    toShown: (value: number, kind: QuantityKind) => toShown(value, kind, system.value),
  };
});

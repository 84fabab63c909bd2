import { computed, type ComputedRef } from "vue";
import type { HistoryTold } from "../../src/study/describe.ts";
import { kindOfUnit, type QuantityKind } from "../../src/units/display.ts";
import { dateTag } from "../language.ts";
import { useFormat } from "../stores/format.ts";

/** How the history is told on screen: by the study's decimal mark, in the units it shows, moments by this machine's clock. */
export function useHistoryTold(): ComputedRef<HistoryTold> {
  const format = useFormat();
  const kindIn = (unit: string): QuantityKind | undefined =>
    (format.system === "us" && kindOfUnit(unit)) || undefined;
  return computed(() => ({
    entry: (value) => format.entry(value),
    plain: (value) => format.plain(value),
    inUnit: (value, unit) => format.entry(value, kindIn(unit)),
    unit: (unit) => {
      const kind = kindIn(unit);
      return kind ? format.unit(kind) : unit;
    },
    moment: (iso) => new Date(iso).toLocaleString(dateTag(), { dateStyle: "short", timeStyle: "short" }),
  }));
}

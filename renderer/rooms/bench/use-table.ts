import { computed } from "vue";
import type { SeriesChain } from "../../../src/study/derive/jars.ts";
import { jarColumns, type TableContext } from "../../../src/study/bench-table/jar-columns.ts";
import { useFormat } from "../../stores/format.ts";
import { newId } from "../../stores/ids.ts";

/** The typed columns of a series in the study's units and decimal mark, kept up to date. */
export function useTable(chain: () => SeriesChain) {
  const format = useFormat();
  const context = computed<TableContext>(() => ({
    chain: chain(),
    mark: format.mark,
    doseUnit: format.unit("doseKgPerT"),
    doseToShown: (value) => format.toShown(value, "doseKgPerT"),
    doseToCanonical: (value) => format.toCanonical(value, "doseKgPerT"),
    newId,
    now: () => new Date().toISOString(),
  }));
  return { context, columns: computed(() => jarColumns(context.value)) };
}

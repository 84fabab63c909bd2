import { computed } from "vue";
import { readingColumns } from "../../../src/responses/registry.ts";
import type { SeriesChain } from "../../../src/study/derive/jars.ts";
import { jarColumns, shownReadings, type TableContext } from "../../../src/study/bench-table/jar-columns.ts";
import { useFormat } from "../../stores/format.ts";
import { newId } from "../../stores/ids.ts";

/** The typed columns of a series in the study's units and decimal mark, kept up to date. */
export function useTable(chain: () => SeriesChain) {
  const format = useFormat();
  const series = computed(() => chain().series);
  // The columns change with the series and its kinds of readings, not with every number: cells then stay as they are.
  const kinds = computed(() =>
    shownReadings(chain())
      .map(({ key }) => key)
      .join(" "),
  );
  const context = computed<TableContext>(() => ({
    series: series.value,
    readings: readingColumns.filter(({ key }) => kinds.value.split(" ").includes(key)),
    mark: format.mark,
    doseUnit: format.unit("doseKgPerT"),
    doseToShown: (value) => format.toShown(value, "doseKgPerT"),
    doseToCanonical: (value) => format.toCanonical(value, "doseKgPerT"),
    newId,
    now: () => new Date().toISOString(),
  }));
  return { context, columns: computed(() => jarColumns(context.value)) };
}

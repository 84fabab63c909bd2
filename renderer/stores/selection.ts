import { defineStore } from "pinia";
import { computed, ref } from "vue";
import { useStudy } from "./study.ts";

/** Which series the whole window is about: the one chosen, else the latest. */
export const useSelection = defineStore("selection", () => {
  const study = useStudy();
  const chosen = ref<string | null>(null);
  const allSeries = computed(() =>
    Object.values(study.state?.series ?? {}).sort((a, b) => (a.id < b.id ? -1 : 1)),
  );
  const seriesId = computed<string | null>(() => {
    const own = allSeries.value.find((series) => series.id === chosen.value);
    return own?.id ?? allSeries.value[0]?.id ?? null;
  });
  const series = computed(() => (seriesId.value ? (study.state?.series[seriesId.value] ?? null) : null));

  function choose(id: string): void {
    chosen.value = id;
  }

  return { allSeries, seriesId, series, choose };
});

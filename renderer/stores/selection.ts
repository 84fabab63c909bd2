import { defineStore } from "pinia";
import { computed, ref } from "vue";
import { useDrafts } from "./drafts.ts";
import { useStudy } from "./study.ts";

/** Which series the whole window is about: the one chosen last, also before a crash or reload, else the first. */
export const useSelection = defineStore("selection", () => {
  const study = useStudy();
  const drafts = useDrafts();
  const remembered = "window series";
  const picked = ref<string | null>(null);
  const chosen = computed(() => picked.value ?? drafts.drafts[remembered]?.text ?? null);
  // A step of its own: an edit elsewhere leaves the table the same, and then nothing that lists series is drawn again.
  const seriesTable = computed(() => study.state?.series ?? null);
  const allSeries = computed(() =>
    Object.values(seriesTable.value ?? {}).sort((a, b) => (a.id < b.id ? -1 : 1)),
  );
  const seriesId = computed<string | null>(() => {
    const own = allSeries.value.find((series) => series.id === chosen.value);
    return own?.id ?? allSeries.value[0]?.id ?? null;
  });
  const series = computed(() => (seriesId.value ? (study.state?.series[seriesId.value] ?? null) : null));

  const chosenSample = ref<string | null>(null);
  const sampleId = computed<string | null>(() => {
    const samples = study.state?.sample ?? {};
    if (chosenSample.value && Object.hasOwn(samples, chosenSample.value)) return chosenSample.value;
    return series.value?.sampleId ?? Object.keys(samples).sort()[0] ?? null;
  });

  function choose(id: string): void {
    picked.value = id;
    drafts.keep(remembered, id, "", 0);
    chosenSample.value = null;
  }

  function chooseSample(id: string): void {
    chosenSample.value = id;
  }

  return { allSeries, seriesId, series, choose, sampleId, chooseSample };
});

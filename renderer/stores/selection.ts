import { defineStore } from "pinia";
import { computed, ref } from "vue";
import type { StudyState } from "../../src/study/schema/records.ts";
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
  const inOrder = (table: StudyState["series"]) =>
    Object.values(table).sort((a, b) => (a.id < b.id ? -1 : 1));
  const allSeries = computed(() => inOrder(seriesTable.value ?? {}));
  const among = (series: { id: string }[]) =>
    (series.find(({ id }) => id === chosen.value) ?? series[0])?.id ?? null;
  const seriesId = computed<string | null>(() => among(allSeries.value));
  /** the series that the window would be about if the study stood so */
  const seriesIdIn = (state: StudyState) => among(inOrder(state.series));
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

  return { allSeries, seriesId, seriesIdIn, series, choose, sampleId, chooseSample };
});

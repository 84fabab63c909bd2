import { defineStore } from "pinia";
import { computed, ref } from "vue";
import type { Pair } from "../../src/choice/pair.ts";
import { pairChain } from "../../src/study/derive/pair-choice.ts";
import { useChain } from "./chain.ts";
import { useFormat } from "./format.ts";
import { useStudy } from "./study.ts";

/** The movable pair of doses of a two-polymer series, with its limits and cheapest pair. */
export const usePairLine = defineStore("pair-line", () => {
  const study = useStudy();
  const chain = useChain();
  const format = useFormat();
  const moved = ref<{ seriesId: string; pair: Pair } | null>(null);

  const choice = computed(() =>
    study.state && chain.series && chain.analysis?.axis === "surface"
      ? pairChain(
          study.state,
          chain.series,
          chain.workings,
          (value) => format.entry(value),
          undefined,
          format.doses,
        )
      : null,
  );
  const limits = computed(() => choice.value?.limits ?? []);

  const pair = computed<Pair | null>(() => {
    if (moved.value && moved.value.seriesId === chain.series?.series.id) return moved.value.pair;
    const decided = chain.decision?.decision;
    if (decided && decided.doseBKgPerT !== null) return { a: decided.doseAKgPerT, b: decided.doseBKgPerT };
    if (choice.value?.cheapest?.kind === "found") return choice.value.cheapest.pair;
    return choice.value?.optimum ?? null;
  });

  function move(next: Pair): void {
    const id = chain.series?.series.id;
    if (id) moved.value = { seriesId: id, pair: next };
  }

  return { choice, limits, pair, move };
});

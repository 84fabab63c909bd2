import { defineStore } from "pinia";
import { computed, ref } from "vue";
import { useChain } from "./chain.ts";

/** The one movable dose that all dose axes share: where somebody left it, else the approved dose, else the best found. */
export const useDoseLine = defineStore("dose-line", () => {
  const chain = useChain();
  const moved = ref<{ seriesId: string; doseKgPerT: number } | null>(null);

  const dose = computed<number | null>(() => {
    const id = chain.series?.series.id;
    const range = chain.choice?.tested;
    const clamp = (value: number) => (range ? Math.min(range.high, Math.max(range.low, value)) : value);
    if (moved.value && moved.value.seriesId === id) return clamp(moved.value.doseKgPerT);
    if (chain.decision) return clamp(chain.decision.decision.doseAKgPerT);
    const rule = chain.choice?.rules.find((one) => one.rule === "cheapest-in-limits" && one.dose !== null);
    if (rule?.dose != null) return clamp(rule.dose);
    const located = chain.analysis?.responses.find(({ verdict }) => typeof verdict.dose === "number")?.verdict
      .dose;
    if (typeof located === "number") return clamp(located);
    return range ? (range.low + range.high) / 2 : null;
  });

  function move(doseKgPerT: number): void {
    const id = chain.series?.series.id;
    if (id) moved.value = { seriesId: id, doseKgPerT };
  }

  return { dose, move };
});

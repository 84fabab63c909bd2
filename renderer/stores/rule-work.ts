import { defineStore } from "pinia";
import { shallowRef, watch } from "vue";
import { savingAgainst, type Saving } from "../../src/choice/against-today.ts";
import { chanceToMiss } from "../../src/choice/miss.ts";
import type { RuleResult } from "../../src/choice/rules.ts";
import { normalFrom, seededRandom } from "../../src/curve/random.ts";
import { targetsOf, type ChoiceChain } from "../../src/study/derive/choice.ts";
import { nextTask } from "../worker/next-task.ts";
import { useChain } from "./chain.ts";
import { useDoseLine } from "./dose-line.ts";
import { useStudy } from "./study.ts";

const draws = 1000;
const seed = 1;
const settleMs = 150;

function limitsWithCurves(choice: ChoiceChain) {
  return choice.bars.flatMap(({ limit }) => {
    const curve = choice.curves.find((one) => one.response === limit.response);
    return curve ? [{ limit, curve }] : [];
  });
}

/** The simulated part of the rules, worked out one rule at a time between frames so that typing never waits. */
export const useRuleWork = defineStore("rule-work", () => {
  const chain = useChain();
  const study = useStudy();
  const chances = shallowRef<ReadonlyMap<RuleResult, number>>(new Map());
  const savings = shallowRef<ReadonlyMap<RuleResult, Saving>>(new Map());

  watch(
    () => chain.choice,
    async (choice) => {
      chances.value = new Map();
      savings.value = new Map();
      if (!choice || !study.state || !chain.series) return;
      const targets = targetsOf(study.state, chain.series.series.id);
      const limits = limitsWithCurves(choice);
      const found = new Map<RuleResult, number>();
      const saved = new Map<RuleResult, Saving>();
      const today = targets?.presentDoseKgPerT ?? null;
      const curve = (response: string) => choice.curves.find((one) => one.response === response) ?? null;
      for (const rule of choice.rules) {
        if (rule.dose === null) continue;
        await new Promise((resolve) => setTimeout(resolve));
        if (chain.choice !== choice) return;
        if (today !== null) {
          const saving = savingAgainst(
            rule.dose,
            today,
            choice.cost,
            { cake: curve("cake_ts_pct"), capture: null },
            choice.tested,
            normalFrom(seededRandom(seed)),
            draws,
          );
          if (saving) saved.set(rule, saving);
          savings.value = new Map(saved);
        }
        if (limits.length === 0) continue;
        if (today !== null) await nextTask();
        if (chain.choice !== choice) return;
        const chancesNow = chanceToMiss({
          dose: rule.dose,
          limits,
          sharedRelative: chain.series?.uncertaintyA?.sharedLeft ?? 0,
          driftRelative: (targets?.feedDriftPct ?? 0) / 100,
          normal: normalFrom(seededRandom(seed)),
          draws,
        });
        found.set(rule, Math.max(...chancesNow.map(({ chance }) => chance)));
        chances.value = new Map(found);
      }
    },
    { immediate: true },
  );

  const line = useDoseLine();
  const here = shallowRef<ReadonlyMap<string, number>>(new Map());
  let waiting: ReturnType<typeof setTimeout> | undefined;
  watch(
    [() => chain.choice, () => line.dose],
    ([choice, dose]) => {
      clearTimeout(waiting);
      if (!choice || dose === null) return void (here.value = new Map());
      waiting = setTimeout(() => {
        const targets = study.state && chain.series ? targetsOf(study.state, chain.series.series.id) : null;
        const found = chanceToMiss({
          dose,
          limits: limitsWithCurves(choice),
          sharedRelative: chain.series?.uncertaintyA?.sharedLeft ?? 0,
          driftRelative: (targets?.feedDriftPct ?? 0) / 100,
          normal: normalFrom(seededRandom(seed)),
          draws,
        });
        here.value = new Map(found.map(({ limit, chance }) => [limit.response, chance]));
      }, settleMs);
    },
    { immediate: true },
  );

  return {
    /** the chance to miss a limit at the dose looked at, by the limit's response */
    missHere: (response: string) => here.value.get(response) ?? null,
    draws,
    seed,
    missOf: (rule: RuleResult) => chances.value.get(rule) ?? null,
    savingOf: (rule: RuleResult) => savings.value.get(rule) ?? null,
  };
});

import { defineStore } from "pinia";
import { computed, ref } from "vue";
import { good, type Outcome } from "../../src/outcome.ts";
import { targetsOf, type Targets, type TargetField } from "../../src/study/derive/choice.ts";
import { useEdit } from "./edit.ts";
import { newId } from "./ids.ts";
import { useSelection } from "./selection.ts";
import { useStudy } from "./study.ts";

/** The targets of the series shown: as they are kept, and as they would be while a target line is dragged. */
export const useTargets = defineStore("targets", () => {
  const study = useStudy();
  const selection = useSelection();
  const edit = useEdit();

  const kept = computed(() =>
    study.state && selection.seriesId ? targetsOf(study.state, selection.seriesId) : null,
  );
  /** a target that somebody is moving and has not let go yet */
  const tried = ref<{ seriesId: string; field: TargetField; value: number } | null>(null);
  const trial = computed(() => (tried.value?.seriesId === selection.seriesId ? tried.value : null));
  const now = computed<Targets | null>(() =>
    kept.value && trial.value ? { ...kept.value, [trial.value.field]: trial.value.value } : kept.value,
  );

  /** Keeps fields of a series' targets, one undo step: the one command of the entries and of the dragged lines. */
  function set(seriesId: string, fields: Partial<Targets>): Promise<Outcome<null>> {
    const found = study.state ? targetsOf(study.state, seriesId) : null;
    return found
      ? edit.set("targets", found.id, fields)
      : edit.add("targets", { id: newId(), seriesId, ...fields });
  }

  /** Tries a value without keeping it: chances, windows and rules follow. */
  function tryOut(field: TargetField, value: number): void {
    if (selection.seriesId) tried.value = { seriesId: selection.seriesId, field, value };
  }

  /** Keeps the value tried, as one undo step. */
  async function keep(): Promise<Outcome<null>> {
    const one = trial.value;
    if (!one) return good(null);
    const outcome =
      kept.value?.[one.field] === one.value
        ? good(null)
        : await set(one.seriesId, { [one.field]: one.value });
    if (tried.value === one) tried.value = null;
    return outcome;
  }

  /** Takes the value tried back. */
  function back(): void {
    tried.value = null;
  }

  return { kept, now, trial, set, tryOut, keep, back };
});

import { defineStore } from "pinia";
import { computed, nextTick, shallowRef } from "vue";
import { useRouter } from "vue-router";
import { firstMissing, guideOf, wayOf, type Guide } from "../../src/study/derive/guide/guide.ts";
import type { CurvesSoFar, GuideAim, StepKey, StepState } from "../../src/study/derive/guide/step.ts";
import { useChain } from "./chain.ts";
import { useDrafts } from "./drafts.ts";
import { useRun } from "./run.ts";
import { useSelection } from "./selection.ts";
import { useStudy } from "./study.ts";

/** The place among the drafts where a hidden guide is remembered: it is no fact of the study. */
const remembered = "window guide";
const framesToWait = 40;

/** What comes next on the way to the first settings. Only whether it is hidden is kept; the steps follow from the study. */
export const useGuide = defineStore("guide", () => {
  const study = useStudy();
  const selection = useSelection();
  const chain = useChain();
  const drafts = useDrafts();
  const run = useRun();
  const router = useRouter();

  const curves = computed<CurvesSoFar>(() => {
    const responses = chain.analysis?.responses ?? [];
    if (responses.some(({ verdict }) => verdict.kind !== "none")) return { word: "found", sentence: "" };
    if (chain.running) return { word: "running", sentence: "" };
    const sentence = chain.fitTrouble || responses[0]?.verdict.sentence;
    return sentence ? { word: "refused", sentence } : { word: "none", sentence: "" };
  });

  const guide = computed<Guide | null>(() =>
    study.state && study.readOnlyBecause === null
      ? guideOf(study.state, {
          seriesId: selection.seriesId,
          sampleId: selection.sampleId,
          curves: curves.value,
        })
      : null,
  );

  // Rooms ask what they lack for the series looked at, be another one's dose approved or not.
  const way = computed<StepState[]>(() =>
    study.state && study.readOnlyBecause === null
      ? wayOf(study.state, {
          seriesId: selection.seriesId,
          sampleId: selection.sampleId,
          curves: curves.value,
        })
      : [],
  );

  /** What the series looked at lacks first on its way to a step; null where nothing is missing or nothing can be entered. */
  const lackOf = (until: StepKey) => firstMissing(way.value, until, curves.value);

  const hidden = computed(() => drafts.drafts[remembered]?.text === "hidden");
  function hide(): void {
    drafts.keep(remembered, "hidden", "", 0);
  }
  function show(): void {
    drafts.drop(remembered);
  }

  /** where somebody asked to be taken, until they are there: rooms open what they fold away, or bring a row into view */
  const wanted = shallowRef<GuideAim | null>(null);

  /** Goes to the room of the next step and puts the focus on its entry. */
  async function take(): Promise<void> {
    const step = guide.value?.next;
    if (!step) return;
    const { seriesId } = guide.value!;
    if (seriesId !== null && seriesId !== selection.seriesId) selection.choose(seriesId);
    await goTo(step.aim);
  }

  /** Goes to a room and puts the focus on an entry there. */
  async function goTo(aim: GuideAim): Promise<void> {
    if (aim.room === "bench" && run.position.open) run.move({ open: false });
    wanted.value = aim;
    await router.push({ name: aim.room });
    if (aim.jarId === undefined || aim.column === undefined) await focusOn(aim);
    // An entry that is nowhere to be found leaves the focus at the room itself.
    if (wanted.value === aim) arrived();
  }

  async function focusOn(aim: GuideAim): Promise<void> {
    for (let frame = 0; frame < framesToWait && wanted.value === aim; frame++) {
      await nextTick();
      const found = entryNamed(aim.target);
      if (found) {
        bringTo(found);
        arrived();
        return;
      }
      await new Promise((next) => requestAnimationFrame(next));
    }
    document.querySelector<HTMLElement>("#room .hint-card button, #room")?.focus();
  }

  function arrived(): void {
    wanted.value = null;
  }

  return { guide, curves, lackOf, hidden, hide, show, wanted, arrived, take, goTo };
});

function entryNamed(target: string): HTMLElement | null {
  return document.querySelector<HTMLElement>(`[data-guide="${CSS.escape(target)}"]:not(:disabled)`);
}

function bringTo(entry: HTMLElement): void {
  for (let fold = entry.closest("details"); fold; fold = fold.parentElement?.closest("details") ?? null)
    if (!entry.matches("summary")) fold.open = true;
  entry.scrollIntoView({ block: "center" });
  entry.focus();
  if (entry instanceof HTMLInputElement) entry.select();
}

import { defineStore } from "pinia";
import { computed, ref, shallowRef, watch } from "vue";
import type { Analysis, ResponseWorking } from "../../src/curve/analyse-types.ts";
import { decisionChain } from "../../src/study/derive/decision.ts";
import { seriesChain, seriesChainInSteps } from "../../src/study/derive/jars.ts";
import { analyseRows, analyseRowsInSteps } from "../../src/study/derive/points.ts";
import { askFits } from "../worker/client.ts";
import { nextTask } from "../worker/next-task.ts";
import { sameQuestion, type Question } from "../worker/question.ts";
import type { FitAnswer, FitExtras } from "../worker/messages.ts";
import type * as farChain from "./far-chain.ts";
import { useFormat } from "./format.ts";
import { useSelection } from "./selection.ts";
import { useStudy } from "./study.ts";
import { useTargets } from "./targets.ts";

type FarChain = typeof farChain;

/** What came back of the fits, and the series that was asked about. */
interface Fitted {
  seriesId: string;
  analysis: Analysis;
  workings: ResponseWorking[];
  extras: FitExtras[];
}
const noWorkings: ResponseWorking[] = [];
const noExtras: FitExtras[] = [];

/** Everything derived from the study, from the jars to the strip; the fits come back from their own thread. */
export const useChain = defineStore("chain", () => {
  const study = useStudy();
  const selection = useSelection();
  const format = useFormat();
  const targets = useTargets();

  const far = shallowRef<FarChain | null>(null);
  const loading = import("./far-chain.ts");
  void loading.then((loaded) => (far.value = loaded));

  const series = computed(() =>
    study.state && selection.seriesId ? seriesChain(study.state, selection.seriesId) : null,
  );

  const fitted = shallowRef<Fitted | null>(null);
  // While another series waits for its own fits there are none: a dose of the one before must not stand under its name.
  const fits = computed(() =>
    fitted.value && fitted.value.seriesId === series.value?.series.id ? fitted.value : null,
  );
  const analysis = computed(() => fits.value?.analysis ?? null);
  /** the polymer whose dose varies, where only one does */
  const letter = computed(() => (analysis.value?.axis === "b" ? "B" : "A"));
  const workings = computed(() => fits.value?.workings ?? noWorkings);
  const extras = computed(() => fits.value?.extras ?? noExtras);
  const waiting = ref(false);
  /** another series was chosen, and its fits have not been asked for yet */
  const changing = ref(false);
  const running = computed(() => waiting.value || changing.value);
  const fitTrouble = ref("");

  study.makeReady(function* (result) {
    const id = selection.seriesIdIn(result);
    if (id !== null) yield* analyseRowsInSteps(yield* seriesChainInSteps(result, id));
  });

  let asked = 0;
  let last: { seriesId: string; question: Question } | null = null;

  function ask(seriesId: string, question: Question): void {
    if (last?.seriesId === seriesId && sameQuestion(last.question, question)) return;
    if (last?.seriesId !== seriesId || question.rows.length === 0) fitTrouble.value = "";
    last = { seriesId, question };
    asked += 1;
    if (question.rows.length === 0) {
      fitted.value = null;
      waiting.value = false;
      return;
    }
    waiting.value = true;
    // A newer question makes the answer to an older one pointless.
    const mine = asked;
    void Promise.all([askFits(question), loading]).then(([answer, { unpackWorkings }]) => {
      if (mine === asked) receive(seriesId, answer, unpackWorkings);
    });
  }

  function receive(seriesId: string, answer: FitAnswer, unpackWorkings: FarChain["unpackWorkings"]): void {
    waiting.value = false;
    fitTrouble.value = answer.ok ? "" : answer.message;
    fitted.value = answer.ok
      ? {
          seriesId,
          analysis: answer.analysis,
          workings: unpackWorkings(answer.workings),
          extras: answer.extras,
        }
      : null;
  }

  const rowJars = shallowRef<Map<number, string>>(new Map());
  /** what the jar behind a row of the analysis is called */
  const jarOfRow = (row: number) => rowJars.value.get(row) ?? String(row);

  function askAnew(): void {
    const chain = series.value;
    const { rows, labels } = chain ? analyseRows(chain) : { rows: [], labels: new Map<number, string>() };
    rowJars.value = labels;
    const { mark, system } = format;
    const { id = "", label: name = "" } = chain?.series ?? {};
    ask(id, { rows, labels: [...labels], mark, system, name });
  }
  // Asking copies every row of the series: the edit is shown first, and edits in one task ask once.
  let askingSoon = false;
  async function askSoon(): Promise<void> {
    changing.value = fitted.value !== null && fits.value === null;
    if (askingSoon) return;
    askingSoon = true;
    await nextTask();
    askingSoon = false;
    changing.value = false;
    askAnew();
  }
  askAnew();
  watch([series, () => format.mark, () => format.system], askSoon);

  const choice = computed(() =>
    far.value && study.state && series.value && workings.value.length > 0
      ? far.value.choiceChain(
          study.state,
          series.value,
          workings.value,
          (value) => format.entry(value),
          targets.now,
          format.doses,
        )
      : null,
  );

  const decision = computed(() =>
    study.state && selection.seriesId ? decisionChain(study.state, selection.seriesId) : null,
  );

  /** what cake and capture to expect at a dose, from the curves */
  function expectedAt(dose: number): { cakePct: number | null; capturePct: number | null } {
    const curves = choice.value?.curves ?? [];
    const at = (response: string) => {
      const value = curves.find((curve) => curve.response === response)?.mean(dose);
      return value !== undefined && Number.isFinite(value) ? value : null;
    };
    const capture = at("capture_pct") ?? choice.value?.cost.capturePct?.(dose) ?? null;
    return { cakePct: at("cake_ts_pct"), capturePct: capture };
  }

  const plant = computed(() => {
    if (!far.value || !study.state || !selection.seriesId) return null;
    const picked = decision.value?.decision;
    const dose = picked ? { a: picked.doseAKgPerT, b: picked.doseBKgPerT } : null;
    return far.value.plantChain(study.state, selection.seriesId, dose, dose ? expectedAt(dose.a) : undefined);
  });

  const segments = computed(() =>
    far.value && study.state
      ? far.value.stripSegments({
          state: study.state,
          sampleId: selection.sampleId,
          seriesId: selection.seriesId,
          analysis: analysis.value,
          running: running.value,
          changes: study.changes,
          words: {
            doses: format.doses,
            figure: format.figure,
            plain: (value) => format.plain(value),
            interval: (value, low, high) => format.interval(value, low, high),
            flowLPerH: (value) => format.withUnit(value, "flowLPerH"),
          },
        })
      : [],
  );

  return {
    series,
    analysis,
    letter,
    workings,
    extras,
    jarOfRow,
    running,
    fitTrouble,
    choice,
    /** the targets as they are kept, without one that is being dragged */
    targets: computed(() => targets.kept),
    decision,
    plant,
    segments,
    expectedAt,
  };
});

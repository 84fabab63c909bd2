import { ref, watch } from "vue";
import { writeFixed } from "../../../../src/units/digits.ts";
import { benchRunWords } from "../../../../src/words/bench-run.ts";
import { useFormat } from "../../../stores/format.ts";

export interface TimerWords {
  startedAt(): string | null;
  plannedS(): number | null;
  up(): boolean;
  /** what is being timed, for example "mixing" */
  action(): string;
  /** what to do when the time is up */
  end(): string;
}

/** What a timer says aloud: once at its start, at its target and at its stop, and nothing in between. */
export function useTimerWords(timer: TimerWords) {
  const words = benchRunWords.time;
  const format = useFormat();
  const said = ref("");
  let running = timer.action();
  watch(timer.startedAt, (startedAt, before) => {
    if (startedAt !== null) {
      running = timer.action();
      const planned = timer.plannedS();
      said.value = words.started(running, planned === null ? null : format.entry(planned));
    } else if (before !== null) {
      const seconds = Math.max(0, (Date.now() - Date.parse(before)) / 1000);
      said.value = words.stopped(running, writeFixed(seconds, 1, format.mark));
    }
  });
  watch(timer.up, (is) => {
    if (is) said.value = words.up(timer.end());
  });
  return said;
}

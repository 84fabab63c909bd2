import { ref, watch } from "vue";

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
  const said = ref("");
  let running = timer.action();
  watch(timer.startedAt, (startedAt, before) => {
    if (startedAt !== null) {
      running = timer.action();
      const planned = timer.plannedS();
      said.value = `Timer started: ${running}${planned === null ? "" : ` for ${planned} s`}`;
    } else if (before !== null) {
      const seconds = Math.max(0, (Date.now() - Date.parse(before)) / 1000);
      said.value = `Timer stopped: ${running} for ${seconds.toFixed(1)} s`;
    }
  });
  watch(timer.up, (is) => {
    if (is) said.value = `Time is up: ${timer.end()}`;
  });
  return said;
}

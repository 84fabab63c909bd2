import { computed, onBeforeUnmount, ref, watch } from "vue";
import { signal } from "./sound.ts";

/** A running time against a planned one, from the moment it began: it goes on through a reload. */
export function useTimer(startedAt: () => string | null, plannedS: () => number | null) {
  const now = ref(Date.now());
  const tick = setInterval(() => (now.value = Date.now()), 100);
  onBeforeUnmount(() => clearInterval(tick));

  const elapsedS = computed(() => {
    const began = startedAt();
    return began === null ? null : Math.max(0, (now.value - Date.parse(began)) / 1000);
  });
  const up = computed(() => {
    const planned = plannedS();
    return elapsedS.value !== null && planned !== null && elapsedS.value >= planned;
  });
  watch(up, (is, was) => {
    if (is && !was) signal("end");
  });
  return { elapsedS, up };
}

/** Seconds as a clock shows them: 0:07, 1:30. */
export function clockText(seconds: number): string {
  const whole = Math.floor(seconds);
  return `${Math.floor(whole / 60)}:${String(whole % 60).padStart(2, "0")}`;
}

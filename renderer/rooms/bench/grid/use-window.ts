import { computed, onBeforeUnmount, onMounted, ref, type Ref } from "vue";

/** The fixed height of a row, so that only rows in sight need to exist. */
export const rowPx = 32;
const spare = 10;
const windowedFrom = 80;

/** Which rows of a long table are worth drawing: those in sight and a few beside them. */
export function useWindow(scroller: Ref<HTMLElement | null>, count: () => number) {
  const top = ref(0);
  const height = ref(600);
  const measure = () => {
    const element = scroller.value;
    if (!element) return;
    top.value = element.scrollTop;
    height.value = element.clientHeight;
  };
  onMounted(() => {
    measure();
    scroller.value?.addEventListener("scroll", measure, { passive: true });
    addEventListener("resize", measure);
  });
  onBeforeUnmount(() => {
    scroller.value?.removeEventListener("scroll", measure);
    removeEventListener("resize", measure);
  });
  const windowed = computed(() => count() > windowedFrom);
  const first = computed(() => (windowed.value ? Math.max(0, Math.floor(top.value / rowPx) - spare) : 0));
  const last = computed(() =>
    windowed.value ? Math.min(count(), Math.ceil((top.value + height.value) / rowPx) + spare) : count(),
  );
  /** Scrolls so far that a row is drawn; true where it had to. */
  function reveal(row: number): boolean {
    const element = scroller.value;
    if (!element || !windowed.value || (row >= first.value + 2 && row < last.value - 2)) return false;
    element.scrollTop = Math.max(0, row * rowPx - element.clientHeight / 2);
    measure();
    return true;
  }
  return { first, last, reveal };
}

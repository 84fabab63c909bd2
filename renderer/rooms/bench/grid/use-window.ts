import { drawInTurn, leaveTurn } from "../../../charts/draw-turns.ts";
import { computed, onBeforeUnmount, onMounted, ref, type Ref } from "vue";

/** The fixed height of a row, so that only rows in sight need to exist. */
export const rowPx = 32;
const spare = 10;
const windowedFrom = 80;
/** rows drawn in one task: a table fills within a few of them, and nothing else waits for all of it */
const rowsATurn = 4;

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
  // Told of its size once it is laid out: asking for it before would have everything laid out at once.
  const sized = new ResizeObserver(measure);
  onMounted(() => {
    if (!scroller.value) return;
    drawInTurn(drawMore);
    scroller.value.addEventListener("scroll", measure, { passive: true });
    sized.observe(scroller.value);
  });
  onBeforeUnmount(() => {
    leaveTurn(drawMore);
    scroller.value?.removeEventListener("scroll", measure);
    sized.disconnect();
  });
  const windowed = computed(() => count() > windowedFrom);
  const first = computed(() => (windowed.value ? Math.max(0, Math.floor(top.value / rowPx) - spare) : 0));
  const wanted = computed(() =>
    windowed.value ? Math.min(count(), Math.ceil((top.value + height.value) / rowPx) + spare) : count(),
  );
  /** rows drawn since the room was opened; past the first filling there is nothing to hold back */
  const drawn = ref(rowsATurn);
  const last = computed(() => Math.min(wanted.value, first.value + drawn.value));
  function drawMore(): void {
    drawn.value += rowsATurn;
    if (last.value < wanted.value) drawInTurn(drawMore);
    else drawn.value = Infinity;
  }
  /** Scrolls so far that a row is drawn; true where it had to. */
  function reveal(row: number): boolean {
    const element = scroller.value;
    const early = drawn.value < Infinity && row >= last.value;
    leaveTurn(drawMore);
    drawn.value = Infinity;
    if (early && !windowed.value) return true;
    if (!element || !windowed.value || (row >= first.value + 2 && row < last.value - 2)) return false;
    element.scrollTop = Math.max(0, row * rowPx - element.clientHeight / 2);
    measure();
    return true;
  }
  return { first, last, reveal };
}

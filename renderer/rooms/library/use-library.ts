import { onBeforeUnmount, ref, shallowRef, watch } from "vue";
import type { OutputOf } from "../../../src/contract.ts";
import type { SludgeClass, SortColumn } from "../../../src/study/library/row.ts";
import { call } from "../../client.ts";

export type Found = OutputOf<"library.search">;
export type FoundRow = Found["rows"][number];

const typingMs = 200;
const showEveryMs = 700;

/** What is asked of the studies and what was found; the index is brought up to date in slices meanwhile. */
export function useLibrary() {
  const text = ref("");
  const product = ref<string | null>(null);
  const sludgeClass = ref<SludgeClass | null>(null);
  const onlyApproved = ref(false);
  const column = ref<SortColumn>("date");
  const down = ref(true);

  const found = shallowRef<Found | null>(null);
  const trouble = ref("");
  const progress = shallowRef<{ done: number; total: number } | null>(null);
  const notKept = ref(false);
  let left = false;
  let asked = 0;
  /** which refresh is the current one: a newer one, or leaving, ends the older */
  let turn = 0;

  async function search(): Promise<void> {
    const mine = ++asked;
    const answer = await call("library.search", {
      text: text.value,
      product: product.value,
      sludgeClass: sludgeClass.value,
      onlyApproved: onlyApproved.value,
      sort: { column: column.value, down: down.value },
    });
    if (mine !== asked) return;
    if (answer.ok) found.value = answer.value;
    else trouble.value = answer.message;
  }

  async function refresh(): Promise<void> {
    const mine = ++turn;
    trouble.value = "";
    progress.value = { done: 0, total: 0 };
    let shown = performance.now();
    for (let step: "start" | "go-on" = "start"; mine === turn && !left; step = "go-on") {
      const answer = await call("library.refresh", { step });
      if (!answer.ok) {
        trouble.value = answer.message;
        break;
      }
      const { state, done, total } = answer.value;
      notKept.value = answer.value.notKept;
      if (mine !== turn) return;
      progress.value = { done, total };
      if (state !== "running") break;
      if (performance.now() - shown > showEveryMs) {
        await search();
        shown = performance.now();
      }
    }
    if (mine !== turn) return;
    progress.value = null;
    await search();
  }

  async function stop(): Promise<void> {
    turn += 1;
    progress.value = null;
    await call("library.refresh", { step: "stop" });
    if (!left) await search();
  }

  /** Sorts by a column; a second time turns it round. What is best comes first at the first press. */
  function sortBy(next: SortColumn): void {
    down.value = column.value === next ? !down.value : next === "date" || next === "cake";
    column.value = next;
  }

  function clear(): void {
    text.value = "";
    product.value = null;
    sludgeClass.value = null;
    onlyApproved.value = false;
  }

  let typing: ReturnType<typeof setTimeout> | undefined;
  watch(text, () => {
    clearTimeout(typing);
    typing = setTimeout(() => void search(), typingMs);
  });
  watch([product, sludgeClass, onlyApproved, column, down], () => void search());
  onBeforeUnmount(() => {
    left = true;
    clearTimeout(typing);
    if (progress.value) void stop();
  });

  return {
    text,
    product,
    sludgeClass,
    onlyApproved,
    column,
    down,
    found,
    trouble,
    progress,
    notKept,
    search,
    refresh,
    stop,
    sortBy,
    clear,
  };
}

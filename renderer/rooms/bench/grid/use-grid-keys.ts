import { computed, nextTick, ref, type Ref } from "vue";
import { blockCells, columnText, layBlock } from "../../../../src/study/bench-table/block.ts";
import type { JarColumn } from "../../../../src/study/bench-table/jar-columns.ts";
import type { SeriesChain } from "../../../../src/study/derive/jars.ts";
import { benchGridWords as words } from "../../../../src/words/bench-grid.ts";
import { useEdit } from "../../../stores/edit.ts";
import { newId } from "../../../stores/ids.ts";
import { useStudy } from "../../../stores/study.ts";

interface Place {
  row: number;
  column: string;
}

/** Keyboard moves, a run of chosen cells in one column, fill down, copy and paste of the jar table. */
export function useGridKeys(
  table: Ref<HTMLElement | null>,
  chain: () => SeriesChain,
  columns: () => JarColumn[],
  reveal: (row: number) => boolean,
) {
  const study = useStudy();
  const edit = useEdit();
  /** rows chosen in one column, both ends included; the first is where the choice began */
  const chosen = ref<{ column: string; from: number; to: number } | null>(null);
  const said = ref("");
  const refusal = ref("");

  const bounds = computed(() =>
    chosen.value
      ? {
          column: chosen.value.column,
          low: Math.min(chosen.value.from, chosen.value.to),
          high: Math.max(chosen.value.from, chosen.value.to),
        }
      : null,
  );
  /** The column in which a row's cell is among those chosen together; null where it is not, or is the only one. */
  const chosenIn = (row: number) => {
    const run = bounds.value;
    return run && run.low !== run.high && row >= run.low && row <= run.high ? run.column : null;
  };

  function placeOf(target: EventTarget | null): Place | null {
    const cell = target instanceof HTMLElement ? target.closest<HTMLElement>("[data-column]") : null;
    const row = cell?.closest<HTMLElement>("[data-row]")?.dataset["row"];
    const column = cell?.dataset["column"];
    return row !== undefined && column !== undefined ? { row: Number(row), column } : null;
  }

  async function focusCell({ row, column }: Place): Promise<boolean> {
    if (row < 0 || row >= chain().jars.length) return false;
    if (reveal(row)) await nextTick();
    const input = table.value?.querySelector<HTMLInputElement>(
      `[data-row="${row}"] [data-column="${column}"] input`,
    );
    input?.focus();
    input?.select();
    return input !== null && input !== undefined;
  }

  function sideways(place: Place, by: number): Place {
    const keys = columns().map(({ key }) => key);
    const next = keys[keys.indexOf(place.column) + by];
    return { row: place.row, column: next ?? place.column };
  }

  async function lay(
    cells: string[][],
    from: Place,
    done: (count: number) => string,
    label: string,
  ): Promise<void> {
    said.value = "";
    refusal.value = "";
    const state = study.state;
    if (!state) return;
    const plan = layBlock(state, chain(), columns(), cells, from, newId);
    if (!plan.ok) {
      refusal.value = plan.message;
      return;
    }
    if (plan.value.commands.length === 0) {
      said.value = words.nothingChanges;
      return;
    }
    const outcome = await edit.together(label, plan.value.commands);
    if (outcome.ok) said.value = done(plan.value.cells);
    else refusal.value = words.refused(outcome.message);
  }

  const wordOf = (key: string) => columns().find((column) => column.key === key)?.label ?? words.cells;

  /** Copies the top of the chosen cells down over them, or the cell above into this one. */
  async function fillDown(place: Place): Promise<void> {
    const run = bounds.value;
    const many = run !== null && run.column === place.column && run.high > run.low;
    const from = many ? run.low : place.row - 1;
    const to = many ? run.high : place.row;
    const source = chain().jars[from];
    const column = columns().find(({ key }) => key === place.column);
    if (!source || !column) return;
    const cells = Array.from({ length: to - from }, () => [column.text(source)]);
    await lay(
      cells,
      { row: from + 1, column: place.column },
      (count) => words.filled(count, column.label),
      words.fill(column.label),
    );
  }

  async function clear(): Promise<void> {
    const run = bounds.value;
    if (!run) return;
    const cells = Array.from({ length: run.high - run.low + 1 }, () => [""]);
    await lay(
      cells,
      { row: run.low, column: run.column },
      (count) => words.cleared(count, wordOf(run.column)),
      words.clear(wordOf(run.column)),
    );
  }

  async function onPaste(event: ClipboardEvent): Promise<void> {
    const place = placeOf(event.target);
    const text = event.clipboardData?.getData("text/plain") ?? "";
    // A single value is the cell's own business.
    if (!place || !/[\t\n]/.test(text.replace(/\r?\n$/, ""))) return;
    event.preventDefault();
    const cells = blockCells(text);
    await lay(
      cells,
      place,
      (count) => words.pasted(count, chain().jars[place.row]?.jar.label ?? ""),
      words.paste(cells.length),
    );
  }

  function onCopy(event: ClipboardEvent): void {
    const run = bounds.value;
    const column = columns().find(({ key }) => key === run?.column);
    if (!run || run.high === run.low || !column) return;
    event.preventDefault();
    event.clipboardData?.setData("text/plain", columnText(chain().jars.slice(run.low, run.high + 1), column));
    said.value = words.copied(run.high - run.low + 1, column.label);
  }

  function onKey(event: KeyboardEvent): void {
    const input = event.target;
    const place = placeOf(input);
    if (!place || !(input instanceof HTMLInputElement)) return;
    const whole = input.selectionStart === 0 && input.selectionEnd === input.value.length;
    const atStart = input.selectionStart === 0 && input.selectionEnd === 0;
    const atEnd = input.selectionStart === input.value.length;
    const go = (to: Place) => {
      event.preventDefault();
      void focusCell(to);
    };
    const command = event.ctrlKey || event.metaKey;
    if (event.shiftKey && !command && (event.key === "ArrowDown" || event.key === "ArrowUp")) {
      const start = chosen.value?.column === place.column ? chosen.value : { from: place.row, to: place.row };
      const to = Math.min(
        chain().jars.length - 1,
        Math.max(0, start.to + (event.key === "ArrowDown" ? 1 : -1)),
      );
      chosen.value = { column: place.column, from: start.from, to };
      event.preventDefault();
      return;
    }
    if (command && event.key.toLowerCase() === "d") {
      event.preventDefault();
      // Leaving the cell commits what stands in it, so that it is what is filled.
      input.blur();
      void fillDown(place).then(() => focusCell(place));
      return;
    }
    if (event.key === "Delete" && bounds.value && bounds.value.high > bounds.value.low) {
      event.preventDefault();
      void clear().then(() => focusCell(place));
      return;
    }
    if (command) return;
    if (event.key !== "Shift") chosen.value = null;
    if (event.key === "ArrowDown") go({ ...place, row: place.row + 1 });
    else if (event.key === "ArrowUp") go({ ...place, row: place.row - 1 });
    else if (event.key === "PageDown")
      go({ ...place, row: Math.min(chain().jars.length - 1, place.row + 15) });
    else if (event.key === "PageUp") go({ ...place, row: Math.max(0, place.row - 15) });
    else if (event.key === "ArrowRight" && (atEnd || whole)) go(sideways(place, 1));
    else if (event.key === "ArrowLeft" && (atStart || whole)) go(sideways(place, -1));
  }

  /** Enter goes down a column as on paper. */
  function onAccepted(event: Event): void {
    const place = placeOf(event.target);
    if (place) void focusCell({ ...place, row: place.row + 1 });
  }

  return { onKey, onPaste, onCopy, onAccepted, focusCell, chosenIn, said, refusal };
}

import { bad, good, type Outcome } from "../../outcome.ts";
import { applyCommand, type SimpleCommand } from "../commands.ts";
import type { JarChain, SeriesChain } from "../derive/jars.ts";
import type { StudyState } from "../schema/records.ts";
import { nextJar } from "./next-jar.ts";
import type { JarColumn, TableJar } from "./jar-columns.ts";
import { benchTableWords } from "../../words/bench-table.ts";

/** Cells of a pasted text: rows by line, columns by tab, as spreadsheets put them on the clipboard. */
export function blockCells(text: string): string[][] {
  const lines = text.replace(/\r\n?/g, "\n").replace(/\n$/, "").split("\n");
  return lines.map((line) => line.split("\t").map((cell) => cell.trim()));
}

export interface BlockPlan {
  commands: SimpleCommand[];
  cells: number;
  addedJars: number;
}

/**
 * Lays a block of texts over the table from one cell on, over typed columns only; rows past the last jar become new
 * jars. All or nothing: the first cell that cannot stand refuses the block, naming its row and column.
 */
export function layBlock(
  state: StudyState,
  chain: SeriesChain,
  columns: JarColumn[],
  cells: string[][],
  from: { row: number; column: string },
  newId: () => string,
): Outcome<BlockPlan> {
  const firstColumn = columns.findIndex(({ key }) => key === from.column);
  if (firstColumn < 0) return bad(benchTableWords.chooseCell);
  const widest = Math.max(...cells.map((row) => row.length));
  if (firstColumn + widest > columns.length)
    return bad(benchTableWords.wideBlock(widest, columns.length - firstColumn));
  const commands: SimpleCommand[] = [];
  let count = 0;
  const added = newJars(chain, from.row + cells.length - chain.jars.length, newId);
  for (const [r, row] of cells.entries()) {
    const known = chain.jars[from.row + r];
    const fresh = added[from.row + r - chain.jars.length];
    const draft = known ? draftOf(state, known) : draftOfNew(state, fresh!);
    if (!draft.ok) return draft;
    if (fresh) commands.push(fresh);
    let small = draft.value;
    for (const [c, text] of row.entries()) {
      const column = columns[firstColumn + c]!;
      const jar = tableJar(small);
      if (text === column.text(jar)) continue;
      const made = column.commands(jar, text);
      if (!made.ok) return refused(r, column, made.message);
      for (const command of made.value) {
        const applied = applyCommand(small, command);
        if (!applied.ok) return refused(r, column, applied.message);
        small = applied.value.state;
        commands.push(command);
      }
      count += 1;
    }
  }
  return good({ commands, cells: count, addedJars: added.length });
}

function refused(row: number, column: JarColumn, message: string): Outcome<never> {
  return bad(benchTableWords.blockRefused(row + 1, column.label, message));
}

type AddJar = Extract<SimpleCommand, { do: "add" }>;

function newJars(chain: SeriesChain, count: number, newId: () => string): AddJar[] {
  const next = nextJar(chain, chain.jars.length);
  return Array.from({ length: Math.max(0, count) }, () => {
    return { do: "add", kind: "jar", record: { id: newId(), seriesId: chain.series.id, ...next() } };
  });
}

/** The study with this one jar and its readings alone: enough to check a row, and quick however many jars there are. */
function draftOf(state: StudyState, { jar, readings }: JarChain): Outcome<StudyState> {
  const reading = Object.fromEntries(readings.map((one) => [one.id, one]));
  return good({ ...state, jar: { [jar.id]: jar }, reading, photo: {} });
}

function draftOfNew(state: StudyState, command: AddJar): Outcome<StudyState> {
  const applied = applyCommand({ ...state, jar: {}, reading: {}, photo: {} }, command);
  return applied.ok ? good(applied.value.state) : applied;
}

function tableJar(small: StudyState): TableJar {
  const jar = Object.values(small.jar)[0]!;
  const readings = Object.values(small.reading).sort((a, b) => (a.id < b.id ? -1 : 1));
  return { jar, readings };
}

/** The text of a run of cells in one column, one a line, for the clipboard. */
export function columnText(jars: TableJar[], column: JarColumn): string {
  return jars.map((jar) => column.text(jar)).join("\n");
}

import { exactUse, holdsNumbers, usesByHeads, type ColumnUse } from "../../../src/exchange/columns.ts";
import { tableOf, type Table } from "../../../src/exchange/grid.ts";
import { readSeparated } from "../../../src/exchange/table.ts";
import type { Outcome } from "../../../src/outcome.ts";
import { applyCommand, type SimpleCommand } from "../../../src/study/commands.ts";
import { idMaker } from "../../../src/study/exchange/ids.ts";
import { planImport, type ImportOptions, type ImportPlan } from "../../../src/study/exchange/import-plan.ts";
import { emptyState, type Kind, type StudyState } from "../../../src/study/schema/records.ts";

/** The sludge and the stock of worked 1.1 of the trade formulas: TS 2.500 %, 1.003 kg/L, 0.2000 % active, 42 % share. */
export const worked = {
  sample: {
    id: "sample",
    streamId: "stream",
    label: "Sample",
    provisionalTotalSolidsPct: 2.5,
    densityKgPerL: 1.003,
  },
  product: { id: "product", label: "Emulsion", form: "emulsion", activePct: 42 },
  stock: {
    id: "stock",
    productId: "product",
    label: "Stock",
    neatMassG: (500 * 0.2) / 42,
    totalMassG: 500,
    solutionDensityKgPerL: 1,
  },
  series: {
    id: "series",
    label: "Series",
    sampleId: "sample",
    stockAId: "stock",
    sampleVolumeMl: 500,
    protocol: { drainS: 10 },
  },
};

/** That study, with fields of its records replaced and records left out (null). */
export function benchStudy(changes: { [K in keyof typeof worked]?: object | null } = {}): StudyState {
  const commands: SimpleCommand[] = [
    { do: "add", kind: "study", record: { id: "study", name: "Test" } },
    { do: "add", kind: "stream", record: { id: "stream", label: "Stream" } },
  ];
  for (const kind of ["sample", "product", "stock", "series"] as const) {
    const change = changes[kind];
    if (change !== null)
      commands.push({ do: "add", kind: kind as Kind, record: { ...worked[kind], ...change } });
  }
  const applied = applyCommand(emptyState(), { do: "together", label: "study", commands });
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}

/** A text file as a table, as the terminal reads it. */
export function tableFrom(text: string, mark: "." | "," | null = null): Outcome<Table> {
  const grid = readSeparated(text, "trial.csv");
  if (!grid.ok) return grid;
  return tableOf(grid.value, "trial.csv", mark, null, (_column, head) => holdsNumbers(exactUse(head)));
}

let stamp = 0;

/** A text file planned into a study: columns by their heads unless given, into the study's series unless named. */
export function planned(
  text: string,
  state: StudyState = benchStudy(),
  more: Partial<ImportOptions> & { uses?: ColumnUse[] } = {},
): Outcome<ImportPlan> {
  const table = tableFrom(text);
  if (!table.ok) return table;
  const { uses: given, ...options } = more;
  const uses = given ? { ok: true as const, value: given } : usesByHeads(table.value.heads, "trial.csv");
  if (!uses.ok) return uses;
  return planImport(state, table.value, uses.value, {
    seriesName: "Series",
    fallbackName: "trial",
    choice: {},
    skipBad: false,
    readAgain: false,
    nextId: idMaker((stamp += 1), "t"),
    ...options,
  });
}

/** The plan, which must be had and free of faults, carried out. */
export function imported(plan: Outcome<ImportPlan>, state: StudyState = benchStudy()): StudyState {
  if (!plan.ok) throw new Error(plan.message);
  if (plan.value.errors.length > 0) throw new Error(JSON.stringify(plan.value.errors));
  if (!plan.value.command) throw new Error("nothing to add");
  const applied = applyCommand(state, plan.value.command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}

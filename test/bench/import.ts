// The preview of a file of 10,000 rows, from its bytes to the list of jars, with its doses and every reading checked.
import { exactUse, holdsNumbers, usesByHeads } from "../../src/exchange/columns.ts";
import { tableOf } from "../../src/exchange/grid.ts";
import { readSheetFile } from "../../src/exchange/sheet-file.ts";
import { writeWorkbook } from "../../src/exchange/workbook-out.ts";
import { applyCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { idMaker } from "../../src/study/exchange/ids.ts";
import { planImport } from "../../src/study/exchange/import-plan.ts";
import { emptyState } from "../../src/study/schema/records.ts";

const heads = [
  "jar",
  "dose_a_kg_per_t",
  "turbidity_ntu",
  "filtrate_tss_mg_per_l",
  "drained_ml",
  "cake_ts_pct",
];
const rows = Array.from({ length: 10_000 }, (_, index) => [
  `jar ${index}`,
  2 + (index % 80) / 10,
  40 + (index % 500) / 8,
  200 + (index % 90),
  100 + (index % 250),
  12 + (index % 70) / 10,
]);

/** Times the preview of a CSV file and of a workbook; answers a name and milliseconds for each. */
export async function timeImportPreviews(runs: number): Promise<{ name: string; values: number[] }[]> {
  let state = emptyState();
  for (const command of demoCommands("2026-03-04T09:00:00.000Z")) {
    const applied = applyCommand(state, command);
    if (!applied.ok) throw new Error(applied.message);
    state = applied.value.state;
  }
  const csv = new TextEncoder().encode([heads, ...rows].map((row) => row.join(",")).join("\n"));
  const workbook = await writeWorkbook([{ name: "jars", rows: [heads, ...rows] }]);

  async function preview(bytes: Uint8Array<ArrayBuffer>): Promise<void> {
    const file = await readSheetFile(bytes, "large");
    if (!file.ok) throw new Error(file.message);
    const table = tableOf(file.value.sheets[0]!, "large", null, null, (_column, head) =>
      holdsNumbers(exactUse(head)),
    );
    if (!table.ok) throw new Error(table.message);
    const uses = usesByHeads(table.value.heads, "large");
    if (!uses.ok) throw new Error(uses.message);
    const plan = planImport(state, table.value, uses.value, {
      seriesName: "Large",
      fallbackName: "large",
      choice: {},
      skipBad: false,
      readAgain: false,
      nextId: idMaker(0, "bench"),
    });
    if (!plan.ok || plan.value.counts.jars !== 10_000 || plan.value.counts.readings !== 40_000)
      throw new Error("the rows were not all read");
  }

  const results: { name: string; values: number[] }[] = [];
  for (const [name, bytes] of [
    ["preview an import of 10,000 rows, CSV", new Uint8Array(csv)],
    ["preview an import of 10,000 rows, workbook", workbook],
  ] as const) {
    const values: number[] = [];
    for (let run = 0; run < runs; run++) {
      const start = performance.now();
      await preview(bytes);
      values.push(performance.now() - start);
    }
    results.push({ name, values });
  }
  return results;
}

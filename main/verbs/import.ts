import { randomBytes } from "node:crypto";
import { existsSync, readFileSync, statSync } from "node:fs";
import { basename, extname, resolve } from "node:path";
import { exactUse, holdsNumbers, usesByHeads } from "../../src/exchange/columns.ts";
import { tableOf } from "../../src/exchange/grid.ts";
import { limits } from "../../src/exchange/limits.ts";
import { readSheetFile } from "../../src/exchange/sheet-file.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { idMaker } from "../../src/study/exchange/ids.ts";
import { planImport } from "../../src/study/exchange/import-plan.ts";
import { editStudy } from "../service/one-step.ts";
import { decimalOption } from "./decimal-option.ts";
import { oneFile } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage =
  "import FILE --into STUDY.flocwright [--series NAME] [--dry-run] [--skip-bad] [--read-again] [--sheet NAME] [--decimal . | ,]";

const options = {
  into: { type: "string" },
  series: { type: "string" },
  sheet: { type: "string" },
  decimal: { type: "string" },
  "dry-run": { type: "boolean" },
  "skip-bad": { type: "boolean" },
  "read-again": { type: "boolean" },
} as const;

/** `import`: jars and readings from a CSV or .xlsx file into a study, as one step of its history. */
export const importVerb: Verb = { usage, run: runImport };

async function runImport(args: string[]): Promise<Outcome<unknown>> {
  const file = oneFile(args, options, usage);
  if (!file.ok) return file;
  const { path, values } = file.value;
  if (typeof values["into"] !== "string") return bad(`--into is missing. Usage: ${usage}`);
  const study = values["into"];
  const seriesName = typeof values["series"] === "string" ? values["series"].trim() : null;
  if (seriesName === "") return bad("--series takes the name of a series.");
  const mark = decimalOption(values["decimal"]);
  if (!mark.ok) return mark;
  const bytes = readBytes(path);
  if (!bytes.ok) return bytes;
  const sheets = await readSheetFile(bytes.value, path);
  if (!sheets.ok) return sheets;
  if (sheets.value.encoding === "Western European")
    return bad(`${path}: is not text in UTF-8: save it as CSV in UTF-8, or as .xlsx.`);
  const wanted = values["sheet"];
  const grid =
    typeof wanted === "string"
      ? sheets.value.sheets.find(({ sheet }) => sheet === wanted)
      : sheets.value.sheets[0];
  if (!grid)
    return bad(
      `${path}: there is no sheet "${String(wanted)}"; there are: ${sheets.value.sheets.map(({ sheet }) => sheet).join(", ")}.`,
    );
  const table = tableOf(grid, path, mark.value, null, (_column, head) => holdsNumbers(exactUse(head)));
  if (!table.ok) return table;
  const uses = usesByHeads(table.value.heads, path);
  if (!uses.ok) return uses;
  const left = table.value.heads.filter((head, index) => head !== "" && uses.value[index]?.as === "ignore");
  if (!existsSync(study)) return bad(`${study}: there is no such file.`);

  const now = new Date();
  let fromFile = false;
  const report = editStudy(resolve(study), now.toISOString(), (state) => {
    const plan = planImport(state, table.value, uses.value, {
      seriesName,
      fallbackName: basename(path, extname(path)).slice(0, 120) || "import",
      choice: {},
      skipBad: values["skip-bad"] === true,
      readAgain: values["read-again"] === true,
      nextId: idMaker(now.getTime(), randomBytes(4).toString("hex").slice(0, 5)),
    });
    if (!plan.ok) {
      fromFile = true;
      return plan;
    }
    const { rows, added, errors, command } = plan.value;
    return good({ command: values["dry-run"] === true ? null : command, report: { rows, added, errors } });
  });
  if (!report.ok) return fromFile ? report : bad(`${study}: ${report.message}`);
  if (left.length > 0) process.stderr.write(`Columns left aside: ${left.join(", ")}.\n`);
  return report;
}

function readBytes(path: string): Outcome<Uint8Array<ArrayBuffer>> {
  try {
    if (statSync(path).size > limits.fileBytes)
      return bad(`${path}: is larger than ${limits.fileBytes / 1024 / 1024} MB: split it.`);
    return good(new Uint8Array(readFileSync(path)));
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === "ENOENT") return bad(`${path}: there is no such file.`);
    if (code === "EISDIR") return bad(`${path}: is a folder, not a file.`);
    if (code === "EACCES" || code === "EPERM") return bad(`${path}: this file may not be read.`);
    return bad(`${path}: could not be read.`);
  }
}

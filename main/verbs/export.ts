import { existsSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import { exportFile, exportFormats, type ExportFormat } from "../../src/study/exchange/export-file.ts";
import { readStudy } from "../service/one-step.ts";
import { writeNewFile } from "../storage/files.ts";
import { oneFile } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage = `export STUDY.flocwright --format ${exportFormats.join("|")} --out FILE [--series NAME]`;

/** `export`: a study's jars and readings as CSV, everything as a workbook or JSON. */
export const exportVerb: Verb = { usage, run: runExport };

async function runExport(args: string[]): Promise<Outcome<unknown>> {
  const file = oneFile(
    args,
    { format: { type: "string" }, out: { type: "string" }, series: { type: "string" } },
    usage,
  );
  if (!file.ok) return file;
  const { path, values } = file.value;
  for (const needed of ["format", "out"])
    if (typeof values[needed] !== "string") return bad(`--${needed} is missing. Usage: ${usage}`);
  const format = exportFormats.find((one): one is ExportFormat => one === values["format"]);
  if (!format) return bad(`--format takes ${exportFormats.join(", ")}, not "${String(values["format"])}".`);
  const out = String(values["out"]);
  if (!existsSync(path)) return bad(`${path}: there is no such file.`);
  if (existsSync(out)) return bad(`${out}: there is already a file of this name; it is left as it is.`);
  if (!existsSync(dirname(resolve(out)))) return bad(`${out}: its folder does not exist.`);
  const study = readStudy(resolve(path), new Date().toISOString());
  if (!study.ok) return bad(`${path}: ${study.message}`);
  const name = values["series"];
  if (name !== undefined && format !== "csv") return bad("--series goes with --format csv.");
  const all = Object.values(study.value.state.series);
  const series = all.find(({ label }) => label === name);
  if (name !== undefined && !series)
    return bad(
      `${path}: there is no series "${String(name)}"; there are: ${all.map(({ label }) => label).join(", ")}.`,
    );
  const bytes = await exportFile(study.value.state, format, series?.id ?? null);
  try {
    writeNewFile(resolve(out), bytes);
  } catch {
    return bad(`${out}: could not be written.`);
  }
  return good({ file: out, format, bytes: bytes.length });
}

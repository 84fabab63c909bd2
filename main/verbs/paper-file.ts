import { existsSync } from "node:fs";
import { dirname, resolve } from "node:path";
import packageFile from "../../package.json" with { type: "json" };
import { bad, good, type Outcome } from "../../src/outcome.ts";
import type { PaperInput } from "../../src/report/paper-input.ts";
import type { Language } from "../../src/words/language.ts";
import { readStudy } from "../service/standalone.ts";
import { writeNewFile } from "../storage/files.ts";
import { languageOption } from "./language-option.ts";
import { readArguments, type OptionSpec, type ParsedArguments } from "./verb.ts";

export interface PaperArguments {
  study: string;
  out: string;
  /** what the paper is written in */
  language: Language;
  values: ParsedArguments["values"];
}

/** The words of a verb that makes a paper: the study, `--out`, `--language` and options of its own. Nothing is written yet. */
export function paperArguments(args: string[], options: OptionSpec, usage: string): Outcome<PaperArguments> {
  const parsed = readArguments(
    args,
    { ...options, out: { type: "string" }, language: { type: "string" } },
    usage,
  );
  if (!parsed.ok) return parsed;
  const [study, ...rest] = parsed.value.positionals;
  if (study === undefined || rest.length > 0) return bad(`Name one study. Usage: ${usage}`);
  const out = parsed.value.values["out"];
  if (typeof out !== "string") return bad(`--out is missing. Usage: ${usage}`);
  if (!out.endsWith(".html")) return bad(`${out}: a paper's file name ends in .html.`);
  if (existsSync(resolve(out)))
    return bad(`${out}: there is already a file of this name; it is left as it is.`);
  if (!existsSync(dirname(resolve(out)))) return bad(`${out}: its folder does not exist.`);
  const language = languageOption(parsed.value.values["language"]);
  if (!language.ok) return language;
  return good({ study, out, language: language.value, values: parsed.value.values });
}

/** A study read for a paper made now, on this machine's clock. */
export function paperInput(study: string): Outcome<PaperInput> {
  const now = new Date();
  const read = readStudy(resolve(study), now.toISOString());
  if (!read.ok) return bad(`${study}: ${read.message}`);
  return good({
    ...read.value,
    now: now.toISOString(),
    utcOffsetMin: -now.getTimezoneOffset(),
    version: packageFile.version,
  });
}

/** Writes a paper as a file of its own; a file that is there already is never touched. */
export function writePaper(out: string, page: string): Outcome<null> {
  try {
    writeNewFile(resolve(out), page);
    return good(null);
  } catch {
    return bad(`${out}: could not be written.`);
  }
}

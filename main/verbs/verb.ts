import { readFileSync } from "node:fs";
import { parseArgs, type ParseArgsConfig } from "node:util";
import { bad, good, type Outcome } from "../../src/outcome.ts";

/**
 * One terminal verb: takes the words after its name, answers one JSON value or one sentence.
 * `stays` is for a verb that keeps running (a host) after its first answer.
 */
export interface Verb {
  usage: string;
  stays?: boolean;
  run(args: string[]): Promise<Outcome<unknown>>;
}

export type OptionSpec = NonNullable<ParseArgsConfig["options"]>;

export interface ParsedArguments {
  positionals: string[];
  values: Record<string, string | boolean | (string | boolean)[] | undefined>;
}

/** Splits a verb's words into positionals and options; an unknown or incomplete option is one sentence, not an exception. */
export function readArguments(args: string[], options: OptionSpec, usage: string): Outcome<ParsedArguments> {
  try {
    const { positionals, values } = parseArgs({ args, options, allowPositionals: true, strict: true });
    return good({ positionals, values });
  } catch (error) {
    const [reason = ""] = (error instanceof Error ? error.message : String(error)).split(/\.\s/);
    return bad(`${reason.replace(/\.$/, "")}. Usage: ${usage}`);
  }
}

/** Reads a text file as UTF-8, naming the file where it cannot be read. A byte-order mark is left for the parser. */
export function readTextFile(path: string): Outcome<string> {
  try {
    return good(new TextDecoder("utf-8", { fatal: true, ignoreBOM: true }).decode(readFileSync(path)));
  } catch (error) {
    const code = (error as NodeJS.ErrnoException).code;
    if (code === "ENOENT") return bad(`${path}: there is no such file.`);
    if (code === "EISDIR") return bad(`${path}: is a folder, not a file.`);
    if (code === "EACCES" || code === "EPERM") return bad(`${path}: this file may not be read.`);
    if (error instanceof TypeError) return bad(`${path}: is not text in UTF-8.`);
    return bad(`${path}: could not be read.`);
  }
}

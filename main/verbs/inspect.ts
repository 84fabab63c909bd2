import { resolve } from "node:path";
import { bad } from "../../src/outcome.ts";
import { summarise } from "../service/standalone.ts";
import { readArguments, type Verb } from "./verb.ts";

const usage = "inspect FILE.flocwright";

/** `inspect`: what a study holds, and whether the file and its history are whole. */
export const inspect: Verb = {
  usage,
  run: (args) => {
    const parsed = readArguments(args, {}, usage);
    if (!parsed.ok) return Promise.resolve(parsed);
    const [name, ...rest] = parsed.value.positionals;
    if (name === undefined || rest.length > 0) return Promise.resolve(bad(`Name one file. Usage: ${usage}`));
    const summary = summarise(resolve(name), new Date().toISOString());
    return Promise.resolve(summary.ok ? summary : bad(`${name}: ${summary.message}`));
  },
};

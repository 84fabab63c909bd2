import { resolve } from "node:path";
import { bad } from "../../src/outcome.ts";
import { summarise } from "../service/standalone.ts";
import { oneFile } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage = "inspect FILE.flocwright";

/** `inspect`: what a study holds, and whether the file and its history are whole. */
export const inspect: Verb = {
  usage,
  run: (args) => {
    const file = oneFile(args, {}, usage);
    if (!file.ok) return Promise.resolve(file);
    const { path: name } = file.value;
    const summary = summarise(resolve(name), new Date().toISOString());
    return Promise.resolve(summary.ok ? summary : bad(`${name}: ${summary.message}`));
  },
};

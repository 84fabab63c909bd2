import { existsSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { bad, good } from "../../src/outcome.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { writeDemo } from "../service/standalone.ts";
import { readArguments, type Verb } from "./verb.ts";

const usage = "demo FILE.flocwright";

/** `demo`: writes the invented demo study to a new file. */
export const demo: Verb = {
  usage,
  run: (args) => {
    const parsed = readArguments(args, {}, usage);
    if (!parsed.ok) return Promise.resolve(parsed);
    const [name, ...rest] = parsed.value.positionals;
    if (name === undefined || rest.length > 0) return Promise.resolve(bad(`Name one file. Usage: ${usage}`));
    if (!name.endsWith(".flocwright"))
      return Promise.resolve(bad(`${name}: a study's file name ends in .flocwright.`));
    const path = resolve(name);
    if (existsSync(path))
      return Promise.resolve(bad(`${name}: there is already a file of this name; it is left as it is.`));
    if (!existsSync(dirname(path))) return Promise.resolve(bad(`${name}: its folder does not exist.`));
    const written = writeDemo(path, demoCommands, new Date().toISOString());
    return Promise.resolve(
      written.ok ? good({ file: name, invented: true }) : bad(`${name}: ${written.message}`),
    );
  },
};

import { existsSync } from "node:fs";
import { dirname, resolve } from "node:path";
import { bad, good } from "../../src/outcome.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { writeDemo } from "../service/standalone.ts";
import { oneFile } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage = "demo FILE.flocwright";

/** `demo`: writes the invented demo study to a new file. */
export const demo: Verb = {
  usage,
  run: (args) => {
    const file = oneFile(args, {}, usage);
    if (!file.ok) return Promise.resolve(file);
    const { path: name } = file.value;
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

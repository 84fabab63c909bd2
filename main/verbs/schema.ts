import { bad, good } from "../../src/outcome.ts";
import { studyJsonSchema } from "../../src/study/exchange/whole-study.ts";
import { readArguments, type Verb } from "./verb.ts";

const usage = "schema";

/** `schema`: the JSON schema of a whole study, as `export --format json` writes it. */
export const schema: Verb = {
  usage,
  run: (args) => {
    const parsed = readArguments(args, {}, usage);
    if (!parsed.ok) return Promise.resolve(parsed);
    const [extra] = parsed.value.positionals;
    if (extra !== undefined) return Promise.resolve(bad(`"${extra}" is not expected here. Usage: ${usage}`));
    return Promise.resolve(good(studyJsonSchema()));
  },
};

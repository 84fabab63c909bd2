import { makePlan, planInputSchema } from "../../src/bench/plan.ts";
import { seededRandom } from "../../src/curve/random.ts";
import { bad } from "../../src/outcome.ts";
import { readJsonFile } from "./json-input.ts";
import { readArguments, type Verb } from "./verb.ts";

const usage = "plan FILE.json";

/** `plan`: a trial plan with its running order and syringe volumes. */
export const plan: Verb = {
  usage,
  run: (args) => {
    const parsed = readArguments(args, {}, usage);
    if (!parsed.ok) return Promise.resolve(parsed);
    const [path, ...rest] = parsed.value.positionals;
    if (path === undefined || rest.length > 0) return Promise.resolve(bad(`Name one file. Usage: ${usage}`));
    const input = readJsonFile(path, planInputSchema);
    if (!input.ok) return Promise.resolve(input);
    const made = makePlan(input.value, seededRandom(input.value.seed));
    return Promise.resolve(made.ok ? made : bad(`${path}: ${made.message}`));
  },
};

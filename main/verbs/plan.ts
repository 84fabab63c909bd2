import { makePlan, planInputSchema } from "../../src/bench/plan.ts";
import { seededRandom } from "../../src/curve/random.ts";
import { bad } from "../../src/outcome.ts";
import { readJsonFile } from "./json-input.ts";
import { oneFile } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage = "plan FILE.json";

/** `plan`: a trial plan with its running order and syringe volumes. */
export const plan: Verb = {
  usage,
  run: (args) => {
    const file = oneFile(args, {}, usage);
    if (!file.ok) return Promise.resolve(file);
    const { path } = file.value;
    const input = readJsonFile(path, planInputSchema);
    if (!input.ok) return Promise.resolve(input);
    const made = makePlan(input.value, seededRandom(input.value.seed));
    return Promise.resolve(made.ok ? made : bad(`${path}: ${made.message}`));
  },
};

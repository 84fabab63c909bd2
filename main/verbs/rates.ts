import { bad } from "../../src/outcome.ts";
import { plantRates, ratesInputSchema } from "../../src/plant/rates.ts";
import { readJsonFile } from "./json-input.ts";
import { oneFile } from "./one-file.ts";
import type { Verb } from "./verb.ts";

const usage = "rates FILE.json";

/** `rates`: pump rates, water, yearly use and cost for a feed. */
export const rates: Verb = {
  usage,
  run: (args) => {
    const file = oneFile(args, {}, usage);
    if (!file.ok) return Promise.resolve(file);
    const { path } = file.value;
    const input = readJsonFile(path, ratesInputSchema);
    if (!input.ok) return Promise.resolve(input);
    const result = plantRates(input.value);
    return Promise.resolve(result.ok ? result : bad(`${path}: ${result.message}`));
  },
};

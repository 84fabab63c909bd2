import { bad } from "../../src/outcome.ts";
import { plantRates, ratesInputSchema } from "../../src/plant/rates.ts";
import { readJsonFile } from "./json-input.ts";
import { readArguments, type Verb } from "./verb.ts";

const usage = "rates FILE.json";

/** `rates`: pump rates, water, yearly use and cost for a feed. */
export const rates: Verb = {
  usage,
  run: (args) => {
    const parsed = readArguments(args, {}, usage);
    if (!parsed.ok) return Promise.resolve(parsed);
    const [path, ...rest] = parsed.value.positionals;
    if (path === undefined || rest.length > 0) return Promise.resolve(bad(`Name one file. Usage: ${usage}`));
    const input = readJsonFile(path, ratesInputSchema);
    if (!input.ok) return Promise.resolve(input);
    const result = plantRates(input.value);
    return Promise.resolve(result.ok ? result : bad(`${path}: ${result.message}`));
  },
};

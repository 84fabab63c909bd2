import type { StripWords } from "../../../src/study/derive/strip.ts";
import { doseWords } from "../../../src/units/dose-words.ts";
import { inInterval, type Told } from "../../../src/units/quantity-text.ts";

const ratio: Told = { kind: "ratio", system: "metric", mark: "." };

/** Number text for strips in tests: metric, with a decimal point. */
export const stripNumbers: StripWords = {
  doses: doseWords(".", "metric"),
  figure: ({ value, spread }) => ({
    value: value === null ? "" : String(value),
    spread: spread === null ? "" : `± ${spread}`,
  }),
  plain: String,
  interval: (value, low, high) => inInterval(ratio, value, low, high),
  flowLPerH: (flow) => `${flow} L/h`,
};

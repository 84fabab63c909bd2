import { z } from "zod";
import { good } from "../outcome.ts";
import { positive } from "../units/number-schema.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response } from "./response.ts";
import { area } from "../words/language.ts";

const unit = "s";
const words = area("responseCst", {
  label: "CST",
  ask: "Read the capillary suction time",
  standard: "Standard Methods 2710 G (number from memory); EN 14701-1",
  head: "CST, s",
  onScreen: (seconds: string) => `CST ${seconds} s`,
  slot: "CST",
  field: "CST, s",
});
export type CstWords = typeof words;

/** Capillary suction time. */
export const cst = response({
  name: "cst_s",
  get label() {
    return words.label;
  },
  unit,
  taken: 5,
  fitted: { scale: "log", wanted: "minimum", rereadBandPct: 10 },
  group: "drainage-and-cake",
  kinds: [
    kind({
      schema: z.strictObject({ kind: z.literal("cst"), seconds: positive(100_000) }),
      columns: [
        {
          key: "cst",
          field: "seconds",
          get label() {
            return words.label;
          },
          unit: () => unit,
          censorable: false,
          get ask() {
            return words.ask;
          },
          get standard() {
            return words.standard;
          },
        },
      ],
      run: {
        get label() {
          return words.label;
        },
        fields: ["seconds"],
      },
      value: ({ seconds }) => seconds,
      first: (_, { value }) => good({ seconds: value }),
      head: () => words.head,
      onPaper: ({ seconds }, { entered }) => entered(seconds),
      onScreen: ({ seconds }, { entry }) => words.onScreen(entry(seconds)),
    }),
  ],
  files: [
    plainSlot(
      {
        slot: "cst",
        words: () => words.slot,
        field: "cst_s",
        fieldWords: () => words.field,
        guesses: [[/cst|capillary|kapillar/, "cst_s"]],
      },
      "cst",
      "seconds",
    ),
  ],
});

import { z } from "zod";
import { good } from "../outcome.ts";
import { positive } from "../units/number-schema.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response } from "./response.ts";

const words = {
  label: "CST",
  unit: "s",
  ask: "Read the capillary suction time",
  standard: "Standard Methods 2710 G (number from memory); EN 14701-1",
  head: "CST, s",
};

/** Capillary suction time. */
export const cst = response({
  name: "cst_s",
  label: words.label,
  unit: words.unit,
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
          label: words.label,
          unit: () => words.unit,
          censorable: false,
          ask: words.ask,
          standard: words.standard,
        },
      ],
      run: { label: words.label, fields: ["seconds"] },
      value: ({ seconds }) => seconds,
      first: (_, { value }) => good({ seconds: value }),
      head: () => words.head,
      onPaper: ({ seconds }, { entered }) => entered(seconds),
      onScreen: ({ seconds }, { plain }) => `${words.label} ${plain(seconds)} ${words.unit}`,
    }),
  ],
  files: [
    plainSlot(
      {
        slot: "cst",
        words: words.label,
        field: "cst_s",
        fieldWords: words.head,
        guesses: [[/cst|capillary|kapillar/, "cst_s"]],
      },
      "cst",
      "seconds",
    ),
  ],
});

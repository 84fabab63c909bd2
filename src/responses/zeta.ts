import { z } from "zod";
import { between } from "../units/number-schema.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response, type FormFields } from "./response.ts";
import { area } from "../words/language.ts";

const unit = "mV";
const words = area("responseZeta", {
  label: "Zeta potential",
  standard: "as the instrument shows it",
  read: "read",
  head: "zeta, mV",
  onScreen: (mV: string) => `zeta potential ${mV} mV`,
  slot: "zeta potential",
  field: "zeta potential, mV",
});
export type ZetaWords = typeof words;

/** Zeta potential; noted, not fitted. */
export const zeta = response({
  name: "zeta_mv",
  get label() {
    return words.label;
  },
  unit,
  taken: 12,
  fitted: null,
  group: "filtrate",
  kinds: [
    kind({
      schema: z.strictObject({ kind: z.literal("zeta"), mV: between(-500, 500) }),
      columns: [],
      form: {
        get title() {
          return words.label;
        },
        get standard() {
          return words.standard;
        },
        get fields(): FormFields {
          return [["mV", words.read, unit]];
        },
      },
      head: () => words.head,
      onPaper: ({ mV }, { entered }) => entered(mV),
      onScreen: ({ mV }, { entry }) => words.onScreen(entry(mV)),
    }),
  ],
  files: [
    plainSlot(
      { slot: "zeta", words: () => words.slot, field: "zeta_mv", fieldWords: () => words.field },
      "zeta",
      "mV",
    ),
  ],
});

import { z } from "zod";
import { between } from "../units/number-schema.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response } from "./response.ts";

const words = {
  label: "Zeta potential",
  slot: "zeta potential",
  unit: "mV",
  standard: "as the instrument shows it",
  read: "read",
  head: "zeta, mV",
  field: "zeta potential, mV",
};

/** Zeta potential; noted, not fitted. */
export const zeta = response({
  name: "zeta_mv",
  label: words.label,
  unit: words.unit,
  taken: 12,
  fitted: null,
  group: "filtrate",
  kinds: [
    kind({
      schema: z.strictObject({ kind: z.literal("zeta"), mV: between(-500, 500) }),
      columns: [],
      form: { title: words.label, standard: words.standard, fields: [["mV", words.read, words.unit]] },
      head: () => words.head,
      onPaper: ({ mV }, { entered }) => entered(mV),
      onScreen: ({ mV }, { plain }) => `${words.slot} ${plain(mV)} ${words.unit}`,
    }),
  ],
  files: [
    plainSlot({ slot: "zeta", words: words.slot, field: "zeta_mv", fieldWords: words.field }, "zeta", "mV"),
  ],
});

import { z } from "zod";
import { sharePct } from "../units/number-schema.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response } from "./response.ts";

const words = {
  label: "Capture",
  slot: "capture",
  unit: "%",
  head: "capture as read, %",
  field: "capture, %",
};

/** Capture as somebody else worked it out; the product's own is derived from filtrate and cake, never read. */
export const capture = response({
  name: "capture_pct",
  label: words.label,
  unit: words.unit,
  taken: 10,
  fitted: null,
  group: "filtrate",
  kinds: [
    kind({
      schema: z.strictObject({ kind: z.literal("capture"), pct: sharePct }),
      columns: [],
      head: () => words.head,
      onPaper: ({ pct }, { entered }) => entered(pct),
      onScreen: ({ pct }, { plain }) => `${words.slot} ${plain(pct)} ${words.unit}`,
    }),
  ],
  files: [
    plainSlot(
      {
        slot: "capture",
        words: words.slot,
        field: "capture_pct",
        fieldWords: words.field,
        guesses: [[/capture|recovery|abscheide/, "capture_pct"]],
      },
      "capture",
      "pct",
    ),
  ],
});

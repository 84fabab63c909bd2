import { z } from "zod";
import { sharePct } from "../units/number-schema.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response } from "./response.ts";
import { area } from "../words/language.ts";

const unit = "%";
const words = area("responseCapture", {
  label: "Capture",
  head: "capture as read, %",
  onScreen: (pct: string) => `capture ${pct} %`,
  slot: "capture",
  field: "capture, %",
});
export type CaptureWords = typeof words;

/** Capture as somebody else worked it out; the product's own is derived from filtrate and cake, never read. */
export const capture = response({
  name: "capture_pct",
  get label() {
    return words.label;
  },
  unit,
  taken: 10,
  fitted: null,
  group: "filtrate",
  kinds: [
    kind({
      schema: z.strictObject({ kind: z.literal("capture"), pct: sharePct }),
      columns: [],
      head: () => words.head,
      onPaper: ({ pct }, { entered }) => entered(pct),
      onScreen: ({ pct }, { entry }) => words.onScreen(entry(pct)),
    }),
  ],
  files: [
    plainSlot(
      {
        slot: "capture",
        words: () => words.slot,
        field: "capture_pct",
        fieldWords: () => words.field,
        guesses: [[/capture|recovery|abscheide/, "capture_pct"]],
      },
      "capture",
      "pct",
    ),
  ],
});

import { z } from "zod";
import { good } from "../outcome.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response } from "./response.ts";

const words = {
  label: "Floc grade",
  column: "floc",
  unit: "1 to 5",
  ask: "Look at the floc",
  standard: "our own words, no standard",
  slot: "floc grade",
  head: "floc, 1 to 5",
  field: "floc grade, 1 to 5",
};

/** Our own words for the floc grades. */
export const flocWords: Record<number, string> = {
  1: "no floc, cloudy",
  2: "pin floc, still cloudy",
  3: "small floc, hazy water",
  4: "clear water between firm floc",
  5: "large firm floc, clear at once",
};

/** How the floc looks; noted, not fitted. */
export const flocGrade = response({
  name: "floc_grade",
  label: words.label,
  unit: words.unit,
  taken: 1,
  fitted: null,
  group: "drainage-and-cake",
  kinds: [
    kind({
      schema: z.strictObject({
        kind: z.literal("floc-grade"),
        grade: z.int("must be a whole number from 1 to 5").min(1, "must be 1 to 5").max(5, "must be 1 to 5"),
      }),
      columns: [
        {
          key: "floc-grade",
          field: "grade",
          label: words.column,
          unit: () => words.unit,
          censorable: false,
          ask: words.ask,
          standard: words.standard,
        },
      ],
      run: { label: words.slot, fields: ["grade"] },
      first: (_, { value }) => good({ grade: value }),
      head: () => words.head,
      onPaper: ({ grade }, { entered }) => entered(grade),
      onScreen: ({ grade }) => `${words.column} ${grade}: ${flocWords[grade] ?? ""}`,
    }),
  ],
  files: [
    plainSlot(
      {
        slot: "floc",
        words: words.slot,
        field: "floc_grade",
        fieldWords: words.field,
        guesses: [[/floc/, "floc_grade"]],
      },
      "floc-grade",
      "grade",
    ),
  ],
});

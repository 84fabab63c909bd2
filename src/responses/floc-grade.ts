import { z } from "zod";
import { good } from "../outcome.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response } from "./response.ts";
import { area } from "../words/language.ts";
import { schemaWords } from "../words/schema.ts";

const words = area("responseFlocGrade", {
  label: "Floc grade",
  column: "floc",
  unit: "1 to 5",
  ask: "Look at the floc",
  standard: "our own words, no standard",
  slot: "floc grade",
  head: "floc, 1 to 5",
  onScreen: (grade: string, look: string) => `floc ${grade}: ${look}`,
  field: "floc grade, 1 to 5",
});
export type FlocGradeWords = typeof words;

/** Our own words for the floc grades. */
export const flocWords: Record<number, string> = area("responseFlocLooks", {
  1: "no floc, cloudy",
  2: "pin floc, still cloudy",
  3: "small floc, hazy water",
  4: "clear water between firm floc",
  5: "large firm floc, clear at once",
});

/** How the floc looks; noted, not fitted. */
export const flocGrade = response({
  name: "floc_grade",
  get label() {
    return words.label;
  },
  get unit() {
    return words.unit;
  },
  taken: 1,
  fitted: null,
  group: "drainage-and-cake",
  kinds: [
    kind({
      schema: z.strictObject({
        kind: z.literal("floc-grade"),
        grade: z
          .int({ error: () => schemaWords.wholeGrade })
          .min(1, { error: () => schemaWords.grade })
          .max(5, { error: () => schemaWords.grade }),
      }),
      columns: [
        {
          key: "floc-grade",
          field: "grade",
          get label() {
            return words.column;
          },
          unit: () => words.unit,
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
          return words.slot;
        },
        fields: ["grade"],
      },
      first: (_, { value }) => good({ grade: value }),
      head: () => words.head,
      onPaper: ({ grade }, { entered }) => entered(grade),
      onScreen: ({ grade }) => words.onScreen(String(grade), flocWords[grade] ?? ""),
    }),
  ],
  files: [
    plainSlot(
      {
        slot: "floc",
        words: () => words.slot,
        field: "floc_grade",
        fieldWords: () => words.field,
        guesses: [[/floc/, "floc_grade"]],
      },
      "floc-grade",
      "grade",
    ),
  ],
});

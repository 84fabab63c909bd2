import { z } from "zod";
import { good } from "../outcome.ts";
import { positive } from "../units/number-schema.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response, type FormFields } from "./response.ts";
import { area } from "../words/language.ts";

const unit = "s";
const words = area("responseFilterTime", {
  label: "Time to filter",
  column: "time to filter",
  ask: "Time the filtrate to half the sample",
  standard: "Standard Methods 2710 H (conditions from memory)",
  head: "time to filter, s",
  onScreen: (seconds: string) => `time to filter ${seconds} s`,
  time: "time",
});
export type FilterTimeWords = typeof words;

/** Time until half the sample has filtered; noted, not fitted. */
export const filterTime = response({
  name: "filter_time_s",
  get label() {
    return words.label;
  },
  unit,
  taken: 6,
  fitted: null,
  group: "drainage-and-cake",
  kinds: [
    kind({
      schema: z.strictObject({ kind: z.literal("filter-time"), seconds: positive(100_000) }),
      columns: [
        {
          key: "filter-time",
          field: "seconds",
          get label() {
            return words.column;
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
          return words.column;
        },
        fields: ["seconds"],
      },
      form: {
        get title() {
          return words.label;
        },
        get standard() {
          return words.standard;
        },
        get fields(): FormFields {
          return [["seconds", words.time, unit]];
        },
      },
      first: (_, { value }) => good({ seconds: value }),
      head: () => words.head,
      onPaper: ({ seconds }, { entered }) => entered(seconds),
      onScreen: ({ seconds }, { entry }) => words.onScreen(entry(seconds)),
    }),
  ],
  files: [
    plainSlot(
      {
        slot: "filter_time",
        words: () => words.column,
        field: "filter_time_s",
        fieldWords: () => words.head,
      },
      "filter-time",
      "seconds",
    ),
  ],
});

import { z } from "zod";
import { good } from "../outcome.ts";
import { positive } from "../units/number-schema.ts";
import { plainSlot } from "./file-cells.ts";
import { kind, response } from "./response.ts";

const words = {
  label: "Time to filter",
  column: "time to filter",
  unit: "s",
  ask: "Time the filtrate to half the sample",
  standard: "Standard Methods 2710 H (conditions from memory)",
  head: "time to filter, s",
  time: "time",
};

/** Time until half the sample has filtered; noted, not fitted. */
export const filterTime = response({
  name: "filter_time_s",
  label: words.label,
  unit: words.unit,
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
          label: words.column,
          unit: () => words.unit,
          censorable: false,
          ask: words.ask,
          standard: words.standard,
        },
      ],
      run: { label: words.column, fields: ["seconds"] },
      form: { title: words.label, standard: words.standard, fields: [["seconds", words.time, words.unit]] },
      first: (_, { value }) => good({ seconds: value }),
      head: () => words.head,
      onPaper: ({ seconds }, { entered }) => entered(seconds),
      onScreen: ({ seconds }, { plain }) => `${words.column} ${plain(seconds)} ${words.unit}`,
    }),
  ],
  files: [
    plainSlot(
      { slot: "filter_time", words: words.column, field: "filter_time_s", fieldWords: words.head },
      "filter-time",
      "seconds",
    ),
  ],
});

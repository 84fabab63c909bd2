import { z } from "zod";
import { bad, good } from "../outcome.ts";
import { notNegative, positive } from "../units/number-schema.ts";
import { group } from "./file-cells.ts";
import { fileSlot, kind, response } from "./response.ts";

const words = {
  label: "Drained",
  unit: "mL",
  column: "drained",
  unitAt: (seconds: number | null) => `mL at ${seconds ?? "?"} s`,
  ask: "Read the drained volume",
  standard: "EN 14701-4:2018",
  run: "drained volume",
  form: "Drained volume at a time",
  at: "at",
  head: "drained, mL at s",
  needsTime: "Enter the series' drain time first: a drained volume counts at a time.",
  needsFileTime:
    "needs the time at which it was read: add a column drained_at_s, or enter the series' drain time on the Bench.",
  slot: "drained volume",
  fields: { drained_ml: "drained volume, mL", drained_at_s: "drained volume: read at, s" },
  otherSlot: "drainage at another time",
  otherFields: {
    drainage_ml: "drainage at another time, mL",
    drainage_at_s: "drainage at another time: read at, s",
  },
  group: "a drained volume",
};

const schema = z.strictObject({
  kind: z.literal("drained"),
  ml: notNegative(100_000),
  atS: positive(36_000),
});
type Drained = z.output<typeof schema>;

/** The volume that has drained at the series' own time; volumes at other times draw the drainage curve. */
export const drained = response({
  name: "drained_ml",
  label: words.label,
  unit: words.unit,
  taken: 2,
  fitted: { scale: "linear", wanted: "maximum" },
  group: "drainage-and-cake",
  kinds: [
    kind({
      schema,
      columns: [
        {
          key: "drained",
          field: "ml",
          label: words.column,
          unit: (series) => words.unitAt(series.protocol.drainS),
          censorable: false,
          ask: words.ask,
          standard: words.standard,
        },
      ],
      run: { label: words.run, fields: ["ml"] },
      form: {
        title: words.form,
        standard: words.standard,
        fields: [
          ["ml", words.column, words.unit],
          ["atS", words.at, "s"],
        ],
      },
      value: ({ ml }) => ml,
      counts: ({ atS }, { protocol }) => protocol.drainS === null || atS === protocol.drainS,
      first: (_, { value }, { protocol }) =>
        protocol.drainS === null ? bad(words.needsTime) : good({ ml: value, atS: protocol.drainS }),
      head: () => words.head,
      onPaper: ({ ml, atS }, { entered }) => `${entered(ml)} at ${entered(atS)}`,
      onScreen: ({ ml, atS }, { plain }) => `${words.column} ${plain(ml)} mL at ${plain(atS)} s`,
    }),
  ],
  files: [
    fileSlot({
      slot: "drained",
      words: words.slot,
      fields: words.fields,
      guesses: [
        [/(drain|entwaesser).*(_s|sec|time|zeit|sekunden)$/, "drained_at_s"],
        [/drain|entwaesser|abgelaufen|filtrate?.*(ml|vol)/, "drained_ml"],
      ],
      kinds: ["drained"],
      holds: ({ atS }: Drained, { protocol }) => protocol.drainS === null || atS === protocol.drainS,
      write: ({ ml, atS }: Drained) => ({ drained_ml: ml, drained_at_s: atS }),
      read: (row, series) => {
        const ml = row.number("drained_ml");
        if (ml === null) return null;
        const atS = row.filled("drained_at_s") ? row.number("drained_at_s") : series.protocol.drainS;
        if (atS === null) {
          if (!row.filled("drained_at_s")) row.fault("drained_ml", words.needsFileTime);
          return null;
        }
        return { result: { kind: "drained", ml, atS }, from: { ml: "drained_ml", atS: "drained_at_s" } };
      },
    }),
    fileSlot({
      slot: "drainage",
      words: words.otherSlot,
      fields: words.otherFields,
      kinds: ["drained"],
      holds: ({ atS }: Drained, { protocol }) => protocol.drainS !== null && atS !== protocol.drainS,
      write: ({ ml, atS }: Drained) => ({ drainage_ml: ml, drainage_at_s: atS }),
      read: (row) => {
        const both = group(row, ["drainage_ml", "drainage_at_s"], [], words.group);
        return (
          both && {
            result: { kind: "drained", ml: both.drainage_ml, atS: both.drainage_at_s },
            from: { ml: "drainage_ml", atS: "drainage_at_s" },
          }
        );
      },
    }),
  ],
});

import { z } from "zod";
import { bad, good } from "../outcome.ts";
import { notNegative, positive } from "../units/number-schema.ts";
import { group } from "./file-cells.ts";
import { fileSlot, kind, response, type FormFields } from "./response.ts";
import { area } from "../words/language.ts";

const unit = "mL";
const standard = "EN 14701-4:2018";
const words = area("responseDrained", {
  label: "Drained",
  column: "drained",
  unitAt: (seconds: number | null) => `mL at ${seconds ?? "?"} s`,
  ask: "Read the drained volume",
  run: "drained volume",
  form: "Drained volume at a time",
  at: "at",
  head: "drained, mL at s",
  onPaper: (ml: string, seconds: string) => `${ml} at ${seconds}`,
  onScreen: (ml: string, seconds: string) => `drained ${ml} mL at ${seconds} s`,
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
});
export type DrainedWords = typeof words;

const schema = z.strictObject({
  kind: z.literal("drained"),
  ml: notNegative(100_000),
  atS: positive(36_000),
});
type Drained = z.output<typeof schema>;

/** The volume that has drained at the series' own time; volumes at other times draw the drainage curve. */
export const drained = response({
  name: "drained_ml",
  get label() {
    return words.label;
  },
  unit,
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
          get label() {
            return words.column;
          },
          unit: (series) => words.unitAt(series.protocol.drainS),
          censorable: false,
          get ask() {
            return words.ask;
          },
          standard,
        },
      ],
      run: {
        get label() {
          return words.run;
        },
        fields: ["ml"],
      },
      form: {
        get title() {
          return words.form;
        },
        standard,
        get fields(): FormFields {
          return [
            ["ml", words.column, unit],
            ["atS", words.at, "s"],
          ];
        },
      },
      value: ({ ml }) => ml,
      counts: ({ atS }, { protocol }) => protocol.drainS === null || atS === protocol.drainS,
      first: (_, { value }, { protocol }) =>
        protocol.drainS === null ? bad(words.needsTime) : good({ ml: value, atS: protocol.drainS }),
      head: () => words.head,
      onPaper: ({ ml, atS }, { entered }) => words.onPaper(entered(ml), entered(atS)),
      onScreen: ({ ml, atS }, { entry }) => words.onScreen(entry(ml), entry(atS)),
    }),
  ],
  files: [
    fileSlot({
      slot: "drained",
      get words() {
        return words.slot;
      },
      get fields() {
        return words.fields;
      },
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
      get words() {
        return words.otherSlot;
      },
      get fields() {
        return words.otherFields;
      },
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

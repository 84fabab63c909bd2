import { z } from "zod";
import { undilutedTurbidity } from "../bench/measurements.ts";
import { good } from "../outcome.ts";
import { between, positive } from "../units/number-schema.ts";
import { agrees, bound } from "./file-cells.ts";
import { boundSign, fileSlot, kind, response, type FormFields } from "./response.ts";
import { censoredSchema } from "./shared-schema.ts";
import { area } from "../words/language.ts";

const unit = "NTU";
const standard = "Standard Methods 2130 B; ISO 7027-1";
const words = area("responseTurbidity", {
  label: "Turbidity",
  column: "turbidity",
  ask: "Invert the vial and read the turbidity at a fixed 10 to 30 s",
  overRange: (high: number) => `The instrument reads up to ${high}: enter >${high}, or dilute.`,
  form: "Turbidity of a dilution",
  formStandard: "Standard Methods 2130 B; not linear, so the dilution is kept beside it",
  read: "read",
  dilution: "total over sample volume",
  times: "times",
  head: (unit: string) => `turbidity, ${unit}`,
  onScreen: (shown: string, unit: string) => `turbidity ${shown} ${unit}`,
  dilutedOnScreen: (shown: string, unit: string, dilution: string, made: string) =>
    `turbidity ${shown} ${unit}, diluted ${dilution} times: ${made}`,
  slot: "turbidity",
  otherUnit: (series: string, unit: string) =>
    `series ${series} reads turbidity in ${unit}: the units differ.`,
  dilutionAlone: "has no turbidity as shown (turbidity_shown) beside it.",
  needsDilution: "is empty: enter 1 where the sample was not diluted.",
  fields: {
    turbidity_ntu: "turbidity, NTU, dilution counted",
    turbidity_fnu: "turbidity, FNU, dilution counted",
    turbidity_shown: "turbidity as the instrument shows it",
    turbidity_dilution: "dilution factor of the turbidity",
  },
});
export type TurbidityWords = typeof words;

const schema = z.strictObject({
  kind: z.literal("turbidity"),
  /** as shown by the instrument, before the dilution factor */
  value: positive(1e7),
  censored: censoredSchema,
  /** total volume over sample volume, 1 undiluted */
  dilution: between(1, 10_000),
});

/** Turbidity of the filtrate, with its dilution kept beside it. */
export const turbidity = response({
  name: "turbidity_ntu",
  get label() {
    return words.label;
  },
  unit,
  unitIn: (series) => series.turbidityUnit,
  taken: 3,
  fitted: { scale: "log", wanted: "minimum" },
  group: "filtrate",
  kinds: [
    kind({
      schema,
      columns: [
        {
          key: "turbidity",
          field: "value",
          get label() {
            return words.column;
          },
          unit: (series) => series.turbidityUnit,
          censorable: true,
          get ask() {
            return words.ask;
          },
          standard,
        },
      ],
      run: {
        get label() {
          return words.column;
        },
        fields: ["value"],
      },
      form: {
        get title() {
          return words.form;
        },
        get standard() {
          return words.formStandard;
        },
        get fields(): FormFields {
          return [
            ["value", words.read, ""],
            ["dilution", words.dilution, words.times],
          ];
        },
      },
      value: ({ value, dilution }) => undilutedTurbidity(value, dilution),
      refuse: ({ value, censored }, { turbidityRange }) =>
        turbidityRange && !censored && value > turbidityRange.high
          ? words.overRange(turbidityRange.high)
          : null,
      first: (_, { value, censored }) => good({ value, censored, dilution: 1 }),
      head: (series) => words.head(series.turbidityUnit),
      onPaper: ({ value, censored, dilution }, { entered }) =>
        `${boundSign(censored, " ")}${entered(value)}${dilution === 1 ? "" : ` × ${entered(dilution)}`}`,
      onScreen: ({ value, censored, dilution }, { entry, plain }, given, series) => {
        const shown = `${boundSign(censored)}${entry(value)}`;
        return dilution === 1
          ? words.onScreen(shown, series.turbidityUnit)
          : words.dilutedOnScreen(shown, series.turbidityUnit, entry(dilution), plain(given!));
      },
    }),
  ],
  files: [
    fileSlot({
      slot: "turbidity",
      get words() {
        return words.slot;
      },
      get fields() {
        return words.fields;
      },
      guesses: [
        [/dilut|verduenn/, "turbidity_dilution"],
        [/(turb|trueb).*fnu|^fnu$/, "turbidity_fnu"],
        [/turb|trueb|^ntu$|clarity/, "turbidity_ntu"],
      ],
      kinds: ["turbidity"],
      write: ({ value, dilution, censored }: z.output<typeof schema>, series) => ({
        [series.turbidityUnit === "FNU" ? "turbidity_fnu" : "turbidity_ntu"]: bound(
          undilutedTurbidity(value, dilution),
          censored,
        ),
        ...(dilution === 1 ? {} : { turbidity_shown: bound(value, censored), turbidity_dilution: dilution }),
      }),
      read: (row, series) => {
        const [own, other] =
          series.turbidityUnit === "FNU"
            ? (["turbidity_fnu", "turbidity_ntu"] as const)
            : (["turbidity_ntu", "turbidity_fnu"] as const);
        if (row.filled(other)) {
          row.fault(other, words.otherUnit(series.label, series.turbidityUnit));
          return null;
        }
        const shown = row.reading("turbidity_shown");
        if (shown === null) {
          const plain = row.reading(own);
          if (row.filled("turbidity_dilution") && !row.filled("turbidity_shown"))
            row.fault("turbidity_dilution", words.dilutionAlone);
          return plain
            ? {
                result: { kind: "turbidity", ...plain, dilution: 1 },
                from: { value: own, dilution: "turbidity_dilution" },
              }
            : null;
        }
        const dilution = row.has("turbidity_dilution") ? row.number("turbidity_dilution") : 1;
        if (dilution === null) {
          if (!row.filled("turbidity_dilution")) row.fault("turbidity_dilution", words.needsDilution);
          return null;
        }
        agrees(row, own, undilutedTurbidity(shown.value, dilution));
        return {
          result: { kind: "turbidity", ...shown, dilution },
          from: { value: "turbidity_shown", dilution: "turbidity_dilution" },
        };
      },
    }),
  ],
});

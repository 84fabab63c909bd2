import { z } from "zod";
import { undilutedTurbidity } from "../bench/measurements.ts";
import { good } from "../outcome.ts";
import { between, positive } from "../units/number-schema.ts";

import { agrees, bound } from "./file-cells.ts";
import { boundSign, fileSlot, kind, response } from "./response.ts";
import { censoredSchema } from "./shared-schema.ts";

const words = {
  label: "Turbidity",
  unit: "NTU",
  column: "turbidity",
  ask: "Invert the vial and read the turbidity at a fixed 10 to 30 s",
  standard: "Standard Methods 2130 B; ISO 7027-1",
  overRange: (high: number) => `The instrument reads up to ${high}: enter >${high}, or dilute.`,
  form: "Turbidity of a dilution",
  formStandard: "Standard Methods 2130 B; not linear, so the dilution is kept beside it",
  read: "read",
  dilution: "total over sample volume",
  times: "times",
  slot: "turbidity",
  fields: {
    turbidity_ntu: "turbidity, NTU, dilution counted",
    turbidity_fnu: "turbidity, FNU, dilution counted",
    turbidity_shown: "turbidity as the instrument shows it",
    turbidity_dilution: "dilution factor of the turbidity",
  },
};

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
  label: words.label,
  unit: words.unit,
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
          label: words.column,
          unit: (series) => series.turbidityUnit,
          censorable: true,
          ask: words.ask,
          standard: words.standard,
        },
      ],
      run: { label: words.column, fields: ["value"] },
      form: {
        title: words.form,
        standard: words.formStandard,
        fields: [
          ["value", words.read, ""],
          ["dilution", words.dilution, words.times],
        ],
      },
      value: ({ value, dilution }) => undilutedTurbidity(value, dilution),
      refuse: ({ value, censored }, { turbidityRange }) =>
        turbidityRange && !censored && value > turbidityRange.high
          ? words.overRange(turbidityRange.high)
          : null,
      first: (_, { value, censored }) => good({ value, censored, dilution: 1 }),
      head: (series) => `${words.column}, ${series.turbidityUnit}`,
      onPaper: ({ value, censored, dilution }, { entered }) =>
        `${boundSign(censored, " ")}${entered(value)}${dilution === 1 ? "" : ` × ${entered(dilution)}`}`,
      onScreen: ({ value, censored, dilution }, { plain }, given, series) =>
        `${words.column} ${boundSign(censored)}${plain(value)} ${series.turbidityUnit}${dilution === 1 ? "" : `, diluted ${plain(dilution)} times: ${plain(given!)}`}`,
    }),
  ],
  files: [
    fileSlot({
      slot: "turbidity",
      words: words.slot,
      fields: words.fields,
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
          row.fault(
            other,
            `series ${series.label} reads turbidity in ${series.turbidityUnit}: the units differ.`,
          );
          return null;
        }
        const shown = row.reading("turbidity_shown");
        if (shown === null) {
          const plain = row.reading(own);
          if (row.filled("turbidity_dilution") && !row.filled("turbidity_shown"))
            row.fault("turbidity_dilution", "has no turbidity as shown (turbidity_shown) beside it.");
          return plain
            ? {
                result: { kind: "turbidity", ...plain, dilution: 1 },
                from: { value: own, dilution: "turbidity_dilution" },
              }
            : null;
        }
        const dilution = row.has("turbidity_dilution") ? row.number("turbidity_dilution") : 1;
        if (dilution === null) {
          if (!row.filled("turbidity_dilution"))
            row.fault("turbidity_dilution", "is empty: enter 1 where the sample was not diluted.");
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

import { z } from "zod";
import { bad, good } from "../outcome.ts";
import { totalSolidsPct } from "../sample/solids.ts";
import { sharePct, unknown } from "../units/number-schema.ts";
import { agrees, group } from "./file-cells.ts";
import { fileSlot, kind, response, type FormFields } from "./response.ts";
import { massG } from "./shared-schema.ts";
import { area } from "../words/language.ts";

const standard = "Standard Methods 2540 G";
const unit = "%";
const words = area("responseCakeTs", {
  label: "Cake TS",
  column: "cake TS",
  ask: "Read the cake's total solids",
  run: "cake TS, read",
  head: "cake TS, %",
  onScreen: (pct: string) => `Cake TS ${pct} %`,
  tare: "cake dish, empty",
  askTare: "Weigh the empty dish",
  wet: "with wet cake",
  askWet: "Press, weigh the dish with the wet cake, then put it in the oven",
  dry: "cake dried",
  askDry: "Weigh the dish with the dry cake",
  dryStandard: "Standard Methods 2540 G; EN 15934 (number from memory)",
  runDish: "cake TS, by dish",
  form: "Cake dish",
  formTare: "empty dish",
  formDry: "dried",
  headDish: "cake dish: empty, wet, dry g = %",
  needsTare: "Weigh the empty dish first.",
  notWeighed: "not weighed",
  dishOnScreen: (tare: string, wet: string | null, dry: string | null, pct: string | null) =>
    `cake dish ${tare}, ${wet ?? "wet not weighed"}, ${dry ?? "in the oven"}${pct === null ? "" : ` g: ${pct} %`}`,
  slot: "cake TS",
  group: "a cake dish",
  fields: {
    cake_ts_pct: "cake TS, %",
    cake_dish_tare_g: "cake dish: empty, g",
    cake_dish_wet_g: "cake dish: wet, g",
    cake_dish_dry_g: "cake dish: dry, g",
  },
});
export type CakeTsWords = typeof words;

const dishSchema = z.strictObject({
  kind: z.literal("cake-dish"),
  tareG: massG,
  /** null until weighed; the dry mass comes from the oven a day later */
  wetG: unknown(massG),
  dryG: unknown(massG),
});
const readSchema = z.strictObject({ kind: z.literal("cake-ts"), pct: sharePct });

/** What the dish makes, once it is dry. */
function madePct(dish: { tareG: number; wetG: number | null; dryG: number | null }): number | null {
  const { tareG, wetG, dryG } = dish;
  const made = totalSolidsPct({ tareG, wetG, dryG, ashG: null });
  return made.ok ? made.value : null;
}

const weighed = { unit: () => "g", censorable: false };

/** Total solids of the pressed cake, read or dried in a dish. */
export const cakeTs = response({
  name: "cake_ts_pct",
  get label() {
    return words.label;
  },
  unit,
  taken: 7,
  fitted: { scale: "linear", wanted: "maximum", highest: 100, rereadBandPct: 3 },
  group: "drainage-and-cake",
  kinds: [
    kind({
      schema: readSchema,
      columns: [
        {
          key: "cake-ts",
          field: "pct",
          get label() {
            return words.column;
          },
          unit: () => unit,
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
        fields: ["pct"],
      },
      value: ({ pct }) => pct,
      first: (_, { value }) => good({ pct: value }),
      head: () => words.head,
      onPaper: ({ pct }, { entered }) => entered(pct),
      onScreen: ({ pct }, { entry }) => words.onScreen(entry(pct)),
    }),
    kind({
      schema: dishSchema,
      columns: [
        {
          ...weighed,
          key: "cake-tare",
          field: "tareG",
          get label() {
            return words.tare;
          },
          get ask() {
            return words.askTare;
          },
          standard,
        },
        {
          ...weighed,
          key: "cake-wet",
          field: "wetG",
          get label() {
            return words.wet;
          },
          get ask() {
            return words.askWet;
          },
          standard,
        },
        {
          ...weighed,
          key: "cake-dry",
          field: "dryG",
          get label() {
            return words.dry;
          },
          get ask() {
            return words.askDry;
          },
          get standard() {
            return words.dryStandard;
          },
        },
      ],
      run: {
        get label() {
          return words.runDish;
        },
        fields: ["tareG", "wetG"],
        later: "dryG",
      },
      form: {
        get title() {
          return words.form;
        },
        standard,
        get fields(): FormFields {
          return [
            ["tareG", words.formTare, "g"],
            ["wetG", words.wet, "g", true],
            ["dryG", words.formDry, "g", true],
          ];
        },
      },
      value: madePct,
      first: (field, { value }) =>
        field === "tareG" ? good({ tareG: value, wetG: null, dryG: null }) : bad(words.needsTare),
      head: () => words.headDish,
      onPaper: ({ tareG, wetG, dryG }, { entered, number }, given) =>
        `${entered(tareG)}, ${wetG === null ? words.notWeighed : entered(wetG)}, ${dryG === null ? words.notWeighed : entered(dryG)}${given === null ? "" : ` = ${number(given)}`}`,
      onScreen: ({ tareG, wetG, dryG }, { entry, plain }, given) =>
        words.dishOnScreen(
          entry(tareG),
          wetG === null ? null : entry(wetG),
          dryG === null ? null : entry(dryG),
          given === null ? null : plain(given),
        ),
    }),
  ],
  files: [
    fileSlot({
      slot: "cake",
      get words() {
        return words.slot;
      },
      get fields() {
        return words.fields;
      },
      guesses: [[/cake|kuchen/, "cake_ts_pct"]],
      kinds: ["cake-ts", "cake-dish"],
      write: (result: z.output<typeof readSchema> | z.output<typeof dishSchema>) =>
        result.kind === "cake-ts"
          ? { cake_ts_pct: result.pct }
          : {
              cake_ts_pct: madePct(result),
              cake_dish_tare_g: result.tareG,
              cake_dish_wet_g: result.wetG,
              cake_dish_dry_g: result.dryG,
            },
      read: (row) => {
        const before = row.faults.length;
        const dish = group(row, ["cake_dish_tare_g"], ["cake_dish_wet_g", "cake_dish_dry_g"], words.group);
        if (row.faults.length > before) return null;
        if (dish) {
          const masses = {
            tareG: dish.cake_dish_tare_g,
            wetG: dish.cake_dish_wet_g,
            dryG: dish.cake_dish_dry_g,
          };
          agrees(row, "cake_ts_pct", madePct(masses));
          return {
            result: { kind: "cake-dish", ...masses },
            from: { tareG: "cake_dish_tare_g", wetG: "cake_dish_wet_g", dryG: "cake_dish_dry_g" },
          };
        }
        const pct = row.number("cake_ts_pct");
        return pct === null ? null : { result: { kind: "cake-ts", pct }, from: { pct: "cake_ts_pct" } };
      },
    }),
  ],
});

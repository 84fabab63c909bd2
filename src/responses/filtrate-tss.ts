import { z } from "zod";
import { bad, good } from "../outcome.ts";
import { suspendedSolidsMgPerL } from "../sample/solids.ts";
import { positive, unknown } from "../units/number-schema.ts";
import { agrees, bound, group } from "./file-cells.ts";
import { boundSign, fileSlot, kind, response, type FormFields } from "./response.ts";
import { censoredSchema, massG } from "./shared-schema.ts";
import { area } from "../words/language.ts";

const standard = "Standard Methods 2540 D";
const unit = "mg/L";
const words = area("responseFiltrateTss", {
  label: "Filtrate TSS",
  column: "filtrate TSS",
  ask: "Read the filtrate's suspended solids",
  run: "filtrate TSS, read",
  head: "filtrate TSS, mg/L",
  onScreen: (mgPerL: string) => `Filtrate TSS ${mgPerL} mg/L`,
  tare: "empty filter",
  askTare: "Weigh the empty filter",
  volume: "filtered",
  askVolume: "Filter and note the volume, then put the filter in the oven",
  dry: "dried filter",
  askDry: "Weigh the dried filter",
  runDish: "filtrate TSS, by filter",
  form: "Filtrate TSS by filter",
  headDish: "filter: empty, dry g; mL = mg/L",
  needsTare: "Weigh the empty filter first.",
  needsVolume: "Weigh the empty filter and filter a volume first.",
  notWeighed: "not weighed",
  dishOnScreen: (tare: string, volume: string | null, dry: string | null, mgPerL: string | null) =>
    `filter ${tare} g, ${volume ?? "not filtered"} mL, ${dry ?? "in the oven"}${mgPerL === null ? "" : ` g: ${mgPerL} mg/L`}`,
  slot: "filtrate TSS",
  group: "a filter's solids",
  fields: {
    filtrate_tss_mg_per_l: "filtrate TSS, mg/L",
    filtrate_dish_tare_g: "filtrate TSS: empty filter, g",
    filtrate_dish_dry_g: "filtrate TSS: dried filter, g",
    filtrate_dish_volume_ml: "filtrate TSS: volume filtered, mL",
  },
});
export type FiltrateTssWords = typeof words;

const readSchema = z.strictObject({
  kind: z.literal("filtrate-tss"),
  mgPerL: positive(1e6),
  censored: censoredSchema,
});
const dishSchema = z.strictObject({
  kind: z.literal("filtrate-tss-dish"),
  tareG: massG,
  /** null while the filter is still in the oven */
  dryG: unknown(massG),
  volumeMl: unknown(positive(100_000)),
});

/** What the filter's masses make, once it is dry. */
function madeMgPerL(dish: { tareG: number; dryG: number | null; volumeMl: number | null }): number | null {
  if (dish.dryG === null || dish.volumeMl === null) return null;
  const made = suspendedSolidsMgPerL(dish.tareG, dish.dryG, dish.volumeMl);
  return made.ok ? made.value : null;
}

const weighed = { censorable: false, standard };

/** Suspended solids of the filtrate, read or weighed on a filter. */
export const filtrateTss = response({
  name: "filtrate_tss_mg_per_l",
  get label() {
    return words.label;
  },
  unit,
  taken: 4,
  fitted: { scale: "log", wanted: "minimum", rereadBandPct: 10 },
  group: "filtrate",
  kinds: [
    kind({
      schema: readSchema,
      columns: [
        {
          key: "filtrate-tss",
          field: "mgPerL",
          get label() {
            return words.column;
          },
          unit: () => unit,
          censorable: true,
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
        fields: ["mgPerL"],
      },
      value: ({ mgPerL }) => mgPerL,
      first: (_, { value, censored }) => good({ mgPerL: value, censored }),
      head: () => words.head,
      onPaper: ({ mgPerL, censored }, { entered }) => `${boundSign(censored, " ")}${entered(mgPerL)}`,
      onScreen: ({ mgPerL, censored }, { entry }) => words.onScreen(`${boundSign(censored)}${entry(mgPerL)}`),
    }),
    kind({
      schema: dishSchema,
      columns: [
        {
          ...weighed,
          key: "filter-tare",
          field: "tareG",
          get label() {
            return words.tare;
          },
          unit: () => "g",
          get ask() {
            return words.askTare;
          },
        },
        {
          ...weighed,
          key: "filter-volume",
          field: "volumeMl",
          get label() {
            return words.volume;
          },
          unit: () => "mL",
          get ask() {
            return words.askVolume;
          },
        },
        {
          ...weighed,
          key: "filter-dry",
          field: "dryG",
          get label() {
            return words.dry;
          },
          unit: () => "g",
          get ask() {
            return words.askDry;
          },
        },
      ],
      run: {
        get label() {
          return words.runDish;
        },
        fields: ["tareG", "volumeMl"],
        later: "dryG",
      },
      form: {
        get title() {
          return words.form;
        },
        standard,
        get fields(): FormFields {
          return [
            ["tareG", words.tare, "g"],
            ["volumeMl", words.volume, "mL", true],
            ["dryG", words.dry, "g", true],
          ];
        },
      },
      value: madeMgPerL,
      first: (field, { value }) =>
        field === "tareG"
          ? good({ tareG: value, dryG: null, volumeMl: null })
          : bad(field === "volumeMl" ? words.needsTare : words.needsVolume),
      head: () => words.headDish,
      onPaper: ({ tareG, dryG, volumeMl }, { entered, number }, given) =>
        `${entered(tareG)}, ${dryG === null ? words.notWeighed : entered(dryG)}; ${entered(volumeMl)}${given === null ? "" : ` = ${number(given)}`}`,
      onScreen: ({ tareG, dryG, volumeMl }, { entry, plain }, given) =>
        words.dishOnScreen(
          entry(tareG),
          volumeMl === null ? null : entry(volumeMl),
          dryG === null ? null : entry(dryG),
          given === null ? null : plain(given),
        ),
    }),
  ],
  files: [
    fileSlot({
      slot: "filtrate_tss",
      get words() {
        return words.slot;
      },
      get fields() {
        return words.fields;
      },
      guesses: [[/tss|suspended|abfiltrierbar|(^|_)afs(_|$)/, "filtrate_tss_mg_per_l"]],
      kinds: ["filtrate-tss", "filtrate-tss-dish"],
      write: (result: z.output<typeof readSchema> | z.output<typeof dishSchema>) =>
        result.kind === "filtrate-tss"
          ? { filtrate_tss_mg_per_l: bound(result.mgPerL, result.censored) }
          : {
              filtrate_tss_mg_per_l: madeMgPerL(result),
              filtrate_dish_tare_g: result.tareG,
              filtrate_dish_dry_g: result.dryG,
              filtrate_dish_volume_ml: result.volumeMl,
            },
      read: (row) => {
        const before = row.faults.length;
        const dish = group(
          row,
          ["filtrate_dish_tare_g"],
          ["filtrate_dish_dry_g", "filtrate_dish_volume_ml"],
          words.group,
        );
        if (row.faults.length > before) return null;
        if (dish) {
          const masses = {
            tareG: dish.filtrate_dish_tare_g,
            dryG: dish.filtrate_dish_dry_g,
            volumeMl: dish.filtrate_dish_volume_ml,
          };
          agrees(row, "filtrate_tss_mg_per_l", madeMgPerL(masses));
          return {
            result: { kind: "filtrate-tss-dish", ...masses },
            from: {
              tareG: "filtrate_dish_tare_g",
              dryG: "filtrate_dish_dry_g",
              volumeMl: "filtrate_dish_volume_ml",
            },
          };
        }
        const read = row.reading("filtrate_tss_mg_per_l");
        return (
          read && {
            result: { kind: "filtrate-tss", mgPerL: read.value, censored: read.censored },
            from: { mgPerL: "filtrate_tss_mg_per_l" },
          }
        );
      },
    }),
  ],
});

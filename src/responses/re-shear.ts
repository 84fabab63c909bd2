import { z } from "zod";
import { positive, unknown } from "../units/number-schema.ts";
import { group } from "./file-cells.ts";
import { fileSlot, kind, response, type FormFields } from "./response.ts";
import { area } from "../words/language.ts";

const unit = "mm";
const words = area("responseReShear", {
  label: "Floc strength",
  form: "Floc broken and regrown",
  standard: "common practice; strength d2 / d1, recovery (d3 - d2) / (d1 - d2), from memory",
  first: "first, d1",
  broken: "broken, d2",
  regrown: "regrown, d3",
  head: "floc: first, broken, regrown mm",
  onScreen: (first: string, broken: string, regrown: string | null) =>
    `floc ${first} mm, broken ${broken} mm${regrown === null ? "" : `, regrown ${regrown} mm`}`,
  slot: "floc strength",
  group: "a floc's strength",
  fields: {
    re_shear_first_mm: "floc size before breaking, mm",
    re_shear_broken_mm: "floc size when broken, mm",
    re_shear_regrown_mm: "floc size when regrown, mm",
  },
});
export type ReShearWords = typeof words;

const schema = z.strictObject({
  kind: z.literal("re-shear"),
  /** floc size before, after breaking, and regrown */
  firstMm: positive(1000),
  brokenMm: positive(1000),
  regrownMm: unknown(positive(1000)),
});

/** Floc broken on purpose and left to regrow; noted, not fitted. */
export const reShear = response({
  name: "re_shear_mm",
  get label() {
    return words.label;
  },
  unit,
  taken: 11,
  fitted: null,
  group: "drainage-and-cake",
  kinds: [
    kind({
      schema,
      columns: [],
      form: {
        get title() {
          return words.form;
        },
        get standard() {
          return words.standard;
        },
        get fields(): FormFields {
          return [
            ["firstMm", words.first, unit],
            ["brokenMm", words.broken, unit],
            ["regrownMm", words.regrown, unit, true],
          ];
        },
      },
      head: () => words.head,
      onPaper: ({ firstMm, brokenMm, regrownMm }, { entered }) =>
        `${entered(firstMm)}, ${entered(brokenMm)}, ${entered(regrownMm)}`,
      onScreen: ({ firstMm, brokenMm, regrownMm }, { entry }) =>
        words.onScreen(entry(firstMm), entry(brokenMm), regrownMm === null ? null : entry(regrownMm)),
    }),
  ],
  files: [
    fileSlot({
      slot: "re_shear",
      get words() {
        return words.slot;
      },
      get fields() {
        return words.fields;
      },
      kinds: ["re-shear"],
      write: ({ firstMm, brokenMm, regrownMm }: z.output<typeof schema>) => ({
        re_shear_first_mm: firstMm,
        re_shear_broken_mm: brokenMm,
        re_shear_regrown_mm: regrownMm,
      }),
      read: (row) => {
        const sizes = group(
          row,
          ["re_shear_first_mm", "re_shear_broken_mm"],
          ["re_shear_regrown_mm"],
          words.group,
        );
        return (
          sizes && {
            result: {
              kind: "re-shear",
              firstMm: sizes.re_shear_first_mm,
              brokenMm: sizes.re_shear_broken_mm,
              regrownMm: sizes.re_shear_regrown_mm,
            },
            from: {
              firstMm: "re_shear_first_mm",
              brokenMm: "re_shear_broken_mm",
              regrownMm: "re_shear_regrown_mm",
            },
          }
        );
      },
    }),
  ],
});

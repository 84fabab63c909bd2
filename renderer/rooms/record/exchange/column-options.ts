import { responses } from "../../../../src/responses/registry.ts";
import { fieldLabel } from "../../../../src/exchange/column-words.ts";
import { exchangeRoomWords } from "../../../../src/words/exchange-room.ts";
import {
  about,
  ignored,
  slots,
  type ColumnUse,
  type DoseBasis,
  type DoseUnit,
  type Field,
} from "../../../../src/exchange/columns.ts";

const words = exchangeRoomWords.columns;

interface Choice {
  value: string;
  label: string;
}

const group = (label: string, list: Field[]) => ({
  label,
  choices: list.map((field): Choice => ({ value: field, label: fieldLabel(field) })),
});

const fieldsOf = (wanted: (typeof responses)[number]["group"]) =>
  responses
    .filter((one) => one.group === wanted)
    .flatMap(({ files }) => files.flatMap(({ fields }) => Object.keys(fields) as Field[]));

/** What a column may be taken for, with what a technician needs first; the rest is for files of our own. */
export const columnGroups: { label: string; choices: Choice[] }[] = [
  {
    label: words.groups.doses,
    choices: [
      { value: "dose_a", label: words.doseA },
      { value: "dose_b", label: words.doseB },
      ...(["planned_dose_a_kg_per_t", "planned_dose_b_kg_per_t"] as const).map((field) => ({
        value: field,
        label: fieldLabel(field),
      })),
    ],
  },
  group(words.groups.jar, [
    "jar",
    "series",
    "order",
    "block",
    "role",
    "sample_volume_ml",
    "blank_water_ml",
    "note",
    "left_out",
    "left_out_note",
    "sample",
    "stock_a",
    "stock_b",
    "mixed_at",
    "mixed_fast_rpm",
    "mixed_fast_s",
    "mixed_between_s",
    "mixed_slow_rpm",
    "mixed_slow_s",
    "mixed_pours",
  ]),
  group(words.groups.filtrate, fieldsOf("filtrate")),
  group(words.groups.drainageAndCake, fieldsOf("drainage-and-cake")),
  group(
    words.groups.reasonsAndNotes,
    slots.flatMap((slot): Field[] => [...about(slot)]),
  ),
];

export const unitChoices: { value: DoseUnit; label: string }[] = [
  { value: "kg-per-t", label: words.units["kg-per-t"] },
  { value: "lb-per-short-ton", label: words.units["lb-per-short-ton"] },
  { value: "mg-per-l-feed", label: words.units["mg-per-l-feed"] },
  { value: "ml-solution", label: words.units["ml-solution"] },
];

export const basisChoices: { value: DoseBasis; label: string }[] = [
  { value: "active", label: words.bases.active },
  { value: "as-supplied", label: words.bases["as-supplied"] },
];

/** A column's use as the value of its list, and back. A dose begins with its unit and basis open. */
export function useValue(use: ColumnUse): string {
  if (use.as === "ignore") return "";
  return use.as === "dose" ? `dose_${use.polymer}` : use.field;
}

export function useFrom(value: string, before: ColumnUse): ColumnUse {
  if (value === "") return ignored;
  if (value !== "dose_a" && value !== "dose_b") return { as: "field", field: value as Field };
  const polymer = value === "dose_a" ? "a" : "b";
  return before.as === "dose" ? { ...before, polymer } : { as: "dose", polymer, unit: null, basis: null };
}

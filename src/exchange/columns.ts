import { bad, good, type Outcome } from "../outcome.ts";
import { fileSlots, type ResponseField, type ResponseSlot } from "../responses/registry.ts";
import { fieldLabel } from "./column-words.ts";
import { sheetWords } from "../words/sheets.ts";

export type Polymer = "a" | "b";
export type DoseUnit = "kg-per-t" | "lb-per-short-ton" | "mg-per-l-feed" | "ml-solution";
export type DoseBasis = "active" | "as-supplied";

/** What is read of a jar, one after another: a kind of reading, or two kinds that measure the same thing. */
export type Slot = ResponseSlot;
export const slots: readonly Slot[] = fileSlots.map(({ slot }) => slot as Slot);

/** What a file says about one reading beside its value. */
export const about = (slot: Slot) =>
  [`${slot}_left_out`, `${slot}_left_out_note`, `${slot}_note`, `${slot}_taken_at`] as const;

/**
 * Every column that is not a dose, by the head our own files give it, in the order they are written. The head carries
 * the unit. "shown" is the instrument's own reading; the turbidity without that word has the dilution counted already.
 */
const jarFields = [
  "series",
  "sample",
  "stock_a",
  "stock_b",
  "jar",
  "order",
  "role",
  "block",
  "planned_dose_a_kg_per_t",
  "planned_dose_b_kg_per_t",
  "blank_water_ml",
  "sample_volume_ml",
  "mixed_at",
  "mixed_fast_rpm",
  "mixed_fast_s",
  "mixed_between_s",
  "mixed_slow_rpm",
  "mixed_slow_s",
  "mixed_pours",
  "left_out",
  "left_out_note",
  "note",
] as const;

export type JarField = (typeof jarFields)[number];
type AboutField = `${Slot}_left_out` | `${Slot}_left_out_note` | `${Slot}_note` | `${Slot}_taken_at`;
export type Field = JarField | ResponseField | AboutField;
export const fields: readonly Field[] = [
  ...jarFields,
  ...fileSlots.flatMap((file) => [
    ...(Object.keys(file.fields) as ResponseField[]),
    ...about(file.slot as Slot),
  ]),
];

/** What a column is taken for. A dose column is not usable until its unit and, but for a volume, its basis are chosen. */
export type ColumnUse =
  | { as: "ignore" }
  | { as: "field"; field: Field }
  | { as: "dose"; polymer: Polymer; unit: DoseUnit | null; basis: DoseBasis | null };

export const ignored: ColumnUse = { as: "ignore" };

const unitHeads: Record<string, DoseUnit> = {
  kg_per_t: "kg-per-t",
  lb_per_short_ton: "lb-per-short-ton",
  mg_per_l_feed: "mg-per-l-feed",
};

const textual = /^(series|sample|stock_a|stock_b|jar|role|block|mixed_at)$|(^|_)(left_out|note|taken_at)$/;
const textualReadings = new Set<string>(fileSlots.flatMap(({ texts }) => texts ?? []));

/** Whether a column holds numbers, so that its cells can tell the file's decimal mark. */
export function holdsNumbers(use: ColumnUse | null | undefined): boolean {
  if (!use || use.as === "ignore") return false;
  return use.as === "dose" || !(textual.test(use.field) || textualReadings.has(use.field));
}

const umlauts: Record<string, string> = { ä: "ae", ö: "oe", ü: "ue", ß: "ss" };

/** A head as our own files write it: small letters, digits and underlines. */
export function plainHead(head: string): string {
  return head
    .trim()
    .toLowerCase()
    .replace(/[äöüß]/g, (letter) => umlauts[letter]!)
    .replace(/[^a-z0-9]+/g, "_")
    .replace(/^_|_$/g, "");
}

/** The head our files give a dose column: `dose_a_kg_per_t` is active polymer, unless it says as supplied. */
export function doseHead(polymer: Polymer, unit: DoseUnit, basis: DoseBasis): string {
  if (unit === "ml-solution") return `syringe_${polymer}_ml`;
  const [words] = Object.entries(unitHeads).find(([, one]) => one === unit)!;
  return `dose_${polymer}_${words}${basis === "as-supplied" ? "_as_supplied" : ""}`;
}

const ourDoseHead = /^dose_([ab])_(kg_per_t|lb_per_short_ton|mg_per_l_feed)(_active|_as_supplied)?$/;

const isField = (head: string): head is Field => (fields as readonly string[]).includes(head);

/** What a head means where it can only mean one thing, or null. Turbidity heads differ by unit, so they say it. */
export function exactUse(head: string): ColumnUse | null {
  const plain = plainHead(head);
  if (isField(plain)) return { as: "field", field: plain };
  const volume = /^(?:syringe|dose)_([ab])_ml(?:_solution)?$/.exec(plain);
  if (volume) return { as: "dose", polymer: volume[1] as Polymer, unit: "ml-solution", basis: null };
  const dose = ourDoseHead.exec(plain);
  if (!dose) return null;
  return {
    as: "dose",
    polymer: dose[1] as Polymer,
    unit: unitHeads[dose[2]!]!,
    basis: dose[3] === "_as_supplied" ? "as-supplied" : "active",
  };
}

/**
 * The columns of a file by their heads alone, for the terminal, where nobody can be asked. A head that speaks of a dose
 * without saying polymer, unit and basis is refused; any other unknown head is left aside.
 */
export function usesByHeads(heads: string[], name: string): Outcome<ColumnUse[]> {
  const uses: ColumnUse[] = [];
  for (const head of heads) {
    const use = exactUse(head);
    if (use) uses.push(use);
    else if (/dos(e|age|is|ierung)|kg_?per_?t|lb_?per|syringe|spritze|polymer/.test(plainHead(head)))
      return bad(sheetWords.inColumn(name, head, sheetWords.doseHead));
    else uses.push(ignored);
  }
  return good(uses);
}

const guesses: [RegExp, Field][] = [
  [
    /^(jar|beaker|test|run|becher|becherglas|versuch)(_?(no|nr|number|nummer|name|id|label|bezeichnung))?$/,
    "jar",
  ],
  [/^(series|trial|reihe|serie|versuchsreihe)(_name)?$/, "series"],
  [/^((running_)?order|reihenfolge|lfd_nr)$/, "order"],
  [/^(block|bucket|day|eimer|tag)$/, "block"],
  [/^(notes?|remarks?|comments?|bemerkung(en)?|anmerkung(en)?|notiz(en)?|kommentare?)$/, "note"],
  [/blank.*water|water.*ml|ausgleichswasser/, "blank_water_ml"],
  [/sample.*vol|vol.*sample|^sludge_ml$|proben?_?vol|vol.*probe|^schlamm_ml$|schlammvol/, "sample_volume_ml"],
  ...fileSlots.flatMap(({ guesses }) => (guesses ?? []) as readonly [RegExp, Field][]),
];

/**
 * What a column looks like by its head, for a person to confirm. The unit and the basis of a dose are never guessed:
 * they are null until chosen, except for a volume of solution in our own words.
 */
export function guessUses(heads: string[]): ColumnUse[] {
  const taken = new Set<string>();
  const exact = heads.map(exactUse);
  for (const use of exact) if (use?.as === "field") taken.add(use.field);
  const volumes = new Set(
    exact.flatMap((use) => (use?.as === "dose" && use.unit === "ml-solution" ? [use.polymer] : [])),
  );
  return heads.map((head, index) => {
    const known = exact[index];
    if (known?.as === "field") return known;
    if (known?.as === "dose") {
      if (known.unit === "ml-solution") return known;
      // Computed again from the volume beside it.
      if (volumes.has(known.polymer)) return ignored;
      return { as: "dose", polymer: known.polymer, unit: null, basis: null };
    }
    const plain = plainHead(head);
    if (/dos(e|age|is|ierung)|polymer|syringe|spritze|kg_t$|lb_ton/.test(plain)) {
      const polymer: Polymer = /(^|_)(b|2|second|zweites?)(_|$)/.test(plain) ? "b" : "a";
      return { as: "dose", polymer, unit: null, basis: null };
    }
    const guess = guesses.find(([pattern, field]) => pattern.test(plain) && !taken.has(field))?.[1];
    if (!guess) return ignored;
    taken.add(guess);
    return { as: "field", field: guess };
  });
}

/** The columns by what they are, with every choice made, or the sentence that says which choice is open or made twice. */
export interface ChosenColumns {
  fields: Partial<Record<Field, number>>;
  doses: { polymer: Polymer; unit: DoseUnit; basis: DoseBasis; column: number }[];
}

export function chooseColumns(
  heads: string[],
  uses: ColumnUse[],
  name: string,
  needsDose: boolean,
): Outcome<ChosenColumns> {
  const chosen: ChosenColumns = { fields: {}, doses: [] };
  for (const [column, use] of uses.entries()) {
    const head = heads[column] ?? "";
    if (use.as === "field") {
      const before = chosen.fields[use.field];
      if (before !== undefined)
        return bad(sheetWords.takenTwice(name, heads[before] ?? "", head, fieldLabel(use.field)));
      chosen.fields[use.field] = column;
    }
    if (use.as === "dose") {
      if (use.unit === null) return bad(sheetWords.inColumn(name, head, sheetWords.chooseUnit));
      if (use.basis === null && use.unit !== "ml-solution")
        return bad(sheetWords.inColumn(name, head, sheetWords.chooseBasis));
      const twin = chosen.doses.find(
        (other) =>
          other.polymer === use.polymer && (other.unit === "ml-solution") === (use.unit === "ml-solution"),
      );
      if (twin)
        return bad(sheetWords.doseTwice(name, heads[twin.column] ?? "", head, use.polymer.toUpperCase()));
      chosen.doses.push({ polymer: use.polymer, unit: use.unit, basis: use.basis ?? "active", column });
    }
  }
  const dilution = chosen.fields.turbidity_dilution;
  if (dilution !== undefined && chosen.fields.turbidity_shown === undefined)
    return bad(sheetWords.inColumn(name, heads[dilution] ?? "", sheetWords.dilutionAlone));
  const planned =
    chosen.fields.planned_dose_a_kg_per_t !== undefined ||
    chosen.fields.planned_dose_b_kg_per_t !== undefined;
  if (needsDose && chosen.doses.length === 0 && !planned) return bad(sheetWords.noDose(name));
  return good(chosen);
}

import { fieldUnit, fieldWords } from "../issue-words.ts";
import { writeNumber, type DecimalMark } from "../../units/number-entry.ts";
import { decisionChainWords } from "../../words/decision-chain.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import { childrenOf } from "../tables.ts";
import { memo, memoOfState } from "./memo.ts";
import type { StateTone } from "./tone.ts";

/** Named with every snapshot, so that a later reader knows which rules made the numbers. */
export const methodVersion = "1";

type Decision = RecordOf<"decision">;
type SnapshotValue = Decision["snapshot"][number];

/** Fields that carry no result: names, notes and moments do not move a dose. */
const quiet = new Set([
  "id",
  "label",
  "note",
  "place",
  "lot",
  "takenAt",
  "mixStartedAt",
  "startedAt",
  "mixedAt",
  "order",
  "sheetDate",
  "activeBasisNote",
  "waterType",
  "containerKg",
  // what a run asks for and what a solution was meant to be: the doses rest on what was made and read
  "readings",
  "targetActivePct",
  "targetTotalG",
]);

/**
 * Fields of a product that move no number a dose is picked by: solutions are weighed and prices are by mass, so the neat
 * density moves the pump's rates alone, and the settings approved from them rest on it (`tableInputs`).
 */
const quietOfProduct = new Set(["densityKgPerL", "charge", "chargePct"]);

/** The field that a kept value was read from. */
const fieldOf = (key: string) => key.split(" ").at(-1) ?? "";

const knownValues = memo<SnapshotValue[]>();
const valuesOf = (what: string, record: { id: string }) =>
  knownValues(record, [what], () => listValues(what, record));
const valuesOfProduct = (product: RecordOf<"product">) =>
  valuesOf(decisionChainWords.product(product.label), product).filter(
    ({ key }) => !quietOfProduct.has(fieldOf(key)),
  );

/** Whether a kept value carries no result by the rules of now: an older version may have kept it all the same. */
function isQuiet(state: StudyState, key: string): boolean {
  const field = fieldOf(key);
  const id = key.slice(0, -field.length - 1);
  return quiet.has(field) || (quietOfProduct.has(field) && Object.hasOwn(state.product, id));
}

function listValues(what: string, record: { id: string }): SnapshotValue[] {
  return Object.entries(record).flatMap(([field, value]): SnapshotValue[] => {
    if (quiet.has(field) || value === null || /Id$/.test(field)) return [];
    const key = `${record.id} ${field}`;
    const name = `${what} ${fieldWords(field)}`;
    if (typeof value === "number" || typeof value === "string")
      return value === "" ? [] : [{ key, name, value }];
    // Kept with the approval and compared with it later, so the same in every language; translated where it is shown.
    if (typeof value === "boolean") return [{ key, name, value: value ? "yes" : "no" }];
    return [{ key, name, value: JSON.stringify(value).slice(0, 2000) }];
  });
}

/**
 * Every input upstream of a series' dose that moves what it was picked by: sample, dishes, products, stocks, the series,
 * its jars and readings, targets.
 */
export function upstreamOf(state: StudyState, seriesId: string): SnapshotValue[] {
  const series = state.series[seriesId];
  if (!series) return [];
  const sample = state.sample[series.sampleId];
  const stocks = [series.stockAId, series.stockBId].flatMap((id) =>
    id && state.stock[id] ? [state.stock[id]] : [],
  );
  const jars = [...childrenOf(state.jar, "seriesId", seriesId)].sort((a, b) => (a.id < b.id ? -1 : 1));
  const jarIds = new Map(jars.map((jar) => [jar.id, jar.label]));
  const dishes = Object.values(state.dish).filter((dish) => dish.sampleId === series.sampleId);
  const readings = jars
    .flatMap((jar) => childrenOf(state.reading, "jarId", jar.id))
    .sort((a, b) => (a.id < b.id ? -1 : 1));
  const targets = Object.values(state.targets).filter((one) => one.seriesId === seriesId);
  return [
    ...(sample ? valuesOf(decisionChainWords.sample(sample.label), sample) : []),
    ...dishes.flatMap((dish) => valuesOf(decisionChainWords.dish(dish.label), dish)),
    ...stocks.flatMap((stock) => [
      ...valuesOf(decisionChainWords.stock(stock.label), stock),
      ...valuesOfProduct(state.product[stock.productId]!),
    ]),
    ...valuesOf(decisionChainWords.series(series.label), series),
    ...jars.flatMap((jar) => valuesOf(decisionChainWords.jar(jar.label), jar)),
    ...readings.flatMap((reading, index) =>
      valuesOf(decisionChainWords.reading(jarIds.get(reading.jarId) ?? "", index + 1), reading),
    ),
    ...targets.flatMap((one) => valuesOf(decisionChainWords.targets, one)),
  ];
}

export interface DecisionChain {
  decision: Decision;
  /** the first input that moved since, in words; null while nothing has */
  moved: string | null;
  /** where it stands, as shown */
  word: string;
  tone: StateTone;
}

/** The series' latest decision that was not withdrawn, and whether anything upstream has moved since. */
export function decisionChain(state: StudyState, seriesId: string): DecisionChain | null {
  const known = standing.get(state, seriesId);
  return known === undefined ? standing.keep(state, seriesId, decisionOf(state, seriesId)) : known;
}

const standing = memoOfState<DecisionChain | null>();

function decisionOf(state: StudyState, seriesId: string): DecisionChain | null {
  const decision = Object.values(state.decision)
    .filter((one) => one.seriesId === seriesId && one.withdrawn === null)
    .sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : a.id < b.id ? 1 : -1))[0];
  if (!decision) return null;
  const moved = firstMoved(state, decision.snapshot, upstreamOf(state, seriesId));
  return {
    decision,
    moved,
    word: moved ? decisionChainWords.outOfDate : decisionChainWords.approved,
    tone: moved ? "warn" : "good",
  };
}

/**
 * The parts of a value in words: a nested record's own fields without those that are empty, else the value itself.
 * Numbers stand under the study's decimal mark.
 */
function partsOf(one: SnapshotValue | undefined, mark: DecimalMark): Map<string, string> {
  const inWords = (value: unknown) => (typeof value === "number" ? writeNumber(value, mark) : String(value));
  if (one === undefined || one.value === null) return new Map();
  const text = inWords(one.value);
  if (text.startsWith("{"))
    try {
      const nested = JSON.parse(text) as Record<string, unknown>;
      return new Map(
        Object.entries(nested)
          .filter(([, inner]) => inner !== null && inner !== "")
          .map(([field, inner]) => [
            field,
            typeof inner === "object" ? JSON.stringify(inner) : inWords(inner),
          ]),
      );
    } catch {
      // A long value was cut when it was kept: it is compared as it stands.
    }
  return new Map([["", text]]);
}

/** A kept value as a sentence shows it. */
function shownValue(text: string | undefined, unit: string): string {
  if (text === undefined) return decisionChainWords.nothing;
  if (text === "yes") return decisionChainWords.yes;
  if (text === "no") return decisionChainWords.no;
  return `${text.slice(0, 60)}${unit && text !== "" ? ` ${unit}` : ""}`;
}

/** The first part of a value that moved, in words; null where none did (a field that is new and empty is no move). */
function movedPart(
  before: SnapshotValue | undefined,
  after: SnapshotValue | undefined,
  mark: DecimalMark,
): string | null {
  const [old, now] = [partsOf(before, mark), partsOf(after, mark)];
  const name = (after ?? before)!.name;
  for (const field of new Set([...now.keys(), ...old.keys()])) {
    if (old.get(field) === now.get(field)) continue;
    const what = field === "" ? name : `${name}, ${fieldWords(field)}`;
    const unit = fieldUnit(field === "" ? fieldOf((after ?? before)!.key) : field);
    return now.has(field)
      ? decisionChainWords.changed(what, shownValue(old.get(field), unit), shownValue(now.get(field), unit))
      : decisionChainWords.gone(what, shownValue(old.get(field), unit));
  }
  return null;
}

const byKey = (values: SnapshotValue[]) => new Map(values.map((one) => [one.key, one]));
const knownSnapshot = memo<Map<string, SnapshotValue>>();

function firstMoved(state: StudyState, before: SnapshotValue[], after: SnapshotValue[]): string | null {
  const mark = state.study["study"]?.decimalMark ?? ".";
  const old = knownSnapshot(before, [], () => byKey(before));
  let kept = 0;
  for (const one of after) {
    const earlier = old.get(one.key);
    if (earlier) kept += 1;
    if (earlier && earlier.value === one.value) continue;
    const moved = movedPart(earlier, one, mark);
    if (moved) return moved;
  }
  if (kept === old.size) return null;
  const now = byKey(after);
  for (const [key, one] of old) {
    const moved = now.has(key) || isQuiet(state, key) ? null : movedPart(one, undefined, mark);
    if (moved) return moved;
  }
  return null;
}

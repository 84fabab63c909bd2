import { kindNamed, valueOf, type ReadingResult } from "../responses/registry.ts";
import type { ScreenNumbers } from "../responses/response.ts";
import type { SimpleCommand } from "./commands.ts";
import type { ToldChange } from "./history.ts";
import { fieldUnit, fieldWords } from "./issue-words.ts";
import { references } from "./references.ts";
import type { Kind, StudyState } from "./schema/records.ts";
import { writeNumber } from "../units/number-entry.ts";
import { historyWords } from "../words/history.ts";
import { kindWords } from "../words/records.ts";
import { namedOnce } from "../words/named.ts";

/** How a history writes numbers and moments: by the study's decimal mark, in the units it shows. */
export interface HistoryTold extends ScreenNumbers {
  /** a canonical value whose field carries this unit, without the unit */
  inUnit(value: number, unit: string): string;
  /** what is written after such a value */
  unit(unit: string): string;
  moment(iso: string): string;
}

/** As the records keep them, in canonical units and ISO 8601, under the study's decimal mark. */
function asKept(state: StudyState | null): HistoryTold {
  const number = (value: number) => writeNumber(value, state?.study["study"]?.decimalMark ?? ".");
  return { entry: number, plain: number, inUnit: number, unit: (unit) => unit, moment: (iso) => iso };
}

type Loose = Record<string, unknown>;
/** What every sentence is told from: names of records that are still there, and the way of writing. */
interface Around {
  state: StudyState | null;
  told: HistoryTold;
}

const instant = /^\d{4}-\d\d-\d\dT[\d:.]+(?:Z|[+-]\d\d:\d\d)$/;

// A sentence holds no more of a nested value than this, however long a list is.
const mostParts = 40;

/** A value in a sentence; `field` is the one it stands in, or the list that it is one of. */
function words(value: unknown, field: string, around: Around): string {
  const { told } = around;
  if (value === null || value === undefined || value === "") return historyWords.nothing;
  if (typeof value === "object") {
    const parts = Object.entries(value as Loose)
      .slice(0, mostParts)
      .filter(([, inner]) => inner !== null && inner !== "")
      .map(
        ([name, inner]) => `${fieldWords(name)} ${full(inner, Array.isArray(value) ? field : name, around)}`,
      );
    return parts.join(", ").slice(0, 120) || historyWords.nothing;
  }
  if (typeof value === "number") return told.inUnit(value, fieldUnit(field));
  if (typeof value === "string" && instant.test(value)) return told.moment(value);
  return historyWords.value(String(value), field).slice(0, 80);
}

/** The same with its unit. */
function full(value: unknown, field: string, around: Around): string {
  const unit = typeof value === "object" ? "" : around.told.unit(fieldUnit(field));
  return `${words(value, field, around)} ${unit}`.trim();
}

const recordAt = (state: StudyState | null, kind: Kind, id: unknown): Loose | undefined =>
  state && typeof id === "string" && Object.hasOwn(state[kind], id) ? (state[kind][id] as Loose) : undefined;

const labelOf = (record: Loose | undefined) => record?.["label"] ?? record?.["name"];

/** The field by which a kind's record belongs to another, where its own name does not tell enough. */
const belonging: Partial<Record<Kind, string>> = {
  dish: "sampleId",
  jar: "seriesId",
  reading: "jarId",
  photo: "jarId",
  targets: "seriesId",
  decision: "seriesId",
  drawDown: "pumpId",
  cylinderCheck: "pumpId",
  tableApproval: "seriesId",
  stepTest: "seriesId",
  runDose: "runId",
};

/** "jar 4", but not "sample Sample 1". */
const named = (kind: Kind, label: string) => namedOnce(kindWords[kind].one, label);

function nameOf(kind: Kind, record: Loose | undefined, { state }: Around): string {
  const label = labelOf(record);
  const name = typeof label === "string" ? named(kind, label) : kindWords[kind].one;
  const field = belonging[kind];
  // A jar's number says enough where the study has a single series.
  if (!field || !record || (kind === "jar" && Object.keys(state?.series ?? {}).length < 2)) return name;
  const to = references.find((link) => link.from === kind && link.field === field)!.to;
  const parent = labelOf(recordAt(state, to, record[field]));
  return typeof parent === "string" ? historyWords.ofOther(name, named(to, parent)) : name;
}

/** A reading as the screens tell it, or its bare fields where its jar is gone or its kind is unknown. */
function readingText(result: unknown, reading: Loose, around: Around): string {
  const { state, told } = around;
  const kind = kindNamed(String((result as Loose | undefined)?.["kind"]));
  const series = state?.series[String(recordAt(state, "jar", reading["jarId"])?.["seriesId"])];
  // A command may leave off what its schema fills in.
  const whole = kind?.schema.safeParse(result);
  if (!kind || !series || !whole?.success) return words(result, "result", around);
  return kind.onScreen(whole.data as never, told, valueOf(whole.data as ReadingResult), series);
}

/** A dose that was approved, of one polymer or two. */
function doseText(decision: Loose, around: Around): string {
  const dose = (field: string) => full(decision[field], field, around);
  return typeof decision["doseBKgPerT"] === "number"
    ? historyWords.pair(dose("doseAKgPerT"), dose("doseBKgPerT"))
    : dose("doseAKgPerT");
}

const reasonText = (reason: unknown) => String(reason).replace(/\.$/, "");
const seriesName = (record: Loose, { state }: Around) =>
  named("series", String(recordAt(state, "series", record["seriesId"])?.["label"] ?? "?"));

function added(kind: Kind, record: Loose, around: Around): string {
  if (kind === "decision")
    return historyWords.approved(
      doseText(record, around),
      seriesName(record, around),
      String(record["byName"]),
      reasonText(record["reason"]),
    );
  if (kind === "tableApproval")
    return historyWords.settingsApproved(seriesName(record, around), String(record["byName"]));
  const name = nameOf(kind, record, around);
  if (kind === "reading") return historyWords.addedWith(name, readingText(record["result"], record, around));
  if (kind === "drawDown" || kind === "cylinderCheck") {
    const { setting, amount, seconds } = record;
    return historyWords.addedWith(name, words({ setting, amount, seconds }, "", around));
  }
  return historyWords.added(name);
}

function changed(
  { kind, id, fields }: Extract<SimpleCommand, { do: "set" }>,
  before: Loose,
  around: Around,
): string {
  const record = recordAt(around.state, kind, id);
  const name = nameOf(kind, record, around);
  const only = Object.keys(fields).length === 1 ? Object.keys(fields)[0] : null;
  if (only === "leftOut") {
    const leftOut = fields["leftOut"];
    if (leftOut === null || leftOut === false) return historyWords.takenIn(name);
    const { reason, note } = (typeof leftOut === "object" ? leftOut : {}) as Loose;
    const why = [reason && historyWords.value(String(reason), "reason"), note].filter(Boolean);
    return historyWords.leftOut(name, why.join(", "));
  }
  if (kind === "decision" && only === "withdrawn" && record && fields["withdrawn"]) {
    const { byName, reason } = fields["withdrawn"] as Loose;
    return historyWords.withdrawn(
      doseText(record, around),
      seriesName(record, around),
      String(byName),
      reasonText(reason),
    );
  }
  const parts = Object.entries(fields).map(([field, value]) => {
    if (field === "result" && record && value && before[field])
      return historyWords.fromTo(
        fieldWords(field),
        readingText(before[field], record, around),
        readingText(value, record, around),
      );
    const to = references.find((link) => link.from === kind && link.field === field)?.to;
    const text = (one: unknown) =>
      to && one ? String(labelOf(recordAt(around.state, to, one)) ?? one) : words(one, field, around);
    // The unit stands once: after the new value, or after the old one where none took its place.
    const unit = typeof (value ?? before[field] ?? {}) === "object" ? "" : around.told.unit(fieldUnit(field));
    const withUnit = (one: unknown) => `${text(one)} ${unit}`.trim();
    return value === null
      ? historyWords.fromTo(fieldWords(field), withUnit(before[field]), text(value))
      : historyWords.fromTo(fieldWords(field), text(before[field]), withUnit(value));
  });
  return historyWords.changed(name, parts.join("; "));
}

function simple(command: SimpleCommand, inverse: SimpleCommand | undefined, around: Around): string {
  if (command.do === "add") return added(command.kind, command.record, around);
  if (command.do === "set") return changed(command, inverse?.do === "set" ? inverse.fields : {}, around);
  const record = inverse?.do === "add" ? inverse.record : recordAt(around.state, command.kind, command.id);
  return historyWords.removed(nameOf(command.kind, record, around));
}

function body({ command, inverse, left }: ToldChange, around: Around): string {
  if (command.do !== "together")
    return simple(command, inverse.do === "together" ? inverse.commands[0] : inverse, around);
  return historyWords.together(command.label, command.commands.length + (left ?? 0));
}

/**
 * One entry of the history as a sentence without its author. `state` lends names to records that are still there; `told` writes
 * the numbers, as they are kept where it is left out.
 */
export function describeChange(
  change: ToldChange,
  state: StudyState | null,
  told: HistoryTold = asKept(state),
): string {
  const text = body(change, { state, told }).replace(/\.$/, "");
  if (change.undoes !== null) return historyWords.undid(change.undoes, text);
  if (change.redoes !== null) return historyWords.redid(change.redoes, text);
  return historyWords.done(`${text.charAt(0).toUpperCase()}${text.slice(1)}`);
}

import type { SimpleCommand } from "./commands.ts";
import type { ToldChange } from "./history.ts";
import { fieldUnit, fieldWords } from "./issue-words.ts";
import type { StudyState } from "./schema/records.ts";
import { writeNumber, type DecimalMark } from "../units/number-entry.ts";
import { historyWords } from "../words/history.ts";
import { kindWords } from "../words/records.ts";

/** A value in a sentence; `field` is the one it stands in, or the list that it is one of. */
function words(value: unknown, field: string, mark: DecimalMark): string {
  if (value === null || value === undefined || value === "") return historyWords.nothing;
  if (typeof value === "object") {
    const parts = Object.entries(value as Record<string, unknown>)
      .filter(([, inner]) => inner !== null && inner !== "")
      .map(
        ([name, inner]) => `${fieldWords(name)} ${words(inner, Array.isArray(value) ? field : name, mark)}`,
      );
    return parts.join(", ").slice(0, 120) || historyWords.nothing;
  }
  const text = typeof value === "number" ? writeNumber(value, mark) : String(value);
  return historyWords.value(text, field).slice(0, 80);
}

function nameOf(
  kind: SimpleCommand["kind"],
  id: string,
  record: Record<string, unknown> | undefined,
  state: StudyState | null,
): string {
  const known =
    record ??
    (state && Object.hasOwn(state[kind], id) ? (state[kind][id] as Record<string, unknown>) : undefined);
  const label = known?.["label"] ?? known?.["name"];
  const jarId = known?.["jarId"];
  const jar = typeof jarId === "string" && state ? state.jar[jarId]?.label : undefined;
  const { one } = kindWords[kind];
  if (typeof label === "string") return historyWords.named(one, label);
  return jar ? historyWords.ofJar(one, jar) : one;
}

function simple(
  command: SimpleCommand,
  inverse: SimpleCommand | undefined,
  state: StudyState | null,
): string {
  const mark = state?.study["study"]?.decimalMark ?? ".";
  if (command.do === "add") {
    const result = command.record["result"];
    const name = nameOf(command.kind, "", command.record, state);
    return result ? historyWords.addedResult(name, words(result, "result", mark)) : historyWords.added(name);
  }
  if (command.do === "remove")
    return historyWords.removed(
      nameOf(command.kind, command.id, inverse?.do === "add" ? inverse.record : undefined, state),
    );
  const before = inverse?.do === "set" ? inverse.fields : {};
  const parts = Object.entries(command.fields).map(([field, value]) => {
    const after = fieldUnit(field)
      ? `${words(value, field, mark)} ${fieldUnit(field)}`
      : words(value, field, mark);
    return historyWords.fromTo(fieldWords(field), words(before[field], field, mark), after);
  });
  return historyWords.changed(nameOf(command.kind, command.id, undefined, state), parts.join("; "));
}

function body({ command, inverse, left }: ToldChange, state: StudyState | null): string {
  if (command.do !== "together")
    return simple(command, inverse.do === "together" ? inverse.commands[0] : inverse, state);
  return historyWords.together(command.label, command.commands.length + (left ?? 0));
}

/** One entry of the history as a sentence without its author. `state` lends names to records that are still there. */
export function describeChange(change: ToldChange, state: StudyState | null): string {
  const text = body(change, state);
  if (change.undoes !== null) return historyWords.undid(change.undoes, text);
  if (change.redoes !== null) return historyWords.redid(change.redoes, text);
  return historyWords.done(`${text.charAt(0).toUpperCase()}${text.slice(1)}`);
}

import type { Command, SimpleCommand } from "./commands.ts";
import type { Change } from "./history.ts";
import { fieldUnit, fieldWords } from "./issue-words.ts";
import { kindWords, type StudyState } from "./schema/records.ts";

function words(value: unknown): string {
  if (value === null || value === undefined || value === "") return "nothing";
  if (typeof value === "object") {
    const parts = Object.entries(value as Record<string, unknown>)
      .filter(([, inner]) => inner !== null && inner !== "")
      .map(([name, inner]) => `${fieldWords(name)} ${words(inner)}`);
    return parts.join(", ").slice(0, 120) || "nothing";
  }
  return String(value).slice(0, 80);
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
  return `${kindWords[kind].one}${typeof label === "string" ? ` ${label}` : jar ? ` of jar ${jar}` : ""}`;
}

function simple(
  command: SimpleCommand,
  inverse: SimpleCommand | undefined,
  state: StudyState | null,
): string {
  if (command.do === "add") {
    const result = command.record["result"];
    return `added ${nameOf(command.kind, "", command.record, state)}${result ? ` (${words(result)})` : ""}`;
  }
  if (command.do === "remove")
    return `removed ${nameOf(command.kind, command.id, inverse?.do === "add" ? inverse.record : undefined, state)}`;
  const before = inverse?.do === "set" ? inverse.fields : {};
  const parts = Object.entries(command.fields).map(
    ([field, value]) =>
      `${fieldWords(field)} from ${words(before[field])} to ${words(value)}${fieldUnit(field) ? ` ${fieldUnit(field)}` : ""}`,
  );
  return `changed ${nameOf(command.kind, command.id, undefined, state)}: ${parts.join("; ")}`;
}

function body(command: Command, inverse: Command, state: StudyState | null): string {
  if (command.do !== "together")
    return simple(command, inverse.do === "together" ? inverse.commands[0] : inverse, state);
  return `${command.label} (${command.commands.length} ${command.commands.length === 1 ? "record" : "records"})`;
}

/** One entry of the history as a sentence without its author. `state` lends names to records that are still there. */
export function describeChange(change: Change, state: StudyState | null): string {
  const text = body(change.command, change.inverse, state);
  if (change.undoes !== null) return `Undid step ${change.undoes}: ${text}.`;
  if (change.redoes !== null) return `Did step ${change.redoes} again: ${text}.`;
  return `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
}

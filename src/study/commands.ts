import { z } from "zod";
import { bad, good, type Outcome } from "../outcome.ts";
import { toTheEnd } from "../steps.ts";
import { idSchema } from "./schema/common.ts";
import { kinds, recordSchemas, type AnyRecord, type Kind, type StudyState } from "./schema/records.ts";
import { brokenInvariant } from "./invariants.ts";
import { describeIssue } from "./issue-words.ts";
import { labelFault, linkFault } from "./links.ts";
import { copyTable, noteOrigin } from "./tables.ts";
import { kindWords, recordWords } from "../words/records.ts";

/** The name of a kind of record. */
export const kindSchema = z.enum(kinds as [Kind, ...Kind[]]);
const fieldsSchema = z.record(z.string().regex(/^[a-z][A-Za-z0-9]{0,60}$/), z.unknown());

/**
 * One change to a study. `set` replaces whole fields (null clears one); `together` is one undo step.
 * Records and fields are checked against the kind's schema when the command is applied, not here.
 */
export type Command =
  | { do: "add"; kind: Kind; record: Record<string, unknown> }
  | { do: "set"; kind: Kind; id: string; fields: Record<string, unknown> }
  | { do: "remove"; kind: Kind; id: string }
  | { do: "together"; label: string; commands: SimpleCommand[] };
export type SimpleCommand = Exclude<Command, { do: "together" }>;

const addSchema = z.strictObject({ do: z.literal("add"), kind: kindSchema, record: fieldsSchema });
const setSchema = z.strictObject({
  do: z.literal("set"),
  kind: kindSchema,
  id: idSchema,
  fields: fieldsSchema,
});
const removeSchema = z.strictObject({ do: z.literal("remove"), kind: kindSchema, id: idSchema });
/** The shape of one part of a command. */
export const simpleSchema = z.discriminatedUnion("do", [addSchema, setSchema, removeSchema]);
/** The most records one step may touch: an import of 10,000 jars with all their readings fits. */
export const mostTogether = 120_000;

const togetherSchema = z.strictObject({
  do: z.literal("together"),
  label: z.string().min(1).max(300),
  commands: z.array(simpleSchema).min(1).max(mostTogether),
});

/** The shape of a command as it crosses a boundary. */
export const commandSchema: z.ZodType<Command, Command> = z.discriminatedUnion("do", [
  addSchema,
  setSchema,
  removeSchema,
  togetherSchema,
]);

export interface Applied {
  state: StudyState;
  /** the command that takes the change back */
  inverse: Command;
  /** the records the command touched, without repeats, in order */
  touched: { kind: Kind; id: string }[];
}

type Tables = Record<Kind, Record<string, AnyRecord>>;

/**
 * Applies a command to a state and returns the next state with the inverse, or one sentence that says why not.
 * The given state is never changed; a refused command changes nothing, a group is all or nothing.
 */
export function applyCommand(state: StudyState, command: Command): Outcome<Applied> {
  return toTheEnd(applyInSteps(state, command));
}

/** Records applied or looked at between two steps: some milliseconds of work. */
const recordsAStep = 200;

/**
 * The same in steps, so that a large group need not be worked through in one go. Each step tells how many of the group's
 * records have been applied; leaving off between two steps changes nothing.
 */
export function* applyInSteps(state: StudyState, command: Command): Generator<number, Outcome<Applied>> {
  const simple = command.do === "together" ? command.commands : [command];
  const tables = { ...state } as Tables;
  const copied = new Set<Kind>();
  const touched = new Map<string, { kind: Kind; id: string }>();
  const inverses: SimpleCommand[] = [];

  const write = (kind: Kind, id: string, record: AnyRecord | null) => {
    if (!copied.has(kind)) {
      tables[kind] = copyTable(tables[kind]);
      copied.add(kind);
    }
    if (record === null) delete tables[kind][id];
    else tables[kind][id] = record;
    touched.set(`${kind} ${id}`, { kind, id });
  };

  for (const one of simple) {
    const step = prepare(tables, one);
    if (!step.ok) return step;
    write(one.kind, step.value.id, step.value.record);
    inverses.push(step.value.inverse);
    if (inverses.length % recordsAStep === 0) yield inverses.length;
  }

  // What was done last is taken back first.
  inverses.reverse();

  for (const kind of copied)
    noteOrigin(
      state[kind],
      tables[kind],
      [...touched.values()].flatMap((place) => (place.kind === kind ? [place.id] : [])),
    );
  const next = tables as StudyState;
  const places = [...touched.values()];
  for (const check of [linkFault, labelFault, recordFault])
    for (const some of check === labelFault ? [places] : batches(places)) {
      const fault = check(next, some);
      if (fault) return bad(fault);
      if (places.length > recordsAStep) yield simple.length;
    }
  const [only] = inverses;
  const inverse: Command =
    command.do === "together" || !only
      ? { do: "together", label: command.do === "together" ? command.label : "change", commands: inverses }
      : only;
  return good({ state: next, inverse, touched: places });
}

function batches<T>(all: T[]): T[][] {
  if (all.length <= recordsAStep) return [all];
  return Array.from({ length: Math.ceil(all.length / recordsAStep) }, (_, i) =>
    all.slice(i * recordsAStep, (i + 1) * recordsAStep),
  );
}

interface Step {
  id: string;
  record: AnyRecord | null;
  inverse: SimpleCommand;
}

function prepare(tables: Tables, command: SimpleCommand): Outcome<Step> {
  const { kind } = command;
  const { one } = kindWords[kind];
  if (command.do === "add") {
    const parsed = recordSchemas[kind].safeParse(command.record);
    if (!parsed.success) return bad(describeIssue(parsed.error, one, command.record));
    const record = parsed.data as AnyRecord;
    if (Object.hasOwn(tables[kind], record.id)) return bad(recordWords.idTaken(one));
    return good({ id: record.id, record, inverse: { do: "remove", kind, id: record.id } });
  }
  const { id } = command;
  const current = Object.hasOwn(tables[kind], id) ? tables[kind][id] : undefined;
  if (!current) return bad(recordWords.gone(one));
  if (command.do === "remove") {
    if (kind === "study") return bad(recordWords.studyStays);
    return good({
      id,
      record: null,
      inverse: { do: "add", kind, record: current as Record<string, unknown> },
    });
  }
  if (kind === "decision" && Object.keys(command.fields).some((field) => field !== "withdrawn"))
    return bad(recordWords.decisionStays);
  if (kind === "tableApproval") return bad(recordWords.tableApprovalStays);
  if (Object.hasOwn(command.fields, "id")) return bad(recordWords.idStays);
  // A field without a value is not in the history, which is JSON: it must do nothing here either.
  const given = Object.fromEntries(Object.entries(command.fields).filter(([, value]) => value !== undefined));
  const parsed = recordSchemas[kind].safeParse({ ...current, ...given });
  if (!parsed.success) return bad(describeIssue(parsed.error, one, { ...current, ...given }));
  const before: Record<string, unknown> = {};
  for (const field of Object.keys(given)) before[field] = (current as Record<string, unknown>)[field];
  return good({ id, record: parsed.data as AnyRecord, inverse: { do: "set", kind, id, fields: before } });
}

function recordFault(state: StudyState, places: { kind: Kind; id: string }[]): string | null {
  for (const { kind, id } of places) {
    const fault = Object.hasOwn(state[kind], id) ? brokenInvariant(state, kind, id) : null;
    if (fault) return fault;
  }
  return null;
}

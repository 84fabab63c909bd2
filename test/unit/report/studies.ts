import { applyCommand, type Command } from "../../../src/study/commands.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";
import type { PaperInput } from "../../../src/report/paper-input.ts";
import type { SheetInput } from "../../../src/report/sheet-facts.ts";

export const now = "2026-05-04T12:00:00.000Z";

/** Applies edits that must be accepted. */
export function edited(state: StudyState, ...commands: Command[]): StudyState {
  return commands.reduce((before, command) => {
    const applied = applyCommand(before, command);
    if (!applied.ok) throw new Error(applied.message);
    return applied.value.state;
  }, state);
}

export const demo = edited(emptyState(), ...demoCommands(now));

/** What every paper needs, at a fixed moment. */
export function paperInput(state: StudyState): PaperInput {
  return {
    state,
    now,
    utcOffsetMin: 120,
    version: "0.0.0",
    history: { changes: 10, head: "0123456789abcdef".repeat(4), whole: true },
  };
}

export function sheetInput(state: StudyState, more: Partial<SheetInput> = {}): SheetInput {
  return {
    ...paperInput(state),
    seriesId: "series-1",
    feedCaseId: null,
    lookedAt: null,
    ...more,
  };
}

const decision = {
  id: "decision-2",
  seriesId: "series-2",
  doseAKgPerT: 6,
  doseBKgPerT: 3,
  rule: "own",
  byName: "Jon R.",
  at: now,
  methodVersion: "1",
  snapshot: [],
};

/** Edits after which both polymers are decided on and both pumps calibrated, every name `length` characters long. */
export function twoPolymerCommands(length: number): Command[] {
  const long = (text: string) =>
    text.length >= length ? text : `${text} ${"named at great length ".repeat(9)}`.slice(0, length).trim();
  return [
    { do: "set", kind: "study", id: "study", fields: { name: long("Study") } },
    { do: "set", kind: "series", id: "series-2", fields: { label: long("Series") } },
    { do: "set", kind: "sample", id: "sample-1", fields: { label: long("Sample") } },
    {
      do: "set",
      kind: "product",
      id: "product-1",
      fields: { label: long("Flocculant"), lot: long("lot 7").slice(0, 24) },
    },
    {
      do: "set",
      kind: "product",
      id: "product-2",
      fields: { label: long("Coagulant"), lot: long("lot 2").slice(0, 24) },
    },
    { do: "set", kind: "makeDown", id: "makedown-1", fields: { injectionPoint: long("Mixer") } },
    { do: "set", kind: "makeDown", id: "makedown-2", fields: { injectionPoint: long("Pipe") } },
    { do: "set", kind: "pump", id: "pump-1", fields: { label: long("Pump one") } },
    {
      do: "add",
      kind: "pump",
      record: { id: "pump-2", label: long("Pump two"), makeDownId: "makedown-2", stream: "neat" },
    },
    ...[20, 40, 60, 80, 100].map((setting): Command => ({
      do: "add",
      kind: "drawDown",
      record: {
        id: `draw-2-${setting}`,
        pumpId: "pump-2",
        setting,
        amount: setting * 1.31 + (setting % 40) / 40,
        seconds: 60,
      },
    })),
    {
      do: "add",
      kind: "decision",
      record: {
        ...decision,
        byName: long("Somebody"),
        reason: "because it was the cheapest pair. ".repeat(100),
      },
    },
  ];
}

/** The demo with both polymers decided on and every name drawn out. */
export function twoPolymers(length: number): StudyState {
  return edited(demo, ...twoPolymerCommands(length));
}

import fc from "fast-check";
import { expect, test } from "vitest";
import { applyCommand, type Command } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { undoLineOf, advanceUndoLine, type UndoLine } from "../../src/study/history.ts";
import { emptyState, type StudyState } from "../../src/study/schema/records.ts";

const demo = demoCommands("2026-01-01T12:00:00Z").reduce<StudyState>((state, command) => {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}, emptyState());

const number = fc.option(fc.double({ min: -10, max: 1e4, noNaN: true }), { nil: null });
const command: fc.Arbitrary<Command> = fc.oneof(
  fc.record({
    do: fc.constant("set" as const),
    kind: fc.constant("jar" as const),
    id: fc.constantFrom(...Object.keys(demo.jar)),
    fields: fc.record({ syringeAMl: number }),
  }),
  fc.record({
    do: fc.constant("set" as const),
    kind: fc.constant("dish" as const),
    id: fc.constantFrom(...Object.keys(demo.dish)),
    fields: fc.record({ dryG: number, leftOut: fc.constant(null) }),
  }),
  fc.record({
    do: fc.constant("remove" as const),
    kind: fc.constant("reading" as const),
    id: fc.constantFrom(...Object.keys(demo.reading)),
  }),
  fc.record({
    do: fc.constant("add" as const),
    kind: fc.constant("person" as const),
    record: fc.record({
      id: fc.constantFrom("p-8", "p-9"),
      name: fc.string(),
      role: fc.constantFrom("crew", "engineer"),
    }),
  }),
  fc.record({
    do: fc.constant("remove" as const),
    kind: fc.constant("sample" as const),
    id: fc.constant("sample-1"),
  }),
);

test("apply then undo is the identity; a refused command changes nothing and says why", () => {
  fc.assert(
    fc.property(fc.array(command, { maxLength: 12 }), (commands) => {
      let state = demo;
      const inverses: Command[] = [];
      for (const one of commands) {
        const before = JSON.stringify(state);
        const applied = applyCommand(state, one);
        expect(JSON.stringify(state)).toBe(before);
        if (!applied.ok) {
          expect(applied.message).toMatch(/\.$/);
          continue;
        }
        state = applied.value.state;
        inverses.unshift(applied.value.inverse);
      }
      for (const inverse of inverses) {
        const applied = applyCommand(state, inverse);
        if (!applied.ok) throw new Error(applied.message);
        state = applied.value.state;
      }
      const sorted = (table: object) =>
        Object.fromEntries(Object.entries(table).sort(([a], [b]) => (a < b ? -1 : 1)));
      expect(Object.fromEntries(Object.entries(state).map(([kind, table]) => [kind, sorted(table)]))).toEqual(
        Object.fromEntries(Object.entries(demo).map(([kind, table]) => [kind, sorted(table)])),
      );
    }),
    { numRuns: 150 },
  );
});

test("the undo line followed step by step is the one read from the whole history", () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom("edit", "undo", "redo"), { maxLength: 40 }), (moves) => {
      let line: UndoLine = { undo: [], redo: [] };
      const history: { seq: number; undoes: number | null; redoes: number | null }[] = [];
      for (const move of moves) {
        const target = move === "undo" ? line.undo.at(-1) : move === "redo" ? line.redo.at(-1) : undefined;
        if (move !== "edit" && target === undefined) continue;
        const change = {
          seq: history.length + 1,
          undoes: move === "undo" ? target! : null,
          redoes: move === "redo" ? target! : null,
        };
        history.push(change);
        line = advanceUndoLine(line, change);
      }
      expect(undoLineOf(history)).toEqual(line);
    }),
  );
});

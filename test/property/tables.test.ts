import fc from "fast-check";
import { expect, test } from "vitest";
import { applyCommand, type Command, type SimpleCommand } from "../../src/study/commands.ts";
import { emptyState, type RecordOf, type StudyState } from "../../src/study/schema/records.ts";
import { childrenOf, copyTable, growingTable, keysOf } from "../../src/study/tables.ts";
import { demoCommands } from "../../src/study/demo.ts";

/** A study with more jars than the size from which tables are copied and indexed the quick way. */
const start = ((): StudyState => {
  let state = demoCommands("2026-01-01T12:00:00Z").reduce<StudyState>((before, command) => {
    const applied = applyCommand(before, command);
    if (!applied.ok) throw new Error(applied.message);
    return applied.value.state;
  }, emptyState());
  const commands: SimpleCommand[] = Array.from({ length: 700 }, (_, i) => [
    {
      do: "add" as const,
      kind: "jar" as const,
      record: { id: `many-${i}`, seriesId: i % 3 ? "series-1" : "series-2", label: `m${i}`, order: i + 100 },
    },
    {
      do: "add" as const,
      kind: "reading" as const,
      record: { id: `manyr-${i}`, jarId: `many-${i}`, result: { kind: "cst", seconds: 10 } },
    },
  ]).flat();
  const applied = applyCommand(state, { do: "together", label: "many", commands });
  if (!applied.ok) throw new Error(applied.message);
  ({ state } = applied.value);
  return state;
})();

const jarId = fc.integer({ min: 680, max: 704 }).map((i) => `many-${i}`);
const seriesId = fc.constantFrom("series-1", "series-2", "series-1", "series-2", "nowhere");
const simple: fc.Arbitrary<SimpleCommand> = fc.oneof(
  fc.record({
    do: fc.constant("set" as const),
    kind: fc.constant("jar" as const),
    id: jarId,
    fields: fc.oneof(
      fc.record({ seriesId }),
      fc.record({ label: fc.constantFrom("m690", "M691", "new", "newer", "newest") }),
      fc.record({ syringeAMl: fc.double({ min: 0, max: 50, noNaN: true }) }),
    ),
  }),
  fc.record({
    do: fc.constant("add" as const),
    kind: fc.constant("jar" as const),
    record: fc.record({
      id: jarId,
      seriesId,
      label: fc.constantFrom("n1", "n2", "n3", "n4", "m5"),
      order: fc.constant(1),
    }),
  }),
  fc.record({ do: fc.constant("remove" as const), kind: fc.constant("jar" as const), id: jarId }),
  fc.record({
    do: fc.constant("remove" as const),
    kind: fc.constant("reading" as const),
    id: jarId.map((id) => id.replace("many", "manyr")),
  }),
  fc.record({
    do: fc.constant("set" as const),
    kind: fc.constant("reading" as const),
    id: jarId.map((id) => id.replace("many", "manyr")),
    fields: fc.record({ jarId }),
  }),
);
const command: fc.Arbitrary<Command> = fc.oneof(
  simple,
  fc.record({
    do: fc.constant("together" as const),
    label: fc.constant("some"),
    commands: fc.array(simple, { minLength: 1, maxLength: 4 }),
  }),
);

/** The rules of links and names by looking at everything, as they are written down. */
function holds(state: StudyState): boolean {
  const jars = Object.values(state.jar);
  const names = new Set(jars.map((jar) => `${jar.seriesId} ${jar.label.toLowerCase()}`));
  return (
    names.size === jars.length &&
    jars.every((jar) => Object.hasOwn(state.series, jar.seriesId)) &&
    Object.values(state.reading).every((reading) => Object.hasOwn(state.jar, reading.jarId))
  );
}

/** The very same records, in whatever order. */
function same(found: readonly { id: string }[], wanted: readonly { id: string }[]): void {
  const by = (list: readonly { id: string }[]) => [...list].sort(byId);
  const [one, other] = [by(found), by(wanted)];
  if (one.length !== other.length || one.some((record, i) => record !== other[i])) expect(one).toEqual(other);
}

const byId = (a: { id: string }, b: { id: string }) => (a.id < b.id ? -1 : 1);

test("what hangs on a record is found after any edits as by looking through the whole table, also in earlier states", () => {
  let refused = 0;
  let accepted = 0;
  fc.assert(
    fc.property(fc.array(fc.tuple(command, fc.nat(3)), { minLength: 4, maxLength: 30 }), (steps) => {
      const states: StudyState[] = [start];
      for (const [one, back] of steps) {
        const from = states.at(-1)!;
        const applied = applyCommand(from, one);
        if (applied.ok) {
          accepted += 1;
          expect(holds(applied.value.state)).toBe(true);
          states.push(applied.value.state);
        } else refused += 1;
        const state = states.at(-1 - Math.min(back, states.length - 1))!;
        for (const id of ["series-1", "series-2", "nowhere"])
          same(
            childrenOf(state.jar, "seriesId", id),
            Object.values(state.jar).filter((jar) => jar.seriesId === id),
          );
        const readings = Object.values(state.reading).filter((reading) => /^manyr-(6|7)/.test(reading.id));
        for (let i = 678; i < 706; i++)
          same(
            childrenOf(state.reading, "jarId", `many-${i}`),
            readings.filter((reading) => reading.jarId === `many-${i}`),
          );
      }
    }),
    { numRuns: 60, seed: 3 },
  );
  expect(accepted).toBeGreaterThan(100);
  expect(refused).toBeGreaterThan(50);
});

test("a copied table is the same table, and changing the copy leaves the first alone", () => {
  const copy: Record<string, RecordOf<"jar">> = copyTable(start.jar);
  expect(copy).toEqual(start.jar);
  delete copy["many-3"];
  expect(Object.hasOwn(start.jar, "many-3")).toBe(true);
});

test("a table that came in parts is the table that came whole, and nothing goes through it again to find what hangs on a record", () => {
  const all = Object.values(start.jar);
  let reads = 0;
  const counted = all.map((jar) =>
    Object.defineProperty({ ...jar }, "seriesId", {
      enumerable: true,
      get: () => {
        reads += 1;
        return jar.seriesId;
      },
    }),
  );
  const { table, add } = growingTable<(typeof all)[number]>(["seriesId"]);
  for (let from = 0; from < counted.length; from += 100) add(counted.slice(from, from + 100));
  expect(reads).toBe(all.length);
  const found = Object.keys(start.series).map((id) => childrenOf(table, "seriesId", id).map((jar) => jar.id));
  expect(reads).toBe(all.length);
  expect(found).toEqual(
    Object.keys(start.series).map((id) => all.filter((jar) => jar.seriesId === id).map((jar) => jar.id)),
  );
  expect(found.flat()).toHaveLength(all.length);
  expect(keysOf(table)).toEqual(Object.keys(start.jar));
  expect(table).toEqual(start.jar);
});

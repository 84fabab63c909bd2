// What is worked in steps says to the letter what is said in one go.
import fc from "fast-check";
import { createHash } from "node:crypto";
import { expect, test } from "vitest";
import { chainHash, entryInSteps } from "../../main/storage/chain.ts";
import { changeInSteps } from "../../main/storage/change-row.ts";
import { contract } from "../../src/contract.ts";
import { toTheEnd } from "../../src/steps.ts";
import { parseInSteps } from "../../src/study/command-parts.ts";
import type { Command } from "../../src/study/commands.ts";
import type { Change } from "../../src/study/history.ts";

const id = fc.stringMatching(/^[a-z][a-z0-9-]{0,12}$/);
const simple = fc.oneof(
  fc.record({
    do: fc.constant("add" as const),
    kind: fc.constantFrom("jar" as const, "reading" as const),
    record: fc.dictionary(fc.stringMatching(/^[a-z][A-Za-z0-9]{0,6}$/), fc.jsonValue({ maxDepth: 1 }), {
      maxKeys: 4,
    }),
  }),
  fc.record({ do: fc.constant("remove" as const), kind: fc.constant("jar" as const), id }),
);
/** Few parts or many, with the border between the two and between two pieces. */
const command: fc.Arbitrary<Command> = fc.oneof(
  simple,
  fc
    .tuple(
      fc.array(simple, { minLength: 1, maxLength: 12 }),
      fc.constantFrom(1, 2, 199, 200, 201, 399, 400, 401, 650),
      fc.string({ minLength: 1, maxLength: 30, unit: "binary" }),
    )
    .map(([few, count, label]) => ({
      do: "together" as const,
      label,
      commands: Array.from({ length: count }, (_, i) => few[i % few.length]!),
    })),
);
const change: fc.Arbitrary<Change> = fc.record({
  seq: fc.integer({ min: 1, max: 1e6 }),
  at: fc.constant("2026-03-01T12:00:00.000Z"),
  by: fc.string({ maxLength: 20 }),
  command,
  inverse: command,
  undoes: fc.option(fc.integer({ min: 1, max: 1e6 }), { nil: null }),
  redoes: fc.option(fc.integer({ min: 1, max: 1e6 }), { nil: null }),
  why: fc.string({ maxLength: 40 }),
});

test("an entry's texts are its JSON, and its hash is that of all it holds", () => {
  fc.assert(
    fc.property(change, fc.stringMatching(/^[0-9a-f]{64}$/), (entry, previous) => {
      const { seq, at, by, undoes, redoes, why } = entry;
      const texts = toTheEnd(entryInSteps(previous, entry));
      expect(texts.command).toBe(JSON.stringify(entry.command));
      expect(texts.inverse).toBe(JSON.stringify(entry.inverse));
      const list = [previous, seq, at, by, entry.command, entry.inverse, undoes, redoes, why];
      const hash = createHash("sha256").update(JSON.stringify(list)).digest("hex");
      expect(texts.hash).toBe(hash);
      expect(chainHash(previous, entry)).toBe(hash);
    }),
    { numRuns: 60 },
  );
});

test("an entry is read from its row as it was written, a large one in several steps", () => {
  fc.assert(
    fc.property(change, (entry) => {
      const steps = changeInSteps({
        ...entry,
        command: JSON.stringify(entry.command),
        inverse: JSON.stringify(entry.inverse),
      });
      let count = 0;
      let step = steps.next();
      for (; !step.done; step = steps.next()) count += 1;
      // As JSON: a field's name such as __proto__ is a name, and what is read is a copy.
      expect(JSON.stringify(step.value)).toBe(JSON.stringify(JSON.parse(JSON.stringify(entry))));
      if (entry.command.do === "together" && entry.command.commands.length > 200)
        expect(count).toBeGreaterThan(entry.command.commands.length / 200);
    }),
    { numRuns: 60 },
  );
});

/** What a page that is not ours might send in a part's or the whole's place. */
const spoil = fc.oneof(
  fc.constant(undefined),
  fc.record({
    at: fc.nat(),
    how: fc.constantFrom("part", "field", "extra", "label", "afterSeq", "do", "beside", "many"),
    what: fc.jsonValue({ maxDepth: 1 }),
  }),
);

test("a call is parsed in steps as its schema parses it in one go, faults and their places too", () => {
  const schema = contract["study.apply"].input;
  let faults = 0;
  fc.assert(
    fc.property(command, spoil, (given, fault) => {
      const input = JSON.parse(
        JSON.stringify({ command: given, afterSeq: 3, by: " Jon R. ", brief: true }),
      ) as Record<string, unknown> & { command: Record<string, unknown> & { commands?: unknown[] } };
      const parts = input.command.commands;
      const at = parts && fault ? fault.at % parts.length : 0;
      if (fault?.how === "part" && parts) parts[at] = fault.what;
      if (fault?.how === "field" && parts) (parts[at] as Record<string, unknown>)["id"] = fault.what;
      if (fault?.how === "extra") input.command["more"] = fault.what;
      if (fault?.how === "label") input.command["label"] = fault.what;
      if (fault?.how === "afterSeq") input["afterSeq"] = fault.what;
      if (fault?.how === "do") input.command["do"] = fault.what;
      if (fault?.how === "beside") input["beside"] = fault.what;
      if (fault?.how === "many" && parts) input.command.commands = Array<unknown>(120_001).fill(parts[0]);
      const inOneGo = schema.safeParse(input);
      const inSteps = toTheEnd(parseInSteps<unknown>(schema, input, ["command"]));
      if (!inOneGo.success) faults += 1;
      expect(inSteps.success).toBe(inOneGo.success);
      expect(JSON.stringify(inSteps.data)).toBe(JSON.stringify(inOneGo.data));
      expect(inSteps.error?.issues).toEqual(inOneGo.error?.issues);
    }),
    { numRuns: 150 },
  );
  expect(faults).toBeGreaterThan(20);
});

import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blockCells, layBlock } from "../../../src/study/bench-table/block.ts";
import { jarsAtDoses } from "../../../src/study/bench-table/extra-jars.ts";
import { filtrationLines } from "../../../src/study/bench-table/filtration-lines.ts";
import { jarColumns, shownReadings, type TableContext } from "../../../src/study/bench-table/jar-columns.ts";
import { seriesChain } from "../../../src/study/derive/jars.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { apply, demoState } from "./state.ts";

const at = "2026-03-01T12:00:00.000Z";
const demo = demoState(at);

const chainOf = (state: StudyState) => seriesChain(state, "series-1");

function contextOf(state: StudyState, mark: "." | "," = "."): TableContext {
  let ids = 0;
  return {
    series: chainOf(state).series,
    readings: shownReadings(chainOf(state)),
    mark,
    doseUnit: "kg/t",
    doseToShown: (value) => value,
    doseToCanonical: (value) => value,
    newId: () => `new-${String(++ids).padStart(3, "0")}`,
    now: () => at,
  };
}

function lay(state: StudyState, text: string, row: number, column: string, mark: "." | "," = ".") {
  const context = contextOf(state, mark);
  return layBlock(
    state,
    chainOf(state),
    jarColumns(context),
    blockCells(text),
    { row, column },
    context.newId,
  );
}
const column = (state: StudyState, key: string, mark: "." | "," = ".") => {
  const context = contextOf(state, mark);
  const found = jarColumns(context).find((one) => one.key === key)!;
  return chainOf(state).jars.map((jar) => found.text(jar));
};

describe("a block pasted into the jar table", () => {
  test("lies over the typed columns only, from the cell it was pasted into", () => {
    const plan = lay(demo, "500\t700\n>1000\t1500\r\n", 1, "turbidity");
    if (!plan.ok) throw new Error(plan.message);
    expect(plan.value.cells).toBe(4);
    const next = apply(demo, { do: "together", label: "paste", commands: plan.value.commands });
    expect(column(next, "turbidity").slice(0, 4)).toEqual([">1000", "500", ">1000", "146"]);
    expect(column(next, "filtrate-tss").slice(1, 3)).toEqual(["700", "1500"]);
  });
  test("makes new jars past the last one", () => {
    const plan = lay(demo, "5\n5.5\n6", 12, "plannedA");
    if (!plan.ok) throw new Error(plan.message);
    expect(plan.value.addedJars).toBe(2);
    const next = apply(demo, { do: "together", label: "paste", commands: plan.value.commands });
    expect(column(next, "plannedA").slice(-3)).toEqual(["5", "5.5", "6"]);
    expect(column(next, "label").slice(-2)).toEqual(["14", "15"]);
  });
  test("is refused whole by its first bad cell, which is named", () => {
    const plan = lay(demo, "500\n12 x", 1, "turbidity");
    expect(plan).toMatchObject({ ok: false });
    if (!plan.ok) expect(plan.message).toMatch(/^Row 2 of the block, turbidity: .*Nothing was pasted\.$/);
    expect(lay(demo, "5\t5\t5\t5", 0, "cake-ts").ok).toBe(false);
    // a dish's wet mass before its empty dish is weighed
    const dishes = apply(demo, {
      do: "set",
      kind: "series",
      id: "series-1",
      fields: { readings: ["cake-dish"] },
    });
    const early = lay(dishes, "12.5", 0, "cake-wet");
    if (!early.ok) expect(early.message).toContain("Weigh the empty dish first");
    const inOrder = lay(dishes, "8.2\t63.1\t19.8", 0, "cake-tare");
    expect(inOrder.ok).toBe(true);
  });
  test("what stands in the table, copied and pasted back over itself, changes nothing, under either mark", () => {
    for (const mark of [".", ","] as const) {
      const context = contextOf(demo, mark);
      const columns = jarColumns(context);
      const text = chainOf(demo)
        .jars.map((jar) => columns.map((one) => one.text(jar)).join("\t"))
        .join("\n");
      const plan = lay(demo, text, 0, "label", mark);
      if (!plan.ok) throw new Error(plan.message);
      expect(plan.value.commands).toEqual([]);
    }
  });
  test("any numbers go in and come out the same", () => {
    const value = fc.double({ min: 0.001, max: 900, noNaN: true }).map((x) => Number(x.toPrecision(6)));
    fc.assert(
      fc.property(fc.array(value, { minLength: 1, maxLength: 20 }), fc.nat(12), (values, row) => {
        const plan = lay(demo, values.map(String).join("\n"), row, "turbidity");
        if (!plan.ok) throw new Error(plan.message);
        const commands = plan.value.commands;
        const next = commands.length === 0 ? demo : apply(demo, { do: "together", label: "p", commands });
        expect(column(next, "turbidity").slice(row, row + values.length)).toEqual(values.map(String));
      }),
      { seed: 4, numRuns: 60 },
    );
  });
  test("junk is refused or stands as typed, and never breaks", () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 60 }),
        fc.constantFrom("label", "order", "syringeA", "turbidity"),
        (text, key) => {
          const plan = lay(demo, text, 3, key);
          if (plan.ok && plan.value.commands.length > 0)
            expect(() =>
              apply(demo, { do: "together", label: "p", commands: plan.value.commands }),
            ).not.toThrow(/undefined|NaN/);
        },
      ),
      { seed: 9, numRuns: 300 },
    );
  });
});

test("suggested jars carry their volume and blank water (worked 1.1's formula turned round)", () => {
  const chain = seriesChain(demo, "series-1");
  let id = 0;
  const commands = jarsAtDoses(chain, [4.6, 5.4], () => `extra-${++id}`);
  if (!commands.ok) throw new Error(commands.message);
  const next = apply(demo, { do: "together", label: "extra", commands: commands.value });
  const added = seriesChain(next, "series-1").jars.slice(-2);
  expect(added.map(({ jar }) => jar.label)).toEqual(["14", "15"]);
  for (const jar of added) {
    expect(jar.doseA.value! / jar.jar.plannedDoseAKgPerT!).toBeCloseTo(1, 2);
    expect(jar.jar.syringeAMl! + jar.jar.blankWaterMl!).toBeCloseTo(49.7, 6);
  }
});

test("filtration pairs are read line by line, and the first bad line is named", () => {
  expect(filtrationLines("20 6,6\n40\t16,4\n60;29,5\n", ",")).toEqual({
    ok: true,
    value: [
      { volumeMl: 20, seconds: 6.6 },
      { volumeMl: 40, seconds: 16.4 },
      { volumeMl: 60, seconds: 29.5 },
    ],
  });
  for (const [text, words] of [
    ["20 6.6\n40 x\n60 29", /^Line 2, time/],
    ["20 6.6\n40\n60 29", /^Line 2: enter a volume and a time/],
    ["20 6.6\n15 16\n60 29", /^Line 2: both volume and time must rise/],
    ["20 6.6\n40 16.4", /at least three/],
  ] as const) {
    const outcome = filtrationLines(text, ".");
    expect(outcome.ok).toBe(false);
    if (!outcome.ok) expect(outcome.message).toMatch(words);
  }
});

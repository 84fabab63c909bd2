import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { slots, exactUse, holdsNumbers, usesByHeads } from "../../src/exchange/columns.ts";
import { escapeText, unescapeText } from "../../src/exchange/text-cell.ts";
import { tableOf } from "../../src/exchange/grid.ts";
import { readSheetFile } from "../../src/exchange/sheet-file.ts";
import { applyCommand, type SimpleCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { exportFile } from "../../src/study/exchange/export-file.ts";
import { idMaker } from "../../src/study/exchange/ids.ts";
import { planImport, type ImportPlan } from "../../src/study/exchange/import-plan.ts";
import { studyFrom } from "../../src/study/exchange/whole-study.ts";
import { fileSlots } from "../../src/responses/registry.ts";
import { jarSchema, readingSchema } from "../../src/study/schema/bench.ts";
import { emptyState, type StudyState } from "../../src/study/schema/records.ts";

const at = "2026-03-04T09:00:00.000Z";
const upstream = new Set(["study", "stream", "sample", "dish", "product", "stock"]);

/** The demo's sludge, products and stocks without any series, under a decimal mark. */
function bench(decimalMark: "." | ","): StudyState {
  const simple = demoCommands(at)
    .flatMap((command) => (command.do === "together" ? command.commands : [command]))
    .filter((command): command is SimpleCommand => upstream.has(command.kind));
  return applied(emptyState(), [
    ...simple,
    { do: "set", kind: "study", id: "study", fields: { decimalMark } },
  ]);
}

function applied(state: StudyState, commands: SimpleCommand[]): StudyState {
  const outcome = applyCommand(state, { do: "together", label: "test", commands });
  if (!outcome.ok) throw new Error(outcome.message);
  return outcome.value.state;
}

const finite = (min: number, max: number) =>
  fc
    .double({ min, max, noNaN: true, noDefaultInfinity: true })
    .map((value) => (Object.is(value, -0) ? 0 : value));
const censored = fc.constantFrom(null, null, "above" as const, "below" as const);
const anyText = fc
  .string({ unit: "binary", maxLength: 30 })
  .filter((text) => !text.includes("\u0000") && text.isWellFormed());
const note = fc.oneof(
  fc.constant(""),
  fc.constantFrom("=1+1", "'=x", "-3 of them", "+", "@home", " two \n lines ", "2,5", '"'),
  anyText,
);
/** moments as the schema takes them: every offset, with and without parts of a second */
const moment = fc.option(
  fc
    .tuple(
      fc.date({ min: new Date("1990-01-01"), max: new Date("2090-01-01"), noInvalidDate: true }),
      fc.constantFrom("Z", "+01:00", "-03:30", "+14:00"),
      fc.boolean(),
    )
    .map(([date, offset, whole]) => `${date.toISOString().slice(0, whole ? 19 : 23)}${offset}`),
);
const leftOut = fc.option(
  fc.record({
    reason: fc.constantFrom(
      "spilled",
      "wrong-dose",
      "mixing-failed",
      "timer-missed",
      "reading-failed",
      "sample-changed",
      "other",
    ),
    note,
  }),
  { freq: 4 },
);
const result = fc.oneof(
  fc.record({
    kind: fc.constant("turbidity"),
    value: finite(0.01, 9999),
    censored,
    dilution: fc.oneof(fc.constant(1), finite(1, 50)),
  }),
  fc.record({ kind: fc.constant("filtrate-tss"), mgPerL: finite(0.1, 5000), censored }),
  fc.record({
    kind: fc.constant("filtrate-tss-dish"),
    tareG: finite(0.1, 0.2),
    dryG: finite(0.21, 0.4),
    volumeMl: finite(1, 500),
  }),
  fc.record({ kind: fc.constant("drained"), ml: finite(0, 500), atS: fc.constantFrom(10, 10, 30, 62.5) }),
  fc.record({ kind: fc.constant("cst"), seconds: finite(1, 500) }),
  fc.record({
    kind: fc.constant("cake-dish"),
    tareG: finite(1, 9),
    wetG: finite(50, 90),
    dryG: finite(10, 40),
  }),
  fc.record({
    kind: fc.constant("cake-dish"),
    tareG: finite(1, 9),
    wetG: fc.option(finite(50, 90)),
    dryG: fc.option(finite(10, 40)),
  }),
  fc.record({
    kind: fc.constant("filtrate-tss-dish"),
    tareG: finite(0.1, 0.2),
    dryG: fc.option(finite(0.21, 0.4)),
    volumeMl: fc.option(finite(1, 500)),
  }),
  fc.record({ kind: fc.constant("filter-time"), seconds: finite(1, 5000) }),
  fc.record({
    kind: fc.constant("re-shear"),
    firstMm: finite(0.1, 9),
    brokenMm: finite(0.1, 9),
    regrownMm: fc.option(finite(0.1, 9)),
  }),
  fc.record({ kind: fc.constant("zeta"), mV: finite(-90, 90) }),
  fc.record({
    kind: fc.constant("srf"),
    points: fc.array(fc.record({ volumeMl: finite(1, 500), seconds: finite(1, 5000) }), {
      minLength: 3,
      maxLength: 8,
    }),
    firstUsed: fc.constant(1),
    lastUsed: fc.constant(3),
    diameterMm: finite(10, 100),
    pressureKPa: finite(10, 100),
    temperatureC: finite(1, 40),
    cakeKgPerM3: finite(1, 200),
  }),
  fc.record({ kind: fc.constant("cake-ts"), pct: finite(1, 60) }),
  fc.record({ kind: fc.constant("capture"), pct: finite(1, 100) }),
  fc.record({ kind: fc.constant("floc-grade"), grade: fc.integer({ min: 1, max: 5 }) }),
);
const jar = fc.record({
  name: fc.oneof(
    fc.constantFrom("", "=A", "-1", "1.5", "1,5", "é ", "007"),
    fc.string({ unit: "grapheme", maxLength: 12 }),
  ),
  order: fc.integer({ min: 1, max: 500 }),
  role: fc.constantFrom("dose", "standard", "centre", "no-polymer"),
  plannedDoseAKgPerT: fc.option(finite(0, 20)),
  syringeAMl: fc.option(finite(0.1, 60)),
  syringeBMl: fc.option(finite(0, 60)),
  plannedDoseBKgPerT: fc.option(finite(0, 20)),
  blankWaterMl: fc.option(finite(0, 60)),
  sampleVolumeMl: fc.option(finite(400, 499)),
  block: fc.constantFrom("", "bucket 1", "=day 2", "3.5", "-1"),
  mixedAt: moment,
  asMixed: fc.option(
    fc.record({
      fastRpm: fc.option(finite(1, 300)),
      fastS: finite(1, 60),
      betweenS: fc.option(finite(1, 60)),
      slowRpm: fc.option(finite(1, 300)),
      slowS: fc.option(finite(1, 60)),
      pours: fc.option(fc.integer({ min: 0, max: 50 })),
    }),
    { freq: 3 },
  ),
  leftOut,
  note,
  readings: fc.array(fc.record({ result, leftOut, note, takenAt: moment }), { maxLength: 9 }),
});
const series = fc.record({
  two: fc.boolean(),
  unit: fc.constantFrom("NTU", "NTU", "FNU"),
  label: fc.constantFrom("ladder", "=SUM(A1)", "1,234", "day; one", "Reihe ü"),
  jars: fc.array(jar, { minLength: 1, maxLength: 8 }),
});

const several = fc.array(series, { minLength: 1, maxLength: 3 });
type Given = typeof series extends fc.Arbitrary<infer T> ? T : never;

function studyOf(mark: "." | ",", all: Given[]): StudyState {
  return applied(
    bench(mark),
    all.flatMap((given, index) => seriesCommands(`s${index}`, given)),
  );
}

function seriesCommands(seriesId: string, { two, unit, label, jars }: Given): SimpleCommand[] {
  const commands: SimpleCommand[] = [
    {
      do: "add",
      kind: "series",
      record: {
        id: seriesId,
        label: `${label} ${seriesId}`,
        sampleId: "sample-1",
        stockAId: two ? "stock-2" : "stock-1",
        stockBId: two ? "stock-1" : null,
        sampleVolumeMl: 500,
        turbidityUnit: unit,
        protocol: { drainS: 10 },
      },
    },
  ];
  for (const [index, one] of jars.entries()) {
    const id = `${seriesId}-${String(index).padStart(3, "0")}`;
    const { name, readings, ...fields } = one;
    const clean = name.replace(/\p{Cc}/gu, "").trim();
    const dosed =
      fields.role === "no-polymer"
        ? { syringeAMl: fields.syringeAMl === null ? null : 0, syringeBMl: null }
        : {};
    commands.push({
      do: "add",
      kind: "jar",
      record: {
        id,
        seriesId,
        // names are told apart without regard to capitals
        label: `${clean}#${index}`,
        ...fields,
        ...dosed,
        ...(two ? {} : { syringeBMl: null }),
      },
    });
    for (const [round, reading] of readings.entries())
      commands.push({
        do: "add",
        kind: "reading",
        record: { id: `${id}-${String(round).padStart(2, "0")}`, jarId: id, ...reading },
      });
  }
  return commands;
}

/** Everything of jars and readings but ids, so that two studies can be held side by side. */
function content(state: StudyState): unknown {
  return Object.values(state.jar)
    .map(({ id, seriesId, ...fields }) => ({
      series: state.series[seriesId]!.label,
      stockA: state.series[seriesId]!.stockAId,
      stockB: state.series[seriesId]!.stockBId,
      // a file without turbidity does not say its unit
      unit: Object.values(state.reading).some(
        ({ result, jarId }) => result.kind === "turbidity" && state.jar[jarId]!.seriesId === seriesId,
      )
        ? state.series[seriesId]!.turbidityUnit
        : null,
      ...fields,
      sampleVolumeMl: fields.sampleVolumeMl ?? state.series[seriesId]!.sampleVolumeMl,
      readings: Object.values(state.reading)
        .filter(({ jarId }) => jarId === id)
        .sort((a, b) => (a.id < b.id ? -1 : 1))
        .map(({ result, leftOut, note, takenAt }) =>
          JSON.stringify({ result: Object.entries(result).sort(), leftOut, note, takenAt }),
        ),
    }))
    .sort((a, b) => (`${a.series} ${a.label}` < `${b.series} ${b.label}` ? -1 : 1));
}

/**
 * Readings of different kinds have no order among themselves in a table; those of one kind keep theirs. A volume at the
 * series' drain time and one at another time are different things to read.
 */
function byKind(value: unknown): unknown {
  return (value as { readings: string[] }[]).map((jar) => ({
    ...jar,
    readings: Object.groupBy(
      jar.readings,
      (text) => /"kind","([a-z-]+)"/.exec(text)![1]! + (text.includes('["atS",10]') ? " in time" : ""),
    ),
  }));
}

async function reimported(
  state: StudyState,
  format: "csv" | "xlsx",
  into: StudyState,
): Promise<{ plan: ImportPlan; state: StudyState }> {
  const bytes = await exportFile(state, format);
  const file = await readSheetFile(bytes, "round");
  if (!file.ok) throw new Error(file.message);
  const table = tableOf(file.value.sheets[0]!, "round", null, null, (_column, head) =>
    holdsNumbers(exactUse(head)),
  );
  if (!table.ok) throw new Error(table.message);
  const uses = usesByHeads(table.value.heads, "round");
  if (!uses.ok) throw new Error(uses.message);
  const plan = planImport(into, table.value, uses.value, {
    seriesName: null,
    fallbackName: "round",
    choice: {},
    skipBad: false,
    readAgain: false,
    nextId: idMaker(0, "t"),
  });
  if (!plan.ok) throw new Error(plan.message);
  expect(plan.value.errors).toEqual([]);
  if (!plan.value.command) throw new Error("nothing to add");
  const next = applyCommand(into, plan.value.command);
  if (!next.ok) throw new Error(next.message);
  return { plan: plan.value, state: next.value.state };
}

test("every kind of reading there is has its columns", () => {
  const kinds = readingSchema.shape.result.options.map(({ shape }) => shape.kind.value);
  expect(new Set(fileSlots.flatMap((spec) => spec.kinds))).toEqual(new Set(kinds));
  expect(fileSlots.map(({ slot }) => slot).sort()).toEqual([...slots].sort());
  expect(Object.keys(jarSchema.shape).sort()).toEqual(
    [
      ...["id", "seriesId", "label", "order", "role", "plannedDoseAKgPerT", "plannedDoseBKgPerT"],
      ...["syringeAMl", "syringeBMl", "blankWaterMl", "sampleVolumeMl", "block", "mixedAt", "asMixed"],
      ...["leftOut", "note"],
    ].sort(),
  );
});

describe("round trips", () => {
  for (const format of ["csv", "xlsx"] as const)
    test(`${format}: out and in again, into a study without the series, loses nothing of jars and readings`, async () => {
      await fc.assert(
        fc.asyncProperty(fc.constantFrom("." as const, "," as const), several, async (mark, given) => {
          const study = studyOf(mark, given);
          const back = await reimported(study, format, bench(mark));
          expect(byKind(content(back.state))).toEqual(byKind(content(study)));
        }),
        { numRuns: format === "csv" ? 100 : 40, seed: 20 },
      );
    }, 120_000);

  test("csv: two series at once keep their own jars", async () => {
    let state = emptyState();
    for (const command of demoCommands(at)) {
      const next = applyCommand(state, command);
      if (!next.ok) throw new Error(next.message);
      state = next.value.state;
    }
    const back = await reimported(state, "csv", bench("."));
    expect(back.plan.counts.newSeries).toEqual(["E-42 alone", "C-40 then E-42"]);
    expect(byKind(content(back.state))).toEqual(byKind(content(state)));
  });

  test("json: the whole study, parsed back by the schema, is the same study", async () => {
    await fc.assert(
      fc.asyncProperty(several, async (given) => {
        const study = studyOf(",", given);
        const text = new TextDecoder().decode(await exportFile(study, "json"));
        const back = studyFrom(JSON.parse(text));
        if (!back.ok) throw new Error(back.message);
        expect(back.value).toEqual(study);
      }),
      { numRuns: 40, seed: 21 },
    );
  });

  test("escaped text comes back as it was, and nothing escaped can start a formula", () => {
    fc.assert(
      fc.property(fc.oneof(fc.string(), fc.constantFrom("'", "''=", "=", "'-", "+1", "@", "-5")), (text) => {
        expect(unescapeText(escapeText(text))).toBe(text);
        expect(escapeText(text)).not.toMatch(/^[=+\-@]/);
      }),
      { seed: 22 },
    );
  });
});

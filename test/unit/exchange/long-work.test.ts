import { describe, expect, test } from "vitest";
import { stateReceiver, stateSender, type StatePart } from "../../../renderer/worker/send-state.ts";
import { exportFile, kindsToExport } from "../../../src/study/exchange/export-file.ts";
import { kindsToPlan } from "../../../src/study/exchange/import-plan.ts";
import { emptyState, kinds, type Kind, type StudyState } from "../../../src/study/schema/records.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { applyCommand } from "../../../src/study/commands.ts";
import { idMaker } from "../../../src/study/exchange/ids.ts";
import { planned } from "./bench-study.ts";

function demo(): StudyState {
  let state = emptyState();
  for (const command of demoCommands("2026-03-04T09:00:00.000Z")) {
    const applied = applyCommand(state, command);
    if (!applied.ok) throw new Error(applied.message);
    state = applied.value.state;
  }
  return state;
}

/** A study of which only these kinds are there. */
const only = (state: StudyState, wanted: Kind[]): StudyState =>
  Object.assign(emptyState(), Object.fromEntries(wanted.map((kind) => [kind, state[kind]])));

describe("a preview needs no more of a study than it is handed", () => {
  const state = demo();
  const [series] = Object.values(state.series);
  const jar = Object.values(state.jar).find(({ seriesId }) => seriesId === series!.id)!;
  const text = `jar,turbidity_ntu\n${jar.label},44\n`;
  const doses = "jar,syringe_a_ml,turbidity_ntu,cst_s\nnew 1,20,44,12\nnew 2,21,40,11\n";
  const named = `series,${doses.split("\n")[0]}\n${series!.label},named 1,20,44,12\nQuite new,1,20,44,12\n`;
  const cases: [string, string, boolean, Parameters<typeof planned>[2]][] = [
    ["a new series", doses, false, { seriesName: null, fallbackName: "Fresh" }],
    [
      "a new series with the name of one that is there",
      doses,
      false,
      { seriesName: null, fallbackName: series!.label },
    ],
    ["jars into a series that is there", doses, true, { seriesName: series!.label }],
    ["jars that are there already", text, true, { seriesName: series!.label }],
    ["jars read again", text, true, { seriesName: series!.label, readAgain: true }],
    ["series named in the file", named, true, { seriesName: null }],
  ];
  test.each(cases)("%s", (_name, file, into, options) => {
    const choice = { sampleId: series!.sampleId, stockAId: series!.stockAId, stockBId: series!.stockBId };
    const plan = (from: StudyState) => planned(file, from, { choice, nextId: idMaker(0, "t"), ...options });
    expect(plan(only(state, kindsToPlan(into)))).toEqual(plan(state));
  });
});

describe("an export needs no more of a study than it is handed, and says how far it is", () => {
  test.each(["csv", "xlsx", "json"] as const)("%s", async (format) => {
    const state = demo();
    const steps: [string, number, number][] = [];
    const whole = await exportFile(state, format, null, (...step) => steps.push(step));
    expect(await exportFile(only(state, kindsToExport(format)), format)).toEqual(whole);
    if (format === "json") return;
    const jars = Object.keys(state.jar).length;
    expect(steps.findLast(([step]) => step === "jars")).toEqual(["jars", jars, jars]);
    const [, done, total] = steps.findLast(([step]) => step === "lines")!;
    expect(done).toBe(total);
    expect(total).toBeGreaterThanOrEqual(jars);
  });
});

describe("a study on its way to a worker", () => {
  function opened() {
    const posted: (StatePart | { ask: string })[] = [];
    const receiver = stateReceiver();
    const worker = {
      postMessage(message: StatePart | { ask: string }) {
        posted.push(message);
        if ("do" in message) receiver.take(structuredClone(message));
      },
    } as unknown as Worker;
    return { posted, receiver, sender: stateSender(worker) };
  }

  test("arrives whole, in small parts, before its question", async () => {
    const { posted, receiver, sender } = opened();
    const jar = Object.fromEntries(
      Array.from({ length: 1001 }, (_, i) => [`j${i}`, { ...Object.values(demo().jar)[0]!, id: `j${i}` }]),
    );
    const state = { ...demo(), jar };
    await sender.post(state, { ask: "first" });
    expect(receiver.state()).toEqual(state);
    expect(posted.at(-1)).toEqual({ ask: "first" });
    for (const part of posted) if ("do" in part) expect(part.records.length).toBeLessThanOrEqual(200);
    expect(new Set(posted.flatMap((part) => ("do" in part ? part.kind : [])))).toEqual(new Set(kinds));
  });

  test("goes again only in what has changed, and questions stay in their order with their own study", async () => {
    const { posted, receiver, sender } = opened();
    const state = demo();
    const without = { ...state, dish: {} };
    const seen: number[] = [];
    const ask = (from: StudyState, name: string) =>
      sender.post(from, { ask: name }).then(() => seen.push(Object.keys(receiver.state().dish).length));
    await Promise.all([ask(state, "a"), ask(without, "b"), ask(without, "c")]);
    expect(posted.flatMap((one) => ("ask" in one ? one.ask : []))).toEqual(["a", "b", "c"]);
    const between = posted.slice(posted.findIndex((one) => "ask" in one) + 1);
    expect(between.flatMap((one) => ("do" in one ? one.kind : []))).toEqual(["dish"]);
    expect(seen[2]).toBe(0);
    expect(receiver.state()).toEqual(without);
  });

  test("stops where the worker was ended", async () => {
    const { posted, sender } = opened();
    const sent = sender.post(demo(), { ask: "never" });
    sender.end();
    await sent;
    expect(posted).toEqual([]);
  });
});

// What is fitted to one series says nothing about another: not even until the fits of the other have come.
import { createPinia, setActivePinia } from "pinia";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { nextTick } from "vue";
import { useChain } from "../../../renderer/stores/chain.ts";
import { useDoseLine } from "../../../renderer/stores/dose-line.ts";
import { useSelection } from "../../../renderer/stores/selection.ts";
import { useStudy } from "../../../renderer/stores/study.ts";
import type { FitAnswer } from "../../../renderer/worker/messages.ts";
import { packWorkings } from "../../../renderer/worker/pack.ts";
import type { Question } from "../../../renderer/worker/question.ts";
import { analyseJars } from "../../../src/curve/analyse.ts";
import { responseSpecs } from "../../../src/responses/registry.ts";
import { applyCommand } from "../../../src/study/commands.ts";
import { demoCommands } from "../../../src/study/demo.ts";
import { emptyState, type StudyState } from "../../../src/study/schema/records.ts";

const asked = vi.hoisted(() => [] as { question: Question; answer: (answer: FitAnswer) => void }[]);
vi.mock("../../../renderer/worker/client.ts", () => ({
  askFits: (question: Question) => new Promise((answer) => asked.push({ question, answer })),
}));

const demo = demoCommands("2026-01-01T12:00:00Z").reduce<StudyState>((state, command) => {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}, emptyState());
// Nothing is approved: the dose is the one that the fits lead to.
const state: StudyState = { ...demo, decision: {}, tableApproval: {} };

beforeEach(() => {
  asked.length = 0;
  setActivePinia(createPinia());
  vi.stubGlobal("window", {
    flocwright: new Proxy({}, { get: () => () => Promise.reject(new Error("no host")) }),
  });
});
afterEach(() => vi.unstubAllGlobals());

const fitted = (rows: Question["rows"], name: string): FitAnswer => {
  const result = analyseJars(rows, {
    name,
    responses: responseSpecs,
    number: String,
    doseUnit: "kg/t",
    jar: String,
  });
  if (!result.ok) throw new Error(result.message);
  const { analysis, workings } = result.value;
  return {
    id: 1,
    ok: true,
    analysis,
    workings: packWorkings(workings),
    extras: workings.map((one) => ({ name: one.analysis.name, robust: null, next: null })),
  };
};
const openDemo = () =>
  useStudy().accept({
    opening: "demo",
    fileName: "demo.flocwright",
    readOnlyBecause: null,
    notices: [],
    state,
    later: [],
    seq: 1,
    savedAt: null,
    undo: null,
    redo: null,
  });
const answerLast = () => {
  const { question, answer } = asked.at(-1)!;
  answer(fitted(question.rows, question.name));
};

test("no dose, limit or verdict of the series looked at before stands under another's name", async () => {
  expect(await openDemo()).toBe(true);
  const [chain, selection, line] = [useChain(), useSelection(), useDoseLine()];
  answerLast();
  await vi.waitFor(() => expect(chain.choice).not.toBeNull());
  expect(line.dose).not.toBeNull();
  const first = chain.analysis;
  const [, second] = selection.allSeries;

  selection.choose(second!.id);
  expect(chain.series?.series.id).toBe(second!.id);
  expect(chain.analysis).toBeNull();
  expect(chain.workings).toEqual([]);
  expect(chain.choice).toBeNull();
  expect(line.dose).toBeNull();
  await nextTick();
  expect(chain.running).toBe(true);
  await vi.waitFor(() => expect(asked).toHaveLength(2));
  answerLast();
  await vi.waitFor(() => expect(chain.analysis).not.toBeNull());
  expect(chain.analysis).not.toEqual(first);

  // A refusal belongs to the series it was said of.
  chain.fitTrouble = "Nothing can be fitted.";
  selection.choose(selection.allSeries[0]!.id);
  await vi.waitFor(() => expect(asked).toHaveLength(3));
  expect(chain.fitTrouble).toBe("");
  selection.choose(second!.id);
  await vi.waitFor(() => expect(asked).toHaveLength(4));
  answerLast();
  await vi.waitFor(() => expect(chain.analysis).not.toBeNull());

  // There and back within one task: nothing is asked, and nobody waits.
  selection.choose(selection.allSeries[0]!.id);
  await nextTick();
  selection.choose(second!.id);
  await nextTick();
  await new Promise((resolve) => setTimeout(resolve, 20));
  expect(asked).toHaveLength(4);
  expect(chain.running).toBe(false);
  expect(chain.analysis).not.toBeNull();

  // Back and forth before the fits come: the ones that come belong to the series shown.
  selection.choose(selection.allSeries[0]!.id);
  await vi.waitFor(() => expect(asked).toHaveLength(5));
  selection.choose(second!.id);
  asked[4]!.answer(fitted(asked[4]!.question.rows, asked[4]!.question.name));
  await vi.waitFor(() => expect(asked).toHaveLength(6));
  answerLast();
  await vi.waitFor(() => expect(chain.running).toBe(false));
  expect(chain.analysis).not.toBeNull();
  expect(chain.analysis).not.toEqual(first);
});

test("an edit keeps what was fitted in sight until the new fits have come", async () => {
  expect(await openDemo()).toBe(true);
  const chain = useChain();
  answerLast();
  await vi.waitFor(() => expect(chain.analysis).not.toBeNull());
  const edited = applyCommand(state, {
    do: "set",
    kind: "jar",
    id: "jar-1-04",
    fields: { syringeAMl: 9.5 },
  });
  if (!edited.ok) throw new Error(edited.message);
  useStudy().state = edited.value.state;
  await vi.waitFor(() => expect(asked).toHaveLength(2));
  expect(chain.running).toBe(true);
  expect(chain.analysis).not.toBeNull();
});

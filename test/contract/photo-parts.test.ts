import { rmSync } from "node:fs";
import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { openedDemo } from "./demo-context.ts";
import type { createDispatcher } from "../../main/dispatch.ts";
import { closeContext, type Context } from "../../main/service.ts";
import { oneAnswerOf } from "../../main/service/one-answer.ts";
import { wholeStudy } from "../../renderer/stores/whole-study.ts";
import { contract, type Opened } from "../../src/contract.ts";

let folder: string;
let context: Context;
let call: ReturnType<typeof createDispatcher>;
let largest = 0;
beforeEach(() => {
  ({ folder, context, call } = openedDemo());
  // The page's calls as the desktop window makes them.
  const bridge = Object.fromEntries(
    Object.keys(contract).map((name) => [
      name,
      async (input: unknown, opening: string | null) => {
        const answer = await call(name, input, opening);
        largest = Math.max(largest, JSON.stringify(answer).length);
        return answer;
      },
    ]),
  );
  vi.stubGlobal("window", { flocwright: bridge });
  largest = 0;
});
afterEach(() => {
  vi.unstubAllGlobals();
  closeContext(context);
  rmSync(folder, { recursive: true, force: true });
});

/** As long as a picture may be, and told apart by its first letters. */
const picture = (i: number, length: number) => `data:image/jpeg;base64,${`P${i}x`.padEnd(length, "A")}`;
const photos = (count: number, length: number) => ({
  do: "together" as const,
  label: "photos",
  commands: Array.from({ length: count }, (_, i) => ({
    do: "add" as const,
    kind: "photo" as const,
    record: {
      id: `photo-many-${i}`,
      jarId: "jar-1-04",
      label: `photo ${i}`,
      takenAt: null,
      widthPx: 1280,
      heightPx: 960,
      image: picture(i, length),
    },
  })),
});
const add = async (count: number, length: number) => {
  const answer = await call("study.apply", {
    command: photos(count, length),
    afterSeq: context.open!.seq,
    by: "",
    brief: true,
  });
  if (!answer.ok) throw new Error(answer.message);
};
async function current(): Promise<Opened> {
  const answer = await window.flocwright!["study.current"]({}, null);
  return (answer as { value: Opened }).value;
}

test("a study of many photos is handed over in parts of some photos each, and is whole in the end", async () => {
  await add(30, 350_000);
  const opened = await current();
  expect(opened.later).toEqual(["photo"]);
  // Of the step undo would move only its first parts are told; the photos themselves come with neither.
  largest = 0;
  const whole = await wholeStudy(opened);
  if (!whole.ok) throw new Error(whole.message);
  expect(whole.value.state.photo).toEqual(context.open!.state.photo);
  expect(Object.keys(whole.value.state.photo)).toEqual(Object.keys(context.open!.state.photo));
  expect(largest).toBeGreaterThan(600_000);
  expect(largest).toBeLessThan(1_100_000);
});

test("a few photos come with the study, as they always did", async () => {
  await add(2, 100_000);
  const opened = await current();
  expect(opened.later).toEqual([]);
  expect(Object.keys(opened.state.photo)).toEqual(Object.keys(context.open!.state.photo));
});

test("the parts of a step that holds photos are told a few at a time, none left out", async () => {
  await add(30, 350_000);
  const told: unknown[] = [];
  for (let more = true; more;) {
    const part = await call("study.changeParts", { seq: context.open!.seq, from: told.length });
    if (!part.ok) throw new Error(part.message);
    const { commands, more: further } = part.value as { commands: unknown[]; more: boolean };
    expect(JSON.stringify(commands).length).toBeLessThan(1_100_000);
    told.push(...commands);
    more = further;
  }
  expect(told).toHaveLength(30);
  expect(told).toEqual(photos(30, 350_000).commands);
});

test("an item larger than an answer goes alone, and count and size both end an answer", () => {
  const long = "x".repeat(1_200_000);
  expect(oneAnswerOf([long, "a", long], 0, 10)).toEqual([long]);
  expect(oneAnswerOf([long, "a", long], 1, 10)).toEqual(["a"]);
  expect(oneAnswerOf(["a", "b", "c"], 0, 2)).toEqual(["a", "b"]);
  expect(oneAnswerOf(["a", "b", "c"], 2, 2)).toEqual(["c"]);
  expect(oneAnswerOf([], 0, 2)).toEqual([]);
});

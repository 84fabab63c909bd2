import { expect, test } from "vitest";
import { drawInTurn, leaveTurn } from "../../../renderer/charts/draw-turns.ts";
import { nextTask } from "../../../renderer/worker/next-task.ts";

const settle = async () => {
  for (let i = 0; i < 10; i++) await nextTask();
};

test("drawings come one a task, in their order, and each once however often it was asked for", async () => {
  const drawn: string[] = [];
  const [a, b] = [() => void drawn.push("a"), () => void drawn.push("b")];
  drawInTurn(a);
  drawInTurn(b);
  drawInTurn(a);
  expect(drawn).toEqual([]);
  await nextTask();
  expect(drawn).toEqual(["a"]);
  await settle();
  expect(drawn).toEqual(["a", "b"]);
});

test("what has left its turn is not drawn, until it is asked for again", async () => {
  const drawn: string[] = [];
  const gone = () => void drawn.push("gone");
  drawInTurn(gone);
  drawInTurn(() => void drawn.push("stays"));
  leaveTurn(gone);
  await settle();
  expect(drawn).toEqual(["stays"]);
  drawInTurn(gone);
  await settle();
  expect(drawn).toEqual(["stays", "gone"]);
});

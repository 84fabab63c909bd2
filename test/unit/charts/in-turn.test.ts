import { expect, test } from "vitest";
import { effectScope, ref } from "vue";
import { inTurn } from "../../../renderer/components/in-turn.ts";
import { nextTask } from "../../../renderer/worker/next-task.ts";

const settle = async () => {
  for (let i = 0; i < 10; i++) await nextTask();
};

test("what is made in turn stands at once, and follows a task behind what it hangs on, once for all that moved", async () => {
  const [a, b] = [ref(1), ref(10)];
  let times = 0;
  const scope = effectScope();
  const sum = scope.run(() =>
    inTurn(() => {
      times += 1;
      return a.value + b.value;
    }),
  )!;
  expect(sum.value).toBe(11);
  a.value = 2;
  b.value = 20;
  expect(sum.value).toBe(11);
  await Promise.resolve();
  expect(sum.value).toBe(11);
  await settle();
  expect(sum.value).toBe(22);
  expect(times).toBe(2);
  a.value = 3;
  await settle();
  expect(sum.value).toBe(23);
});

test("what nobody looks at any more is not made again", async () => {
  const a = ref(1);
  let times = 0;
  const scope = effectScope();
  const make = () => {
    times += 1;
    return a.value;
  };
  const value = scope.run(() => inTurn(make))!;
  a.value = 2;
  scope.stop();
  a.value = 3;
  await settle();
  expect(value.value).toBe(1);
  expect(times).toBe(1);
});

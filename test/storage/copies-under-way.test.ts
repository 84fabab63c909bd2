// A copy that fails is told to whoever asked for it; it must neither end the program nor hold up what waits for it.
import { afterEach, beforeEach, expect, test } from "vitest";
import { copiesUnderWay } from "../../main/storage/copies-under-way.ts";

const unhandled: unknown[] = [];
const note = (reason: unknown) => void unhandled.push(reason);
beforeEach(() => void process.on("unhandledRejection", note));
afterEach(() => void process.off("unhandledRejection", note));

const aWhile = () => new Promise((resolve) => setTimeout(resolve, 20));

test("a copy that fails is handled, and what waited for it goes on", async () => {
  const copies = copiesUnderWay();
  let fail = (_: Error) => undefined as void;
  const copy = copies.count(new Promise<never>((_, reject) => (fail = reject)));
  expect(copies.any()).toBe(true);
  const waited = copies.ended();
  fail(new Error("the lock could not be given back"));
  await expect(copy).rejects.toThrow("given back");
  await expect(waited).resolves.toBeUndefined();
  await aWhile();
  expect(copies.any()).toBe(false);
  expect(unhandled).toEqual([]);
});

test("what waits goes on only when every copy has come to an end", async () => {
  const copies = copiesUnderWay();
  const first = Promise.withResolvers<string>();
  const second = Promise.withResolvers<string>();
  void copies.count(first.promise);
  void copies.count(second.promise);
  let done = false;
  const waited = copies.ended().then(() => (done = true));
  first.resolve("one");
  await aWhile();
  expect(done).toBe(false);
  second.resolve("two");
  await waited;
  expect(done).toBe(true);
});

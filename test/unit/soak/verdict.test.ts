import { expect, test } from "vitest";
import { slopes, type Sample } from "../../soak/verdict.ts";

const samples = (heap: (edits: number, i: number) => number): Sample[] =>
  Array.from({ length: 12 }, (_, i) => ({
    minute: i,
    edits: i * 100,
    pageHeap: heap(i * 100, i),
    nodes: 2000,
    listeners: 500,
    hostRss: 150e6,
    hostHeap: 24e6,
  }));
const heapOf = (list: Sample[]) => slopes(list).find(({ name }) => name === "pageHeap")!;

test("a heap that grows by 5 kB an edit is not steady, one that swings is", () => {
  const leaking = heapOf(samples((edits) => 6e6 + 5000 * edits));
  expect(leaking.perThousandEdits).toBeCloseTo(5e6);
  expect(leaking.steady).toBe(false);
  expect(heapOf(samples((_edits, i) => 12e6 + (i % 2) * 3e6)).steady).toBe(true);
});

test("warming up and one odd moment decide nothing; no edits at all is no verdict of steady", () => {
  expect(heapOf(samples((_edits, i) => (i < 3 ? 6e6 : i === 8 ? 40e6 : 12e6))).steady).toBe(true);
  expect(slopes(samples(() => 1).map((one) => ({ ...one, edits: 0 }))).every(({ steady }) => !steady)).toBe(
    true,
  );
});

// @vitest-environment jsdom
import { expect, test } from "vitest";
import { labelRoom } from "../../../src/report/label-room.ts";
import { pairDrawing } from "../../../src/report/pair-chart.ts";
import { parsed } from "./page-text.ts";

const within = { left: 0, right: 300, top: 0, bottom: 200 };

test("a label gets the first of its places that is free and inside, and keeps it", () => {
  const room = labelRoom(within);
  room.take("jar 4: 95.9", 100, 100, "start");
  const [taken, outside, free] = [
    { x: 130, y: 102 },
    { x: 295, y: 50 },
    { x: 200, y: 150 },
  ];
  expect(room.find("cake TS", [taken, outside, free])).toBe(free);
  expect(room.find("cake TS", [taken, outside, free])).toBeNull();
});

test("no mark of the plane of both doses is written over a jar beside it", () => {
  const jars = [
    [6, 3, "jar 5: 42.7"],
    [6, 3, "jar 10: 52.4"],
    [3, 2, "jar 1: 242"],
    [9, 4, "jar 9: 71.6"],
  ] as const;
  const { body } = pairDrawing(
    {
      sentence: "",
      labelA: "dose A",
      labelB: "dose B",
      points: jars.map(([a, b, label]) => ({ a, b, label, leftOut: false })),
      marks: [
        { a: 6.7, b: 3.3, label: "best fitted" },
        { a: 6, b: 3, label: "approved" },
      ],
      surface: null,
    },
    String,
  );
  const boxes = [...parsed(`<svg>${body.html}</svg>`).querySelectorAll("text")]
    .filter(({ textContent }) => /jar|fitted|approved/.test(textContent))
    .map((text) => {
      const width = text.textContent.length * 5.4;
      const x = Number(text.getAttribute("x"));
      const left = text.getAttribute("text-anchor") === "middle" ? x - width / 2 : x;
      return { left, right: left + width, y: Number(text.getAttribute("y")), text: text.textContent };
    });
  expect(boxes).toHaveLength(6);
  for (const one of boxes)
    for (const other of boxes)
      if (one.text < other.text && one.left < other.right && other.left < one.right)
        expect(Math.abs(one.y - other.y), `${one.text} and ${other.text}`).toBeGreaterThanOrEqual(11);
});

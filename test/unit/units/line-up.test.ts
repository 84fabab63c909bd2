import { describe, expect, it } from "vitest";
import { lineUp } from "../../../src/units/line-up.ts";

/** A text with its hidden places shown as dots. */
const seen = (column: string[]) => {
  const apart = lineUp(column);
  return column.map((text) =>
    apart(text)
      .map((piece) => `${piece.lead.replace(/./g, "·")}${piece.text}${piece.tail.replace(/./g, "·")}`)
      .join(""),
  );
};

describe("a column's numbers", () => {
  it("stand under each other at the mark, each with its own digits", () => {
    expect(seen(["5.21", "5.3", "12", "–", "-0.832"])).toEqual(["·5.21·", "·5.3··", "12····", "–", "-0.832"]);
    expect(seen(["0,64", "unter 0,001"])).toEqual(["0,64·", "unter 0,001"]);
    expect(seen(["44", "45"])).toEqual(["44", "45"]);
    expect(seen(["0.6 %", "12 %", "under 1 %"])).toEqual(["·0.6 %", "12 %··", "under 1 %··"]);
  });
  it("do so within pairs and ranges too", () => {
    expect(seen(["5.21 (10.4)", "6.5 (9.00)", "–"])).toEqual(["5.21 (10.4)·", "6.5· ·(9.00)", "–"]);
    expect(seen(["5.00 to 5.43", "6.0 to 17.1"])).toEqual(["5.00 to ·5.43", "6.0· to 17.1·"]);
  });
  it("begin under each other only where the texts have one shape", () => {
    expect(seen(["46; 44.8", "1000", "62.5"])).toEqual(["46; 44.8", "1000··", "··62.5"]);
  });
  it("leave a sentence and a text as they are, and never change what is said", () => {
    const column = ["1 2 3 4 5.25", "1.5", "A 1", ""];
    expect(seen(column)[0]).toBe(column[0]);
    const apart = lineUp(column);
    for (const text of column)
      expect(
        apart(text)
          .map((piece) => piece.text)
          .join(""),
      ).toBe(text);
  });
});

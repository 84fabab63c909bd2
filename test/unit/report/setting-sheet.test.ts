// @vitest-environment jsdom
import { describe, expect, test } from "vitest";
import { gridFlows } from "../../../src/report/setting-grid.ts";
import { settingSheet } from "../../../src/report/setting-sheet.ts";
import { paperDocument } from "../../../src/report/paper.ts";
import type { SheetInput } from "../../../src/report/sheet-facts.ts";
import { plantCautions } from "../../../src/study/cautions.ts";
import type { Command } from "../../../src/study/commands.ts";
import type { Kind, StudyState } from "../../../src/study/schema/records.ts";
import { demo, edited, now, sheetInput, twoPolymers } from "./studies.ts";
import { textOf } from "./page-text.ts";

const sheet = (state: StudyState, more: Partial<SheetInput> = {}) =>
  textOf(paperDocument(settingSheet(sheetInput(state, more))));
const set = (kind: Kind, id: string, fields: Record<string, unknown>): Command => ({
  do: "set",
  kind,
  id,
  fields,
});

/** The demo's plant with the feed, dose and draw-downs of worked 7.1 and 7.2. */
function worked(): StudyState {
  const draws: [number, number][] = [
    [20, 14.1],
    [40, 31.6],
    [60, 49],
    [80, 66.9],
    [100, 84.2],
  ];
  const feed = { totalSolidsPct: 2.5, densityKgPerL: 1.003 };
  return edited(
    demo,
    ...Object.keys(demo.drawDown).map((id): Command => ({ do: "remove", kind: "drawDown", id })),
    ...draws.map(([setting, amount]): Command => ({
      do: "add",
      kind: "drawDown",
      record: { id: `worked-${setting}`, pumpId: "pump-1", setting, amount, seconds: 60, takenAt: now },
    })),
    set("feedCase", "feed-1", { ...feed, flowM3PerH: 8 }),
    set("feedCase", "feed-2", { ...feed, flowM3PerH: 16 }),
    set("feedCase", "feed-3", { ...feed, flowM3PerH: 24 }),
    set("decision", "decision-1", { withdrawn: { byName: "J", at: now, reason: "worked" } }),
    {
      do: "add",
      kind: "decision",
      record: {
        id: "worked",
        seriesId: "series-1",
        doseAKgPerT: 4,
        rule: "own",
        reason: "worked numbers",
        byName: "W. Worker",
        at: now,
        methodVersion: "1",
        snapshot: demo.decision["decision-1"]!.snapshot,
      },
    },
  );
}

describe("the setting sheet's numbers", () => {
  // source: worked 7.2 (settings by feed, TS 2.5 %, 4 kg/t), recomputed independently
  test("the table of settings by feed flow is worked 7.2's, out of range in words", () => {
    const text = sheet(worked());
    for (const row of ["8 (35.2) Night", "12 (52.8)", "16 (70.4) Day", "20 (88.1)", "24 (106) Monday"])
      expect(text).toContain(row);
    // the columns are 2, 2.25, 2.5, 2.75 and 3 % TS
    expect(text).toMatch(/8 \(35\.2\) Night 32\.2 35\.7 39\.2 42\.7 46\.3/);
    expect(text).toMatch(/12 \(52\.8\) 46\.3 51\.5 56\.8/);
    expect(text).toMatch(/20 \(88\.1\) 74\.4 83\.2 92\.1 above above/);
    expect(text).toMatch(/24 \(106\) Monday 88\.5 99\.1 above above above/);
    expect(text).toContain("beyond the settings proven by draw-down");
  });
  // source: worked 7.2's line at 16 m3/h: setting 74.4361; its interval 3.18245 x 0.149443 / 0.8775 x
  // sqrt(1.2 + 14.4361^2 / 4000) = 0.6065 and the cylinder's hypot(0.5322, 1.96/sqrt3, 0.3498) = 1.2985, recomputed by hand
  test("setting with its interval, flow in both systems, the cylinder with its band", () => {
    const text = sheet(worked());
    expect(text).toContain("74.4 % 73.8 to 75 % (95 %, pump line alone)");
    expect(text).toContain("Expect 3.71 L/h (0.98 gal/h)");
    expect(text).toContain("61.8 mL in 60 s in the cylinder (good from 60.5 to 63.1 mL)");
    expect(text).toContain("16 m³/h (70.45 gal/min), TS 2.5 %, DS 401.2 kg/h (884.5 lb/h)");
  });
  // source: worked 7.1 at 20 m3/h (solution and carrier 1003 L/h, make-up 998.224 kg/h), here x 0.8; 9.52381 kg/t as supplied
  test("dose active and as supplied, solution, make-up and carrier water", () => {
    const text = sheet(worked());
    expect(text).toContain("4 kg/t (8 lb/short ton) active = 9.52 kg/t (19 lb/short ton) as supplied");
    expect(text).toContain("0.2 % active, 0.476 % as supplied, 802.4 L/h (212 gal/h)");
    expect(text).toContain(
      "make-up 798.6 kg/h (1761 lb/h), carrier 802.4 L/h (212 gal/h) to reach 0.1 % active",
    );
  });
  test("a decimal comma goes through the whole sheet", () => {
    const text = sheet(edited(worked(), set("study", "study", { decimalMark: "," })));
    expect(text).toContain("74,4 % 73,8 to 75 %");
    expect(text).not.toMatch(/\d\.\d+ (%|mL|L\/h|kg|lb|gal)/);
  });
});

describe("what the sheet says of itself", () => {
  test("approver, moment on the local clock, rule, reason, sample, lot, calibration and the history it hangs on", () => {
    const text = sheet(demo);
    expect(text).toContain("Approved by Jon R., 2026-05-04 13:40 UTC+2. Valid until: not set.");
    expect(text).toContain("Rule: our own judgement. Reason: Well inside the working window");
    expect(text).toContain(
      "Sample 1, after the blending tank, taken 2026-05-04 10:10 UTC+2 (3 h before this print), TS 2.483 ± 0.014 %",
    );
    expect(text).toContain(
      "lot 7, 42 % active, plant solution 0.2 % active; pump: 8 draw-downs from 20 to 100 %, 2026-05-04 13:30 UTC+2",
    );
    expect(text).toContain("history entry 10, hash begins 01234567 89abcdef.");
    for (const line of plantCautions) expect(text).toContain(line);
  });
  test("a broken history says so", () => {
    const history = { changes: 3, head: "0".repeat(64), whole: false };
    expect(sheet(demo, { history })).toContain("THE HISTORY'S CHAIN IS BROKEN");
  });
  test("an input that moved since makes it out of date in large words, and names it", () => {
    const text = sheet(edited(demo, set("dish", "dish-1", { dryG: 47.7 })));
    expect(text).toContain("OUT OF DATE: set no pump by this");
    expect(text).toMatch(/dish 1 dryG was 47\.5336 and is now 47\.7/);
    expect(sheet(demo)).not.toContain("OUT OF DATE");
  });
  const withdrawn = edited(
    demo,
    set("decision", "decision-1", { withdrawn: { byName: "J", at: now, reason: "wrong lot" } }),
  );
  test("without a decision it says so across the top and has no setting", () => {
    const text = sheet(withdrawn);
    expect(text).toContain("NOT APPROVED: for discussion only");
    expect(text).toContain("No setting. Missing: approve a dose in the Dose room first.");
    expect(text).toContain("Approved by: nobody.");
    expect(text).not.toMatch(/\bmL in\b/);
  });
  test("a dose that is only looked at gives settings under the same words", () => {
    const text = sheet(withdrawn, { lookedAt: { a: 5.2, b: null } });
    expect(text).toContain("NOT APPROVED: for discussion only");
    expect(text).toContain("94.9 %");
  });
  test("an approved dose is never replaced by one that is looked at", () => {
    expect(sheet(demo, { lookedAt: { a: 3, b: null } })).toContain("5.2 kg/t");
  });
  test("another lot than on the bench is called out", () => {
    const text = sheet(edited(demo, set("makeDown", "makedown-1", { productId: "product-2" })));
    expect(text).toContain("ANOTHER LOT THAN ON THE BENCH (Flocculant E-42 (invented), lot 7)");
  });
  test("a record's own valid-until is printed where it has one", () => {
    const decision = { ...demo.decision["decision-1"]!, validUntil: "2026-06-01T00:00:00Z" };
    const state = { ...demo, decision: { "decision-1": decision } };
    expect(sheet(state)).toContain("Valid until: 2026-06-01 02:00 UTC+2.");
  });
});

describe("gaps are named, never filled", () => {
  const cases: [string, Command[], RegExp][] = [
    [
      "feed flow",
      [set("feedCase", "feed-2", { flowM3PerH: null })],
      /flow missing.*No setting\. Missing: enter the feed flow\./,
    ],
    [
      "active share",
      [set("product", "product-1", { activePct: null })],
      /No setting\. Missing: polymer A: enter the active share/,
    ],
    [
      "solution strength",
      [set("makeDown", "makedown-1", { solutionActivePct: null })],
      /missing: the strength of the plant's solution/,
    ],
    [
      "draw-downs",
      Object.keys(demo.drawDown).map((id): Command => ({ do: "remove", kind: "drawDown", id })),
      /No setting\. Missing: no draw-down yet\./,
    ],
    [
      "pump",
      [
        ...Object.keys(demo.drawDown).map((id): Command => ({ do: "remove", kind: "drawDown", id })),
        { do: "remove", kind: "pump", id: "pump-1" },
      ],
      /Pump: none entered\. No setting\. Missing: a pump with draw-downs\./,
    ],
    [
      "feed cases",
      ["feed-1", "feed-2", "feed-3"].map((id): Command => ({ do: "remove", kind: "feedCase", id })),
      /Feed case: missing\./,
    ],
    ["sampling time", [set("sample", "sample-1", { takenAt: null })], /time not noted/],
  ];
  for (const [name, commands, words] of cases)
    test(name, () => {
      const text = sheet(edited(demo, ...commands));
      expect(text).toMatch(words);
      expect(text).not.toMatch(/NaN|Infinity|undefined|null/);
    });
  test("two draw-downs give a setting without a band, and say why", () => {
    const gone = Object.keys(demo.drawDown).filter((id) => id !== "draw-1" && id !== "draw-8");
    const text = sheet(edited(demo, ...gone.map((id): Command => ({ do: "remove", kind: "drawDown", id }))));
    expect(text).toContain("no interval: fewer than three draw-downs");
    expect(text).toContain("No band: fewer than three draw-downs");
    expect(text).not.toContain("good from 7");
  });
  test("beyond the proven settings there are words and no number", () => {
    const text = sheet(demo, { feedCaseId: "feed-3" });
    expect(text).toContain("No setting: needs more than the highest setting proven by draw-down.");
    expect(text).not.toContain("mL in 60 s");
  });
  test("a feeder checked on the balance is set by grams", () => {
    const text = sheet(edited(demo, set("pump", "pump-1", { measuredIn: "g" })));
    expect(text).toMatch(/g in 60 s on the balance \(good from [\d.]+ to [\d.]+ g\)/);
    expect(text).toMatch(/Expect [\d.]+ kg\/h \([\d.]+ lb\/h\)/);
  });
});

test("two polymers have a card each, by letter, with every name whole", () => {
  const state = twoPolymers(60);
  const text = sheet(state, { seriesId: "series-2" });
  for (const id of ["product-1", "product-2"]) expect(text).toContain(state.product[id]!.label);
  for (const id of ["pump-1", "pump-2"]) expect(text).toContain(state.pump[id]!.label);
  expect(text).toMatch(/A Coagulant .* B Flocculant/);
});

describe("flows of the table", () => {
  const flows = (...own: number[]) =>
    gridFlows(own.map((flowM3PerH) => ({ flowM3PerH, label: "x" }))).map(({ flowM3PerH }) => flowM3PerH);
  test("are the cases' own, with the widest gaps filled", () => {
    expect(flows(8, 24, 16)).toEqual([8, 12, 16, 20, 24]);
    expect(flows(20)).toEqual([12, 16, 20, 23, 26]);
    expect(flows(5, 5.01)).toEqual([5, 5.01]);
    expect(flows()).toEqual([]);
  });
});

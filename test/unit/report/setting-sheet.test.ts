// @vitest-environment jsdom
import { describe, expect, test } from "vitest";
import { gridFlows } from "../../../src/study/derive/plant-grid.ts";
import { settingSheet } from "../../../src/report/setting-sheet.ts";
import { paperDocument } from "../../../src/report/paper.ts";
import type { SheetInput } from "../../../src/report/sheet-facts.ts";
import { plantCautions } from "../../../src/study/cautions.ts";
import { approvalOfSettings } from "../study/state.ts";
import { plantChain } from "../../../src/study/derive/plant.ts";
import type { Command } from "../../../src/study/commands.ts";
import type { Kind, StudyState } from "../../../src/study/schema/records.ts";
import { demo, edited, now, sheetInput, twoPolymers } from "./studies.ts";
import { paperWords } from "../../../src/report/words.ts";
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
  const feed = { totalSolidsPct: 2.5, densityKgPerL: 1.003, flowFrom: "meter", flowUncertaintyPct: null };
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
    for (const row of ["8 (35.22) Night", "12 (52.83)", "16 (70.45) Day", "20 (88.06)", "24 (105.7) Monday"])
      expect(text).toContain(row);
    // the columns are 2, 2.25, 2.5, 2.75 and 3 % TS
    expect(text).toMatch(/8 \(35\.22\) Night 32\.2 35\.7 39\.2 42\.7 46\.3/);
    expect(text).toMatch(/12 \(52\.83\) 46\.3 51\.5 56\.8/);
    expect(text).toMatch(/20 \(88\.06\) 74\.4 83\.2 92\.1 above above/);
    expect(text).toMatch(/24 \(105\.7\) Monday 88\.5 99\.1 above above above/);
    expect(text).toContain("beyond the settings proven by draw-down");
  });
  // source: worked 7.2's line at 16 m3/h: setting 74.4361; its interval 3.18245 x 0.149443 / 0.8775 x
  // sqrt(1.2 + 14.4361^2 / 4000) = 0.6065; the cylinder's errors 0.1672, 1/sqrt3 and 0.1785 join to 0.6270, which with
  // Student's 1.964 at 593 effective degrees of freedom is 1.2315, recomputed by hand
  test("setting with its interval, flow in both systems, the cylinder with its band", () => {
    const text = sheet(worked());
    expect(text).toContain("74.4 % 73.8 to 75.0 % (95 %, pump line alone)");
    expect(text).toContain("Expect 3.71 L/h (0.98 gal/h)");
    expect(text).toContain("61.8 mL in 60 s in the cylinder (good from 60.6 to 63.1 mL)");
    expect(text).toContain("16 m³/h (70.45 gal/min), TS 2.5 %, DS 401 kg/h (884 lb/h)");
  });
  // source: worked 7.1 at 20 m3/h (solution and carrier 1003 L/h, make-up 998.224 kg/h), here x 0.8; 9.52381 kg/t as supplied
  test("dose active and as supplied, solution, make-up and carrier water", () => {
    const text = sheet(worked());
    expect(text).toContain("4 kg/t (8 lb/short ton) active = 9.52 kg/t (19 lb/short ton) as supplied");
    expect(text).toContain("0.2 % active, 0.476 % as supplied, 802 L/h (212 gal/h)");
    expect(text).toContain("make-up 799 kg/h (1760 lb/h), carrier 802 L/h (212 gal/h) to reach 0.1 % active");
  });
  test("a feed case and a series whose names say what they are are named once", () => {
    expect(sheet(worked())).toContain("For feed Day (usual): ");
    const plain = edited(
      worked(),
      set("feedCase", "feed-2", { label: "usual" }),
      set("series", "series-1", { label: "Series 1" }),
    );
    expect(sheet(plain)).toContain("For feed usual: ");
    expect(sheet(plain)).toContain(", Series 1 ");
  });
  test("a decimal comma goes through the whole sheet", () => {
    const text = sheet(edited(worked(), set("study", "study", { decimalMark: "," })));
    expect(text).toContain("74,4 % 73,8 to 75,0 %");
    expect(text).not.toMatch(/\d\.\d+ (%|mL|L\/h|kg|lb|gal)/);
  });
});

const local = (at: string | null) => paperWords(".", 120).moment(at);
const approvedAt = local(demo.decision["decision-1"]!.at);
const settledAt = local(demo.tableApproval["settings-1"]!.at);
/** the demo before anybody approved its settings */
const unapproved = { ...demo, tableApproval: {} };
const calibratedAt = demo.drawDown["draw-1"]!.takenAt!;

describe("what the sheet says of itself", () => {
  test("approver, moment on the local clock, rule, reason, sample, lot, calibration and the history it hangs on", () => {
    const text = sheet(demo);
    expect(text).toContain(
      `Dose approved by Jon R., ${approvedAt}. Settings approved by Jon R., ${settledAt}. Valid until: 2026-08-02 `,
    );
    expect(text).toContain("Rule: our own judgement. Reason: Well inside the working window");
    expect(text).toContain(
      `Sample 1, after the blending tank, taken ${local(demo.sample["sample-1"]!.takenAt)} (6 h before this print), TS 2.483 ± 0.014 %`,
    );
    expect(text).toContain(
      `lot 7, 42 % active, plant solution 0.2 % active; pump: 8 draw-downs from 20 to 100 %, ${local(calibratedAt)}`,
    );
    expect(text).toContain("history entry 10, hash begins 01234567 89abcdef.");
    for (const line of plantCautions()) expect(text).toContain(line);
  });
  test("a broken history says so", () => {
    const history = { changes: 3, head: "0".repeat(64), whole: false };
    expect(sheet(demo, { history })).toContain("THE HISTORY'S CHAIN IS BROKEN");
  });
  test("an input that moved since makes it out of date in large words, and names it", () => {
    const text = sheet(edited(demo, set("dish", "dish-1", { dryG: 47.7 })));
    expect(text).toContain("OUT OF DATE: set no pump by this");
    expect(text).toMatch(/Dish 1 dry was 47\.5336 g and is now 47\.7/);
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
    expect(text).toContain("Dose approved by: nobody.");
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
  test("valid until the first calibration is past its days; without a limit it says that none is set", () => {
    const days = (calibrationGoodDays: number | null) =>
      edited(demo, set("pump", "pump-1", { calibrationGoodDays }));
    const end = new Date(Date.parse(calibratedAt) + 3 * 86_400_000).toISOString();
    expect(sheet(days(3))).toContain(`Valid until: ${local(end)}, by the pumps' calibration.`);
    expect(sheet(days(null))).toContain("Valid until: not set.");
    const late = new Date(Date.parse(end) + 60_000).toISOString();
    const text = sheet(days(3), { now: late });
    expect(text).toContain("OUT OF DATE: set no pump by this");
    expect(text).toContain("past its 3 days: repeat the draw-downs");
  });
  test("a calibration goes stale with what is in the pump, and says why", () => {
    const text = sheet(edited(unapproved, set("product", "product-1", { lot: "lot 8" })));
    expect(text).toContain("OUT OF DATE: set no pump by this");
    expect(text).toMatch(/Neat pump P1: lot was .*lot 7 and is now .*lot 8/);
  });
  test("settings approved by name, and out of date when one of their inputs moves", () => {
    expect(sheet(unapproved)).toContain("Settings: approved by nobody yet.");
    const plant = plantChain(demo, "series-1", { a: 5.2, b: null });
    const approved = edited(demo, approvalOfSettings(demo, plant, now));
    expect(sheet(approved)).toContain("Settings approved by Ilse K., 2026-05-04 14:00 UTC+2.");
    expect(sheet(approved)).not.toContain("OUT OF DATE");
    const moved = sheet(edited(approved, set("makeDown", "makedown-1", { solutionActivePct: 0.25 })));
    expect(moved).toContain("OUT OF DATE: set no pump by this");
    expect(moved).toContain("Polymer A, solution strength was 0.2 and is now 0.25");
  });
  test("the bench-to-plant factor in use changes the settings and is named with its runs", () => {
    const text = sheet(edited(demo, set("makeDown", "makedown-1", { factorMachineId: "machine-1" })));
    // source: the demo's three settled runs, 4.89, 4.78 and 4.71 over 5.2, geometric mean 0.922
    expect(text).toContain(
      "4.79 kg/t (9.59 lb/short ton) active (bench 5.2 (10.4) × plant factor 0.922 of 3 runs)",
    );
    expect(text).toContain("87.8 %");
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
        ...["run-11-a", "run-12-a", "run-13-a"].map((id) => set("runDose", id, { pumpId: null })),
        ...Object.keys(demo.drawDown).map((id): Command => ({ do: "remove", kind: "drawDown", id })),
        { do: "remove", kind: "cylinderCheck", id: "check-1" },
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
    expect(text).toContain("No band: two draw-downs alone do not say how far one may lie off: add a third.");
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

import { describe, expect, test } from "vitest";
import { applyCommand } from "../../../src/study/commands.ts";
import { tableChain } from "../../../src/study/derive/plant-table.ts";
import { plantChain } from "../../../src/study/derive/plant.ts";
import type { Kind, StudyState } from "../../../src/study/schema/records.ts";
import { apply, approvalOfSettings, demoState } from "../study/state.ts";

const at = "2026-03-01T12:00:00Z";
const demo = demoState(at);
const chainOf = (state: StudyState) =>
  plantChain(state, "series-1", { a: 5.2, b: null }, { cakePct: 20, capturePct: 97 });
const set = (state: StudyState, kind: Kind, id: string, fields: object) =>
  apply(state, { do: "set", kind, id, fields: fields as Record<string, unknown> });

describe("an approved table of settings", () => {
  const approved = apply(demo, approvalOfSettings(demo, chainOf(demo), at));
  test("holds while nothing moves, and then says which and why", () => {
    const now = (state: StudyState) => tableChain(state, "series-1", chainOf(state));
    expect(now({ ...demo, tableApproval: {} }).word).toBe("not approved");
    expect(now(demo)).toMatchObject({ word: "approved", moved: [], approval: { byName: "Jon R." } });
    expect(now(approved)).toMatchObject({ word: "approved", moved: [] });
    for (const [kind, id, fields, words] of [
      ["product", "product-1", { lot: "lot 8" }, /lot was .* is now .*lot 8: another lot/],
      ["product", "product-1", { activePct: 41 }, /active share was 42 and is now 41: /],
      ["product", "product-1", { densityKgPerL: 1.04 }, /density, neat was 1.03/],
      ["makeDown", "makedown-1", { solutionActivePct: 0.25 }, /solution strength was 0.2 and is now 0.25/],
      ["drawDown", "draw-1", { amount: 15 }, /calibration has been changed: settings are read off/],
      ["makeDown", "makedown-1", { factorMachineId: "machine-1" }, /dose was 5.2 and is now 4.79/],
    ] as const)
      expect(now(set(approved, kind, id, fields)).moved.join("\n"), String(words)).toMatch(words);
    expect(now(set(approved, "machine", "machine-1", { washM3PerH: 7 })).moved).toEqual([]);
  });
  test("an approval is never changed", () => {
    expect(
      applyCommand(approved, {
        do: "set",
        kind: "tableApproval",
        id: "table-1",
        fields: { byName: "Someone" },
      }),
    ).toMatchObject({ ok: false });
  });
});

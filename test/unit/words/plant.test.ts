import { afterEach, describe, expect, it } from "vitest";
import { runsOf } from "../../../src/study/derive/plant-runs.ts";
import { tableChain, tableInputs } from "../../../src/study/derive/plant-table.ts";
import { driftChain } from "../../../src/study/derive/plant-watch.ts";
import { plantChain } from "../../../src/study/derive/plant.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak } from "../../../src/words/language.ts";
import { apply, approvalOfSettings, demoState } from "../study/state.ts";

const at = "2026-03-01T12:00:00.000Z";
const chainOf = (state: StudyState) =>
  plantChain(state, "series-1", { a: 5.2, b: null }, { cakePct: 20, capturePct: 97 });
const approvedIn = (state: StudyState) => apply(state, approvalOfSettings(state, chainOf(state), at));
const pump = (state: StudyState, fields: Record<string, unknown>) =>
  apply(state, { do: "set", kind: "pump", id: "pump-1", fields });

afterEach(() => speak("english", null));

describe("the plant in German", () => {
  it("keeps an approval of settings that was given in English, and says in German what moved", () => {
    const open = pump(demoState(at), { settingHigh: null });
    const approved = approvedIn(open);
    speak("german", german);
    // states of their own: what was worked out for a record in one language is kept with that record
    const again = JSON.parse(JSON.stringify(approved)) as StudyState;
    const now = (state: StudyState) => tableChain(state, "series-1", chainOf(state));
    expect(now(again)).toMatchObject({ word: "freigegeben", moved: [] });
    const moved = now(pump(again, { settingHigh: 100, stream: "solution", settingUnit: "% stroke" })).moved;
    expect(moved.find((line) => line.includes("Bereich"))).toBe(
      "Polymer A, Bereich des Bedienfelds: war 0 bis offen, ist jetzt 0 bis 100; Einstellungen außerhalb dessen, was das Bedienfeld zulässt, werden abgelehnt",
    );
    expect(moved.find((line) => line.includes("Einheit"))).toBe(
      "Polymer A, Einheit der Einstellung: war %, Handelsware, ml, ist jetzt % Hub, Lösung, ml; die Zahl am Bedienfeld bedeutet etwas anderes",
    );
    const drawn = now(
      apply(again, { do: "set", kind: "drawDown", id: "draw-1", fields: { amount: 15 } }),
    ).moved;
    expect(drawn[0]).toMatch(/^Polymer A, Kalibrierung: wurde geändert; /);
  });

  it("keeps the same values in an approval, whatever is spoken", () => {
    const values = (state: StudyState) =>
      tableInputs(state, chainOf(state)).map(({ key, value }) => [key, value]);
    const demo = demoState(at);
    const english = values(demo);
    speak("german", german);
    expect(values(JSON.parse(JSON.stringify(demo)) as StudyState)).toEqual(english);
  });

  it("says in German what drifts and what a run lacks", () => {
    speak("german", german);
    const state = Object.values(demoState(at).plantRun)
      .filter(({ kind }) => kind === "routine")
      .slice(-1)
      .reduce(
        (before, { id }) => apply(before, { do: "set", kind: "plantRun", id, fields: { cakePct: 12 } }),
        demoState(at),
      );
    const runs = runsOf(state, "series-1");
    expect(driftChain(runs, "cake").reason).toMatch(/^Betriebsversuch Tag 8: Kuchen-TR liegt unter dem/);
    const settled = runs.find(({ run }) => run.best)!.polymers[0]!;
    expect(settled.actives.map(({ way }) => way)).toEqual(["draw-down", "container", "pump-line"]);
    // what counts lists what every way rests on and each way's own active polymer
    expect(settled.dose.made.inputs).toEqual([
      ...settled.basis,
      ...settled.actives.map(({ input }) => input),
    ]);
    expect(settled.actives.map(({ input }) => input.name)[0]).toBe("Wirksubstanz nach: Auslitern");
  });
});

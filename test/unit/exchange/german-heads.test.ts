import { describe, expect, test } from "vitest";
import { guessUses, plainHead, usesByHeads, type ColumnUse } from "../../../src/exchange/columns.ts";

const said = (use: ColumnUse) =>
  use.as === "field" ? use.field : use.as === "dose" ? `dose ${use.polymer}` : "ignored";

describe("the heads of a German sheet", () => {
  const cases: [string, string][] = [
    ["Versuchsreihe", "series"],
    ["Becher-Nr.", "jar"],
    ["Reihenfolge", "order"],
    ["Eimer", "block"],
    ["Dosis (kg/t)", "dose a"],
    ["Spritze B (mL)", "dose b"],
    ["Ausgleichswasser (mL)", "blank_water_ml"],
    ["Probenvolumen (mL)", "sample_volume_ml"],
    ["Verdünnung", "turbidity_dilution"],
    ["Trübung (NTU)", "turbidity_ntu"],
    ["Trübung (FNU)", "turbidity_fnu"],
    ["AFS im Filtrat (mg/L)", "filtrate_tss_mg_per_l"],
    ["kapillare Fließzeit (s)", "cst_s"],
    ["Kuchen-TR (%)", "cake_ts_pct"],
    ["Entwässerungszeit", "drained_at_s"],
    ["abgelaufenes Volumen (mL)", "drained_ml"],
    ["Abscheidegrad (%)", "capture_pct"],
    ["Flockennote", "floc_grade"],
    ["Bemerkungen", "note"],
    ["Wetter", "ignored"],
  ];
  test("are recognised for a person to confirm, unit and basis of a dose left open", () => {
    const uses = guessUses(cases.map(([head]) => head));
    expect(cases.map(([head], index) => [head, said(uses[index]!)])).toEqual(cases);
    expect(uses[4]).toEqual({ as: "dose", polymer: "a", unit: null, basis: null });
  });

  test("are made plain without losing their umlauts", () => {
    expect(plainHead("Trübung, groß")).toBe("truebung_gross");
    expect(plainHead("Turbidity (NTU)")).toBe("turbidity_ntu");
  });

  test("that speak of a dose without unit and basis are refused where nobody can be asked", () => {
    expect(usesByHeads(["Becher", "Dosis"], "blatt.csv")).toMatchObject({ ok: false });
    expect(usesByHeads(["Becher", "Spritze"], "blatt.csv")).toMatchObject({ ok: false });
    expect(usesByHeads(["Becher", "dose_a_kg_per_t"], "blatt.csv")).toMatchObject({ ok: true });
  });
});

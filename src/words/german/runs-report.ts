import { counted } from "../language.ts";
import type { runsReportWords } from "../runs-report.ts";

const runs = (count: number) => counted(count, "Betriebsversuch", "Betriebsversuchen");

export const runsReport: typeof runsReportWords = {
  title: "Betriebsversuche",
  none: "Keine Betriebsversuche eingetragen.",
  kinds: { step: "Stufenversuch", routine: "Routine", comparison: "Vergleich" },
  runs: {
    caption: "Betriebsversuche wie eingetragen; –: nicht gemessen",
    run: "Versuch",
    whenBy: "wann, von wem",
    kind: "Art",
    feed: "Zulauf, m³/h (gal/min)",
    totalSolids: "TR, %",
    dose: "Dosis, kg WS/t (lb/short ton)",
    cake: "Kuchen-TR, %",
    filtrate: "TSS im Filtrat, mg/L",
    capture: "Ab\u00adscheide\u00adgrad, %",
    machine: "Maschine",
    counts: "zählt, Be\u00admer\u00adkungen",
    noRow: "keine",
    doses: (doses) => doses.join(" und "),
    leftOut: "WEGGELASSEN",
    forFactor: "für den Übertragungsfaktor",
  },
  ways: {
    caption: "Dosis jedes Betriebsversuchs auf jedem eingetragenen Weg, kg WS/t (lb/short ton)",
    polymer: "Polymer",
    differ: "Wege weichen ab um",
    benchDose: "Labordosis",
    counting: (dose) => `${dose} (zählt)`,
    notHad: (why) => `nicht ermittelt: ${why}`,
    notLogged: "nicht eingetragen",
    oneAlone: "nur ein Weg",
    differBy: (pct) => `${pct} %`,
    wrong: (pct) => `${pct} %: eine Messung ist falsch`,
  },
  factor: {
    none: (what, why) => `Übertragungsfaktor, ${what}: keiner, ${why}.`,
    inUse: (what, factor, count, range) =>
      `Übertragungsfaktor, ${what}: ${factor} aus ${runs(count)} (${range}); wird für die Einstellungen verwendet.`,
    notInUse: (what, factor, count, range) =>
      `Übertragungsfaktor, ${what}: ${factor} aus ${runs(count)} (${range}); wird nicht verwendet.`,
    oneRun: "ein Betriebsversuch allein hat keine Streuung",
    range: (low, high, spreadPct) => `95 % ${low} bis ${high}, die Versuche streuen um ${spreadPct} %`,
  },
};

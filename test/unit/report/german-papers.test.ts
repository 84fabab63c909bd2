// @vitest-environment jsdom
import { afterEach, describe, expect, test } from "vitest";
import { paperDocument } from "../../../src/report/paper.ts";
import { fitSeries } from "../../../src/report/series-fits.ts";
import { settingSheet } from "../../../src/report/setting-sheet.ts";
import { trialReport } from "../../../src/report/trial-report.ts";
import type { Command } from "../../../src/study/commands.ts";
import type { StudyState } from "../../../src/study/schema/records.ts";
import { german } from "../../../src/words/german/all.ts";
import { speak, type Language } from "../../../src/words/language.ts";
import { parsed, textOf } from "./page-text.ts";
import { demo, edited, now, paperInput, sheetInput, twoPolymers } from "./studies.ts";

afterEach(() => speak("english", null));

/** A paper made in a language, curves and all. */
function inLanguage(language: Language, make: () => string): string {
  speak(language, language === "german" ? german : null);
  try {
    return make();
  } finally {
    speak("english", null);
  }
}
const sheetIn = (language: Language, state: StudyState, seriesId = "series-1") =>
  inLanguage(language, () => paperDocument(settingSheet(sheetInput(state, { seriesId }))));
const reportIn = (language: Language, state: StudyState) =>
  inLanguage(language, () => {
    const fits = Object.keys(state.series).map((id) => fitSeries(state, id));
    return paperDocument(trialReport({ ...paperInput(state), fits }));
  });

/** Every number that a reader sees, each as often as it stands there; dates are written the language's own way. */
function numbersOn(page: string): string[] {
  const text = textOf(page).replace(/\b(?:\d{4}-\d\d-\d\d|\d\d\.\d\d\.\d{4})\b/g, "");
  return (text.match(/\d+(?:[.,]\d+)*/g) ?? []).sort();
}

const withdrawn = edited(demo, {
  do: "set",
  kind: "decision",
  id: "decision-1",
  fields: { withdrawn: { byName: "J", at: now, reason: "wrong lot" } },
});
const stale = edited(demo, { do: "set", kind: "dish", id: "dish-1", fields: { dryG: 47.7 } });

describe("the setting sheet in German", () => {
  test("says what the English one says, with every number as often", () => {
    for (const state of [demo, withdrawn, stale, edited(demo, comma())])
      expect(numbersOn(sheetIn("german", state))).toEqual(numbersOn(sheetIn("english", state)));
    const two = twoPolymers(48);
    expect(numbersOn(sheetIn("german", two, "series-2"))).toEqual(
      numbersOn(sheetIn("english", two, "series-2")),
    );
  });
  test("has its own words, tells its language and writes dates the German way", () => {
    const page = sheetIn("german", demo);
    expect(parsed(page).documentElement.lang).toBe("de");
    const text = textOf(page);
    for (const words of [
      "Einstellblatt Demo",
      "Für Zulauf Day (üblicher):",
      "Neat pump P1 (Handelsware) einstellen auf",
      "94.9 % 94.3 bis 95.6 % (95 %, nur Pumpengerade)",
      "Soll 4.79 L/h",
      "79.8 mL in 60 s im Messzylinder (zulässig von 78.5 bis 81.1 mL)",
      "5.2 kg/t (10.4 lb/short ton) WS = 12.4 kg/t (24.8 lb/short ton) Handelsware",
      "Regel: eigenes Urteil. Begründung: Well inside",
      "(6 h vor diesem Druck)",
      "76.9 85.7 94.9 darüber darüber",
      "Verlaufseintrag 10, Hash ab 01234567 89abcdef.",
      "Gedruckt 04.05.2026 14:00 UTC+2",
    ])
      expect(text).toContain(words);
    expect(text).not.toMatch(
      /\b(?:Setting|Dose|approved|Expect|Valid|Rule|Reason|Solution|Water|Product|Missing)\b/,
    );
  });
  test("is as loud where it must not be used", () => {
    expect(textOf(sheetIn("german", withdrawn))).toContain("NICHT FREIGEGEBEN: nur zur Besprechung");
    expect(textOf(sheetIn("german", stale))).toContain("ÜBERHOLT: hiernach keine Pumpe einstellen");
    expect(textOf(sheetIn("german", demo))).toContain("nach diesem Blatt keine Pumpe einstellen");
    const above = inLanguage("german", () =>
      paperDocument(settingSheet(sheetInput(demo, { feedCaseId: "feed-3" }))),
    );
    expect(textOf(above)).toContain("mehr als die höchste durch Auslitern nachgewiesene Einstellung");
  });
});

function comma(): Command {
  return { do: "set", kind: "study", id: "study", fields: { decimalMark: "," } };
}

describe("the trial report in German", () => {
  const page = reportIn("german", demo);
  test("holds every number of the English one, as often", () => {
    // The formulas and their worked numbers are fixed texts, so they bear the language's own decimal mark.
    const pointed = numbersOn(page).map((number) => number.replace(",", "."));
    expect(pointed.sort()).toEqual(numbersOn(reportIn("english", demo)));
  });
  test("has as many tables, rows and charts, and German heads", () => {
    const shape = (html: string) => {
      const body = parsed(html);
      return {
        charts: body.querySelectorAll("svg").length,
        tables: [...body.querySelectorAll("table")].map(({ rows }) => [rows.length, rows[0]!.cells.length]),
        facts: body.querySelectorAll("dt").length,
      };
    };
    expect(shape(page)).toEqual(shape(reportIn("english", demo)));
    const text = textOf(page);
    for (const words of [
      "Versuchsbericht: Demo",
      "Gedruckt 04.05.2026 14:00 UTC+2 von Flocwright 0.0.0",
      "Schalen, in g",
      "Produkte und Stammlösungen",
      "Jeder Becher mit jeder Ablesung",
      "schnell rühren mit",
      "Arbeitsfenster: 4.12 bis 7.05 kg/t",
      "Günstigstes Paar innerhalb aller Grenzwerte: A 6.94 kg/t",
      "Auslitermessungen",
      "fragen.",
      "In US-Einheiten: 10.4 lb/short ton",
      "Mengenströme bei der freigegebenen Dosis, je Zulauffall",
      "Nummern: Becher;",
      "Wo die Grenzwerte eingehalten sind. Arbeitsfenster",
      "Residuen der vorgeschlagenen Modelle",
      "Schnitt durch das Paar nach der Regel",
      "Die Auslitermessungen stehen in der Tabelle darüber.",
      "nicht geprüft",
      "freigegeben 5.2",
      "Betriebsversuche",
    ])
      expect(text).toContain(words);
  });
  test("an empty study says in German what it has not", () => {
    const bare = edited(
      { ...demo, ...Object.fromEntries(Object.keys(demo).map((kind) => [kind, {}])) } as StudyState,
      { do: "add", kind: "study", record: { id: "study", name: "Leer" } },
    );
    const text = textOf(reportIn("german", bare));
    for (const words of [
      "Noch keine Probe.",
      "Produkte als Handelsware: keine eingetragen.",
      "Noch keine Reihe.",
      "Keine Pumpe ist eingetragen.",
      "Keine Maschine ist eingetragen.",
    ])
      expect(text).toContain(words);
    expect(text).not.toMatch(/NaN|Infinity|undefined|null|\[object/);
  });
});

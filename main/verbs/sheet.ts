import { bad, good, type Outcome } from "../../src/outcome.ts";
import { settingSheet } from "../../src/report/setting-sheet.ts";
import { sheetFacts } from "../../src/report/sheet-facts.ts";
import { paperDocument } from "../../src/report/paper.ts";
import type { StudyState } from "../../src/study/schema/records.ts";
import { inLanguage } from "./language-option.ts";
import { paperArguments, paperInput, writePaper } from "./paper-file.ts";
import type { Verb } from "./verb.ts";

const usage = "sheet STUDY.flocwright --out FILE.html [--series NAME] [--feed NAME] [--language german]";

/** `sheet`: the setting sheet of a series (the one decided last, unless named) as an HTML file of its own. */
export const sheet: Verb = {
  usage,
  run: runSheet,
};

async function runSheet(args: string[]): Promise<Outcome<unknown>> {
  const words = paperArguments(args, { series: { type: "string" }, feed: { type: "string" } }, usage);
  if (!words.ok) return words;
  const { study, out, language, values } = words.value;
  const input = paperInput(study);
  if (!input.ok) return input;
  const { state } = input.value;
  const seriesId = seriesOf(state, values["series"]);
  if (!seriesId.ok) return bad(`${study}: ${seriesId.message}`);
  const feedCaseId = feedOf(state, values["feed"]);
  if (!feedCaseId.ok) return bad(`${study}: ${feedCaseId.message}`);
  const whole = { ...input.value, seriesId: seriesId.value, feedCaseId: feedCaseId.value, lookedAt: null };
  const written = writePaper(out, await inLanguage(language, () => paperDocument(settingSheet(whole))));
  if (!written.ok) return written;
  const { status, series, feed, missing, polymers } = sheetFacts(whole);
  return good({
    file: out,
    series: series.label,
    feed: feed?.feedCase.label ?? null,
    status,
    missing,
    settings: polymers.map(({ polymer, setting }) => ({
      polymer: polymer.letter,
      pump: polymer.pump?.pump.label ?? null,
      setting: setting.kind === "setting" ? `${setting.text} ${setting.unit}` : null,
      words: setting.kind === "words" ? setting.text : null,
    })),
  });
}

/** The series named, or the one that was decided last, or the first there is. */
function seriesOf(state: StudyState, named: unknown): Outcome<string> {
  const all = Object.values(state.series).sort((a, b) => (a.id < b.id ? -1 : 1));
  if (typeof named === "string") {
    const found = all.find(({ label }) => label === named);
    return found ? good(found.id) : bad(`there is no series called "${named}".`);
  }
  const decided = Object.values(state.decision)
    .filter(({ withdrawn }) => withdrawn === null)
    .sort((a, b) => Date.parse(b.at) - Date.parse(a.at))[0];
  const id = decided?.seriesId ?? all[0]?.id;
  return id === undefined ? bad("there is no series yet, so there is nothing to set.") : good(id);
}

function feedOf(state: StudyState, named: unknown): Outcome<string | null> {
  if (typeof named !== "string") return good(null);
  const found = Object.values(state.feedCase).find(({ label }) => label === named);
  return found ? good(found.id) : bad(`there is no feed case called "${named}".`);
}

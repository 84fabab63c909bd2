import { analyseJars } from "../../src/curve/analyse.ts";
import type { AnalyseRow } from "../../src/curve/analyse-types.ts";
import { responseSpecs } from "../../src/responses/registry.ts";
import { nextJars } from "../../src/choice/next-jars.ts";
import { robustRefit } from "../../src/curve/robust.ts";
import type { FitAnswer, FitPart, FitQuestion } from "./messages.ts";
import { doseWords } from "../../src/units/dose-words.ts";
import { speakLanguage } from "../../src/words/speak-language.ts";
import { packWorkings } from "./pack.ts";

/** questions whose rows come in parts, by their numbers */
const begun = new Map<number, Pick<FitQuestion, "rows" | "labels">>();

// Fits run here, off the screen's thread, so that typing never waits for one.
addEventListener("message", ({ data }: MessageEvent<FitQuestion | FitPart>) => {
  const before = begun.get(data.id) ?? { rows: [], labels: [] };
  const rows = before.rows.concat(data.rows);
  const labels = before.labels.concat(data.labels);
  if ("more" in data) return void begun.set(data.id, { rows, labels });
  begun.delete(data.id);
  void answer({ ...data, rows, labels });
});

async function answer({ id, rows, labels, mark, language, system, name }: FitQuestion): Promise<void> {
  await speakLanguage(language);
  const doses = doseWords(mark, system);
  const jarNames = new Map(labels);
  const result = analyseJars(rows as AnalyseRow[], {
    name,
    responses: responseSpecs,
    number: doses.number,
    doseUnit: doses.unit,
    jar: (row) => jarNames.get(row) ?? String(row),
  });
  const answered: FitAnswer = result.ok
    ? {
        id,
        ok: true,
        analysis: result.value.analysis,
        workings: packWorkings(result.value.workings),
        extras: result.value.workings.map(({ analysis, fit }) => ({
          name: analysis.name,
          robust: fit ? robustRefit(fit) : null,
          next: fit && analysis.verdict.kind !== "none" ? nextJars(fit) : null,
        })),
      }
    : { id, ok: false, message: result.message };
  postMessage(answered);
}

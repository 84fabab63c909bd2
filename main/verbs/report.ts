import { good, type Outcome } from "../../src/outcome.ts";
import { paperDocument } from "../../src/report/paper.ts";
import { fitSeries } from "../../src/report/series-fits.ts";
import { trialReport } from "../../src/report/trial-report.ts";
import { inLanguage } from "./language-option.ts";
import { paperArguments, paperInput, writePaper } from "./paper-file.ts";
import type { Verb } from "./verb.ts";

const usage = "report STUDY.flocwright --out FILE.html [--language german]";

/** `report`: the whole trial with its curves as an HTML file of its own. */
export const report: Verb = {
  usage,
  run: runReport,
};

async function runReport(args: string[]): Promise<Outcome<unknown>> {
  const words = paperArguments(args, {}, usage);
  if (!words.ok) return words;
  const { study, out, language } = words.value;
  const input = paperInput(study);
  if (!input.ok) return input;
  const { state } = input.value;
  const series = Object.values(state.series).sort((a, b) => (a.id < b.id ? -1 : 1));
  // The curves' own sentences are written with them, in the paper's language.
  const { fits, page } = await inLanguage(language, () => {
    const fits = series.map(({ id }) => fitSeries(state, id));
    return { fits, page: paperDocument(trialReport({ ...input.value, fits })) };
  });
  const written = writePaper(out, page);
  if (!written.ok) return written;
  return good({
    file: out,
    samples: Object.keys(state.sample).length,
    series: series.map(({ label }, i) => ({
      label,
      curves:
        fits[i]!.analysis?.responses.map(({ name, verdict }) => ({ name, verdict: verdict.kind })) ?? [],
    })),
    decisions: Object.keys(state.decision).length,
  });
}

import { good, type Outcome } from "../../src/outcome.ts";
import { fitSeries } from "../../src/report/series-fits.ts";
import { trialReport } from "../../src/report/trial-report.ts";
import { paperArguments, paperInput, writePaper } from "./paper-file.ts";
import type { Verb } from "./verb.ts";

const usage = "report STUDY.flocwright --out FILE.html";

/** `report`: the whole trial with its curves as an HTML file of its own. */
export const report: Verb = {
  usage,
  run: (args) => Promise.resolve(runReport(args)),
};

function runReport(args: string[]): Outcome<unknown> {
  const words = paperArguments(args, {}, usage);
  if (!words.ok) return words;
  const { study, out } = words.value;
  const input = paperInput(study);
  if (!input.ok) return input;
  const { state } = input.value;
  const series = Object.values(state.series).sort((a, b) => (a.id < b.id ? -1 : 1));
  const fits = series.map(({ id }) => fitSeries(state, id));
  const written = writePaper(out, trialReport({ ...input.value, fits }));
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

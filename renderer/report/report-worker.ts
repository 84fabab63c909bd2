import { fitSeries, type SeriesFits } from "../../src/report/series-fits.ts";
import { trialReport } from "../../src/report/trial-report.ts";
import { speakLanguage } from "../../src/words/speak-language.ts";
import { stateReceiver } from "../worker/send-state.ts";
import type { ReportAnswer, ReportQuestion } from "./report-messages.ts";

// Reports are fitted and written here, off the screen's thread; a cancelled one is simply ended with the worker.
const study = stateReceiver();
let fits: SeriesFits[] | null = null;
const say = (answer: ReportAnswer) => postMessage(answer);

function fitAll(id: number): SeriesFits[] {
  const ids = Object.keys(study.state().series).sort();
  return ids.map((seriesId, done) => {
    say({ id, say: "fitting", done, total: ids.length });
    return fitSeries(study.state(), seriesId);
  });
}

addEventListener("message", async ({ data }: MessageEvent<ReportQuestion>) => {
  if (data.do === "state") {
    fits = null;
    return study.take(data);
  }
  const { id, base, language } = data;
  await speakLanguage(language);
  try {
    fits ??= fitAll(id);
    say({ id, say: "made", paper: trialReport({ ...base, state: study.state(), fits }) });
  } catch {
    say({ id, say: "failed" });
  }
});

import { svgFile, type Drawing } from "../../src/report/drawing.ts";
import { historyWords } from "../../src/report/paper-input.ts";
import { chartWords } from "../../src/words/charts.ts";
import { call } from "../client.ts";
import { useChain } from "../stores/chain.ts";
import { useStudy } from "../stores/study.ts";

const hashDigits = 16;

/** Makes a drawing into a file that says where it comes from: study, series (if it is of one), moment, history entry. */
export function useChartFile() {
  const study = useStudy();
  const chain = useChain();

  return async function file(drawing: Drawing, title: string, ofSeries = true): Promise<string> {
    const anchor = await call("study.anchor", {});
    const series = ofSeries ? chain.series?.series.label : undefined;
    const says = chartWords.file;
    const source = [
      says[study.study?.invented ? "inventedStudy" : "study"](study.study?.name ?? ""),
      ...(series ? [says.series(series)] : []),
      says.saved(new Date().toISOString().slice(0, 16).replace("T", " ")),
      anchor.ok ? historyWords(anchor.value, hashDigits) : says.noHistory,
    ].join("; ");
    return svgFile(drawing, title, `${source}.`);
  };
}

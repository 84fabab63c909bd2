import { svgFile, type Drawing } from "../../src/report/drawing.ts";
import { historyWords } from "../../src/report/paper-input.ts";
import { call } from "../client.ts";
import { useChain } from "../stores/chain.ts";
import { useStudy } from "../stores/study.ts";

const hashDigits = 16;

/** Makes a drawing into a file that says where it comes from: study, series, moment and history entry. */
export function useChartFile() {
  const study = useStudy();
  const chain = useChain();

  return async function file(drawing: Drawing, title: string): Promise<string> {
    const anchor = await call("study.anchor", {});
    const series = chain.series?.series.label;
    const source = [
      `study ${study.study?.name ?? ""}${study.study?.invented ? " (every number is invented: a demonstration)" : ""}`,
      ...(series ? [`series ${series}`] : []),
      `saved ${new Date().toISOString().slice(0, 16).replace("T", " ")} UTC`,
      anchor.ok ? historyWords(anchor.value, hashDigits) : "the history could not be read",
    ].join("; ");
    return svgFile(drawing, title, `${source}.`);
  };
}

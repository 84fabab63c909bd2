import { analyseJars } from "../curve/analyse.ts";
import type { Analysis, ResponseWorking } from "../curve/analyse-types.ts";
import { responseSpecs } from "../responses/registry.ts";
import { seriesChain } from "../study/derive/jars.ts";
import { analyseRows } from "../study/derive/points.ts";
import type { StudyState } from "../study/schema/records.ts";
import { doseWords } from "../units/dose-words.ts";
import { reportWords } from "../words/report.ts";

/** The curves of one series, however they were fitted. */
export interface SeriesFits {
  seriesId: string;
  /** null where there was nothing to fit */
  analysis: Analysis | null;
  workings: ResponseWorking[];
  /** why there are no curves, where that is known */
  trouble: string;
}

/** Fits one series here and now. A screen has this done by its own thread instead. */
export function fitSeries(state: StudyState, seriesId: string): SeriesFits {
  const chain = seriesChain(state, seriesId);
  const mark = state.study["study"]?.decimalMark ?? ".";
  const [metric, us] = [doseWords(mark, "metric"), doseWords(mark, "us")];
  const { rows, labels } = analyseRows(chain);
  if (rows.length === 0) return { seriesId, analysis: null, workings: [], trouble: reportWords.noReading };
  const result = analyseJars(rows, {
    name: chain.series.label,
    responses: responseSpecs,
    number: metric.number,
    doseUnit: metric.unit,
    beside: { number: us.number, doseUnit: us.unit },
    jar: (row) => labels.get(row) ?? String(row),
  });
  return result.ok
    ? { seriesId, analysis: result.value.analysis, workings: result.value.workings, trouble: "" }
    : { seriesId, analysis: null, workings: [], trouble: result.message };
}

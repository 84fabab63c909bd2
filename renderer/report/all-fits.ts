import type { SeriesFits } from "../../src/report/series-fits.ts";
import { seriesChain } from "../../src/study/derive/jars.ts";
import { analyseRows } from "../../src/study/derive/points.ts";
import type { StudyState } from "../../src/study/schema/records.ts";
import { askFits } from "../worker/client.ts";
import { unpackWorkings } from "../worker/pack.ts";

/** Has every series of a study fitted off the screen's thread, in the order of the series. */
export async function fitAll(state: StudyState): Promise<SeriesFits[]> {
  const mark = state.study["study"]?.decimalMark ?? ".";
  const ids = Object.keys(state.series).sort();
  return Promise.all(
    ids.map(async (seriesId): Promise<SeriesFits> => {
      const chain = seriesChain(state, seriesId);
      const { rows, labels } = analyseRows(chain);
      if (rows.length === 0)
        return { seriesId, analysis: null, workings: [], trouble: "no jar has a dose and a reading yet" };
      const answer = await askFits({
        rows,
        labels: [...labels],
        mark,
        system: "metric",
        name: chain.series.label,
      });
      return answer.ok
        ? { seriesId, analysis: answer.analysis, workings: unpackWorkings(answer.workings), trouble: "" }
        : { seriesId, analysis: null, workings: [], trouble: answer.message };
    }),
  );
}

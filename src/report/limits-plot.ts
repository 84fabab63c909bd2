import type { LimitBar } from "../study/derive/choice.ts";
import type { Span } from "../choice/limits.ts";
import { doseRoomWords } from "../words/dose-room.ts";
import { paperSize } from "./drawing.ts";
import type { Plot, PlotSize } from "./plot.ts";

/** Where limits hold, in the unit that doses are shown in. */
export interface LimitsShown {
  tested: Span;
  bars: Pick<LimitBar, "mean" | "bound">[];
  /** the limits in words, in the order of the bars */
  names: string[];
  window: Span[];
  /** what the working window is, as a sentence */
  sentence: string;
  doseAxis: string;
  marks: { dose: number; name: string; look: "here" | "today" }[];
}

/** Room beside the plates of limits and cost, so that both stand on one dose axis. */
export const besideChoice = { left: 176, right: 88 };
/** A mark at a dose that was tested; none elsewhere, since nothing is drawn there. */
export function markWithin(
  { low, high }: Span,
  dose: number | null,
  look: "here" | "today",
  nameOf: (dose: number) => string,
): LimitsShown["marks"] {
  return dose !== null && dose >= low && dose <= high ? [{ dose, name: nameOf(dose), look }] : [];
}

/** half of a bar, of a row of 1 */
const half = 0.3;
const rowHeight = 22;
const aroundRows = 68;

/** Every limit as a row with the doses at which it holds, the working window under them; the bars of the Dose room. */
export function limitsPlot(shown: LimitsShown): Plot {
  const { tested, bars, names, window, marks } = shown;
  const says = doseRoomWords.limits;
  // The lowest row is the window; over the bars each mark has a row for its name.
  const rowOf = (index: number) => bars.length - index + 0.5;
  const piece = (look: "layer-1" | "layer-3", middle: number, { low, high }: Span) => ({
    look,
    name: "",
    points: [low, high].map((x) => ({ x, low: middle - half, high: middle + half })),
  });
  return {
    title: says.title,
    sentence: shown.sentence,
    x: { title: shown.doseAxis, low: tested.low, high: tested.high },
    y: {
      title: "",
      low: 0,
      high: bars.length + 1 + marks.length * 0.6,
      named: [
        ...names.map((text, index) => ({ value: rowOf(index), text })),
        { value: rowOf(bars.length), text: says.window },
      ],
    },
    bands: [
      ...bars.flatMap(({ mean, bound }, index) => [
        ...mean.map((span) => piece("layer-1", rowOf(index), span)),
        ...bound.map((span) => piece("layer-3", rowOf(index), span)),
      ]),
      ...window.map((span) => piece("layer-3", rowOf(bars.length), span)),
    ],
    uprights: marks.map(({ dose, name, look }) => ({ x: dose, name, look })),
  };
}

/** How large it is drawn on paper and in a file: a row a limit, room for their names. */
export function limitsSize({ bars, marks }: LimitsShown): PlotSize {
  const height = aroundRows + rowHeight * (bars.length + 1 + marks.length * 0.6);
  return { ...paperSize, ...besideChoice, height };
}

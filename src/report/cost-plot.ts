import { costAt, type CostInput, type CostParts } from "../choice/cost.ts";
import type { Span } from "../choice/limits.ts";
import { doseRoomWords } from "../words/dose-room.ts";
import type { Plot } from "./plot.ts";

/** How the costs of a dose are written. */
export interface CostPlotWords {
  doseAxis: string;
  currency: string;
  number(value: number): string;
  /** a dose and a cost with their units */
  dose(shown: number): string;
  money(value: number | null): string;
}

/** one step more has a sample at either end */
export const costSteps = 60;

/** What every dose tested costs, in kg/t. */
export function costSamples(tested: Span, cost: CostInput): ({ dose: number } & CostParts)[] {
  return Array.from({ length: costSteps + 1 }, (_, i) => {
    const dose = tested.low + ((tested.high - tested.low) * i) / costSteps;
    return { dose, ...costAt(dose, cost) };
  });
}

/** The cost of a tonne of dry solids against dose, one part upon the other; doses in the unit they are shown in. */
export function costPlot(
  samples: ({ dose: number } & CostParts)[],
  picked: number | null,
  words: CostPlotWords,
): Plot {
  const says = doseRoomWords.cost;
  const total = (one: CostParts) => one.total ?? 0;
  const least = samples.reduce((a, b) => (total(b) < total(a) ? b : a));
  const parts = [
    { look: "layer-1", name: says.disposal, of: (one: CostParts) => one.disposal },
    { look: "layer-2", name: says.returnLoad, of: (one: CostParts) => one.returnLoad },
    { look: "layer-3", name: says.polymer, of: (one: CostParts) => one.polymer },
  ] as const;
  const priced = parts.filter(({ of }) => samples.some((one) => of(one) !== null));
  const upTo = (one: CostParts, count: number) =>
    priced.slice(0, count).reduce((sum, { of }) => sum + (of(one) ?? 0), 0);
  return {
    title: says.table,
    sentence: says.drawing(words.dose(least.dose), words.money(least.total)),
    x: { title: words.doseAxis, low: samples[0]!.dose, high: samples.at(-1)!.dose },
    y: { title: says.axis(words.currency), low: 0, high: Math.max(...samples.map(total)) * 1.08 || 1 },
    bands: priced.map(({ look, name }, i) => ({
      look,
      name,
      points: samples.map((one) => ({ x: one.dose, low: upTo(one, i), high: upTo(one, i + 1) })),
    })),
    lines: [
      {
        look: "line",
        name: priced.length > 1 ? says.total : "",
        points: samples.map((one) => ({ x: one.dose, y: total(one) })),
      },
    ],
    uprights: picked === null ? [] : [{ x: picked, name: words.dose(picked) }],
    readings: samples.map((one) => ({
      x: one.dose,
      y: total(one),
      says: `${words.dose(one.dose)}: ${words.money(one.total)} (${priced
        .map(({ name, of }) => `${name} ${words.number(of(one) ?? 0)}`)
        .join(", ")})`,
    })),
  };
}

import { flowAt, type Draw } from "../plant/pump-line.ts";
import { settingWords, type PumpChain } from "../study/derive/plant-pump.ts";
import { chartWords } from "../words/charts.ts";
import { plantPumpWords } from "../words/plant-pumps.ts";
import type { Plot } from "./plot.ts";

const steps = 40;

/** The unit of a pump's flow, as it was caught. */
const flowUnit = ({ pump }: PumpChain) => (pump.measuredIn === "g" ? "g/min" : "mL/min");

/** A pump's draw-downs with its line and the band of one more; null where there is no line. */
export function pumpPlot(chain: PumpChain, number: (value: number) => string): Plot | null {
  const { line, flows, pump } = chain;
  if (!line.ok || flows.length === 0) return null;
  const settings = flows.map(({ setting }) => setting);
  const [low, high] = [Math.min(...settings), Math.max(...settings)];
  const air = (high - low) * 0.25;
  const along = Array.from({ length: steps + 1 }, (_, i) => {
    const setting = low + ((high - low) * i) / steps;
    return { x: setting, ...flowAt(line.value, setting) };
  });
  const band = along.flatMap(({ x, flow, halfWidth }) =>
    halfWidth === null ? [] : [{ x, low: flow - halfWidth, high: flow + halfWidth }],
  );
  const top = Math.max(...flows.map(({ flow }) => flow), ...band.map((one) => one.high));
  const unit = settingWords(pump);
  const says = ({ setting, flow }: Draw) =>
    plantPumpWords.point(number(setting), unit, number(flow), flowUnit(chain));
  return {
    title: plantPumpWords.lineOf(pump.label),
    sentence: plantPumpWords.chart(flows.length),
    x: {
      title: plantPumpWords.draws.inUnit(plantPumpWords.draws.setting, unit),
      low: Math.max(0, low - air),
      // A share of the pump's whole reach ends at 100.
      high: pump.settingUnit.startsWith("%") ? Math.max(high, Math.min(100, high + air)) : high + air,
    },
    y: {
      title: plantPumpWords.flowIn(flowUnit(chain)),
      low: 0,
      high: top * 1.06,
    },
    tested: { low, high },
    bands: band.length > 0 ? [{ look: "band", name: chartWords.lines.band, points: band }] : [],
    lines: [
      {
        look: "line",
        name: plantPumpWords.figures.line,
        points: along.map(({ x, flow }) => ({ x, y: flow })),
      },
    ],
    points: flows.map((one) => ({
      x: one.setting,
      y: one.flow,
      look: "point",
      name: "",
      says: says(one),
    })),
  };
}

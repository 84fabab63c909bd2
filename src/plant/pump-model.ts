import { bad, good, type Outcome } from "../outcome.ts";
import {
  bySetting,
  fitPumpLine,
  flowAt,
  lackOfFitOf,
  type Draw,
  type LackOfFit,
  type PumpLine,
} from "./pump-line.ts";
import { fitShape, shapeSlope } from "./pump-shape.ts";
import { plantFormulaWords } from "../words/plant-formulas.ts";

/** What the crew asks for: the line unless repeats contradict it, or one of the two by hand. */
export interface PumpWish {
  shape: "auto" | "line" | "curve";
  /** "relative": each draw counts by the inverse square of its flow, for scatter that grows with the flow */
  weights: "equal" | "relative";
}

/** The line or curve in use, and why. */
export interface PumpModel {
  line: PumpLine;
  used: "line" | "curve";
  /** lack of fit of what is used, and of the plain line beside it; null where repeats do not allow the test */
  lackOfFit: LackOfFit | null;
  lineLackOfFit: LackOfFit | null;
  reason: string;
  /** true where what is used contradicts its own repeats */
  doubtful: boolean;
}

const fails = (lack: LackOfFit | null) => lack !== null && lack.p < 0.05;

/** Flow against setting as a line; as a quadratic where repeats show that the line fails (5 %), or where asked. */
export function choosePumpModel(draws: Draw[], wish: PumpWish): Outcome<PumpModel> {
  const straight = withWeights(draws, 1, wish.weights);
  if (!straight.ok) return straight;
  const lineLackOfFit = lackFor(draws, straight.value, 2, wish.weights);
  const asLine = (reason: string): Outcome<PumpModel> =>
    good({
      line: straight.value,
      used: "line",
      lackOfFit: lineLackOfFit,
      lineLackOfFit,
      reason,
      doubtful: fails(lineLackOfFit),
    });
  if (wish.shape === "line") return asLine(plantFormulaWords.pump.lineAsked);
  if (wish.shape === "auto" && !fails(lineLackOfFit))
    return asLine(lineLackOfFit ? plantFormulaWords.pump.linePasses : plantFormulaWords.pump.lineUntold);
  const curve = withWeights(draws, 2, wish.weights);
  if (!curve.ok)
    return wish.shape === "curve" ? curve : asLine(plantFormulaWords.pump.lineFails(curve.message));
  const lackOfFit = lackFor(draws, curve.value, 3, wish.weights);
  return good({
    line: curve.value,
    used: "curve",
    lackOfFit,
    lineLackOfFit,
    reason: wish.shape === "curve" ? plantFormulaWords.pump.curveAsked : plantFormulaWords.pump.curveNeeded,
    doubtful: fails(lackOfFit),
  });
}

function weightFor(draws: Draw[], weights: PumpWish["weights"]): (setting: number) => number {
  if (weights === "equal") return () => 1;
  const means = new Map(bySetting(draws).map(({ setting, mean }) => [setting, mean]));
  return (setting) => 1 / means.get(setting)! ** 2;
}

function lackFor(draws: Draw[], line: PumpLine, parameters: number, weights: PumpWish["weights"]) {
  return lackOfFitOf(draws, (setting) => flowAt(line, setting).flow, parameters, weightFor(draws, weights));
}

function withWeights(draws: Draw[], degree: 1 | 2, weights: PumpWish["weights"]): Outcome<PumpLine> {
  const plain = fitPumpLine(draws);
  if (!plain.ok || (degree === 1 && weights === "equal")) return plain;
  const weight = weightFor(draws, weights);
  const fitted = fitShape(
    draws.map((draw) => ({ ...draw, weight: weight(draw.setting) })),
    degree,
    weights === "relative",
  );
  if (!fitted.ok) return fitted;
  const { shape, residualSd } = fitted.value;
  const { low, high } = plain.value.tested;
  if (!(shapeSlope(shape, low) > 0 && shapeSlope(shape, high) > 0))
    return bad(plantFormulaWords.pump.turnsBack);
  const line: PumpLine = { ...plain.value, residualSd, shape };
  return good({
    ...line,
    testedFlow: { low: flowAt(line, low).flow, high: flowAt(line, high).flow },
  });
}

/** Keeps the proven range inside what the panel can be set to. */
export function withinPanel(line: PumpLine, lowest: number | null, highest: number | null): PumpLine {
  const low = Math.max(line.tested.low, lowest ?? -Infinity);
  const high = Math.min(line.tested.high, highest ?? Infinity);
  if (low === line.tested.low && high === line.tested.high) return line;
  return {
    ...line,
    tested: { low, high },
    testedFlow: { low: flowAt(line, low).flow, high: flowAt(line, high).flow },
  };
}

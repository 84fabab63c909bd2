import { surfaceBounds, surfaceMean } from "../curve/surface-bands.ts";
import type { SurfaceFit } from "../curve/surface.ts";
import { chartWords } from "../words/charts.ts";
import { curvesRoomWords } from "../words/curves-room.ts";
import type { CurvePoint } from "./curve-points.ts";
import type { Plot } from "./plot.ts";

const steps = 60;

/** A surface cut along one dose, the other held: the doses tested and the mean with its 95 % band; kg/t. */
export function sliceCurve(
  surface: SurfaceFit,
  letter: "a" | "b",
  pair: { a: number; b: number },
): { low: number; high: number; curve: CurvePoint[] } {
  const k = letter === "a" ? 0 : 1;
  const low = surface.middle[k] - surface.half[k];
  const high = surface.middle[k] + surface.half[k];
  const curve = Array.from({ length: steps + 1 }, (_, i) => {
    const dose = low + ((high - low) * i) / steps;
    const [a, b] = letter === "a" ? [dose, pair.b] : [pair.a, dose];
    return { dose, mean: surfaceMean(surface, a, b), ...surfaceBounds(surface, a, b, 0.975) };
  });
  return { low, high, curve };
}

/** A slice as it is drawn on paper, with the pair it goes through. */
export function slicePlot(
  { low, high, curve }: ReturnType<typeof sliceCurve>,
  letter: "A" | "B",
  shown: {
    label: string;
    unit: string;
    log: boolean;
    /** what the other dose is held at, in words */
    held: string;
    limit: { value: number; words: string } | null;
    here: { dose: number; name: string };
  },
): Plot {
  const { label, unit, log, held, limit, here } = shown;
  const values = [...curve.flatMap((at) => [at.low, at.high]), ...(limit ? [limit.value] : [])].filter(
    Number.isFinite,
  );
  const [least, most] = [Math.min(...values), Math.max(...values)];
  const onLog = log && least > 0;
  const air = (most - least || 1) * 0.08;
  return {
    title: curvesRoomWords.surface.along(letter),
    sentence: curvesRoomWords.surface.slice(label, letter, held),
    x: { title: chartWords.doseOnPaper(letter), low, high },
    y: {
      title: `${label}, ${unit}`,
      low: onLog ? least / 1.15 : least - air,
      high: onLog ? most * 1.15 : most + air,
      log: onLog,
    },
    bands: [
      { look: "band", name: "", points: curve.map((at) => ({ x: at.dose, low: at.low, high: at.high })) },
    ],
    levels: limit ? [{ look: "limit", name: limit.words, value: limit.value }] : [],
    lines: [{ look: "line", name: "", points: curve.map(({ dose, mean }) => ({ x: dose, y: mean })) }],
    uprights: [{ x: here.dose, name: here.name }],
  };
}

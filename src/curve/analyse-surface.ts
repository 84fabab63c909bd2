import type { ResponseSpec, ResponseWorking, Verdict, Warning } from "./analyse-types.ts";
import { emptyVerdict, toldTwice, type DoseAround, type WordOptions } from "./analyse-verdict.ts";
import type { JarPoint } from "./jars.ts";
import { pureErrorCells } from "./lack-of-fit.ts";
import { stationaryExtent } from "./surface-bands.ts";
import { fitSurface, type SurfaceFit } from "./surface.ts";
import { surfaceWords, verdictWords } from "../words/curve.ts";

const significance = 0.05;

/** Analyses one response over both doses: the second-order surface and what its stationary point is worth. */
export function analyseSurface(jars: JarPoint[], spec: ResponseSpec, options: WordOptions): ResponseWorking {
  const surface = fitSurface(
    jars.map((jar) => ({
      a: jar.doses[0]!,
      b: jar.doses[1]!,
      y: jar.y,
      row: jar.row,
      allRows: jar.allRows,
      ...(jar.block === undefined ? {} : { block: jar.block }),
      ...(jar.order === undefined ? {} : { order: jar.order }),
      ...(jar.censored === undefined ? {} : { censored: jar.censored }),
    })),
    spec.scale,
  );
  const verdict = toldTwice(options, (told) => verdictOf(surface, jars, spec, told));
  const usable = surface.report.status === "converged" && surface.report.aicc !== null;
  const passes = (surface.report.lackOfFit?.p ?? 1) >= significance;
  return {
    analysis: {
      name: spec.name,
      scale: spec.scale,
      fits: [surface.report],
      suggested: usable && passes ? "surface" : null,
      verdict,
    },
    fit: null,
    surface: surface.report.status === "converged" ? surface : null,
    tied: [],
  };
}

function verdictOf(surface: SurfaceFit, jars: JarPoint[], spec: ResponseSpec, options: WordOptions): Verdict {
  const { number, jar, doseUnit: unit = "kg/t" } = options;
  const { report } = surface;
  const pairs = new Set(
    pureErrorCells(
      jars.map(({ doses }) => doses),
      jars.map(() => ""),
    ),
  ).size;
  const warnings: Warning[] = [];
  if (pairs < 9) warnings.push("few-doses");
  if ((report.lackOfFit?.p ?? 1) < significance) warnings.push("lack-of-fit");
  if (report.outliers.length > 0) warnings.push("outlier");
  if (jars.some((point) => point.censored)) warnings.push("censored");
  if (pairs === jars.length) warnings.push("single-jars");
  const pairWords = (pair: { a: number; b: number }, around?: Record<"a" | "b", DoseAround>) =>
    surfaceWords.pair(number(pair.a, around?.a), number(pair.b, around?.b), unit);

  if (report.status === "too-few-points" || (report.status === "converged" && report.aicc === null))
    return emptyVerdict("too-few-doses", surfaceWords.fewPairs(pairs, jars.length), warnings);
  if (report.status === "singular") return emptyVerdict("too-few-doses", surfaceWords.fewLines, warnings);
  if (warnings.includes("lack-of-fit")) return emptyVerdict("no-model-fits", surfaceWords.misses, warnings);
  if ((report.fModel?.p ?? 1) >= significance)
    return emptyVerdict("no-effect", surfaceWords.noEffect(spec.label), warnings);
  const { stationary } = report;
  if (!stationary) return emptyVerdict("not-curved", surfaceWords.noCurvature(spec.label), warnings);
  const dose = { a: stationary.x1, b: stationary.x2 };
  if (stationary.kind === "ridge") return emptyVerdict("unbounded", surfaceWords.ridge(spec.label), warnings);
  if (stationary.kind !== spec.wanted)
    return emptyVerdict(
      "not-curved",
      surfaceWords.otherKind(spec.label, stationary.kind, spec.wanted),
      warnings,
    );
  const extent = stationaryExtent(surface);
  const interval = extent?.closed ? { low: extent.low, high: extent.high } : { low: null, high: null };
  if (!stationary.inside)
    return {
      ...emptyVerdict("outside-range", surfaceWords.outside(pairWords(dose)), warnings),
      dose,
      ...interval,
      modelInterval: interval,
    };
  if (!extent?.closed)
    return {
      ...emptyVerdict("unbounded", surfaceWords.unclosed, warnings),
      modelInterval: interval,
    };
  const tested = (pick: (point: JarPoint) => number) =>
    [Math.min(...jars.map(pick)), Math.max(...jars.map(pick))] as const;
  const [lowA, highA] = tested((point) => point.doses[0]!);
  const [lowB, highB] = tested((point) => point.doses[1]!);
  if (extent.low.a < lowA || extent.high.a > highA || extent.low.b < lowB || extent.high.b > highB)
    warnings.push("edge");
  const mover = report.influence[0];
  const around = {
    a: { dose: dose.a, low: extent.low.a, high: extent.high.a },
    b: { dose: dose.b, low: extent.low.b, high: extent.high.b },
  };
  const place = surfaceWords.located(
    pairWords(dose, around),
    number(extent.low.a, around.a),
    number(extent.high.a, around.a),
    number(extent.low.b, around.b),
    number(extent.high.b, around.b),
  );
  return {
    kind: "optimum",
    reason: null,
    dose,
    low: extent.low,
    high: extent.high,
    modelInterval: interval,
    sentence: `${mover ? `${place}; ${verdictWords.mover(jar(mover.row))}` : place}.`,
    warnings,
  };
}

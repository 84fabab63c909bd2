import type { ResponseSpec, ResponseWorking, Verdict, Warning } from "./analyse-types.ts";
import { emptyVerdict, type WordOptions } from "./analyse-verdict.ts";
import type { JarPoint } from "./jars.ts";
import { pureErrorCells } from "./lack-of-fit.ts";
import { stationaryExtent } from "./surface-bands.ts";
import { fitSurface, type SurfaceFit } from "./surface.ts";

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
  const verdict = verdictOf(surface, jars, spec, options);
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
  const pairWords = (pair: { a: number; b: number }) => `A ${number(pair.a)} and B ${number(pair.b)} ${unit}`;

  if (report.status === "too-few-points" || (report.status === "converged" && report.aicc === null))
    return emptyVerdict(
      "too-few-doses",
      `${pairs} pairs of doses in ${jars.length} jars are too few for a surface: a three-by-three plan with repeated centres is enough.`,
      warnings,
    );
  if (report.status === "singular")
    return emptyVerdict(
      "too-few-doses",
      "These pairs of doses lie on too few lines to tell A from B: vary both in between.",
      warnings,
    );
  if (warnings.includes("lack-of-fit"))
    return emptyVerdict(
      "no-model-fits",
      "The surface misses the doses by more than the replicates scatter: check the furthest jars.",
      warnings,
    );
  if ((report.fModel?.p ?? 1) >= significance)
    return emptyVerdict(
      "no-effect",
      `${spec.label} does not change with either dose beyond its scatter.`,
      warnings,
    );
  const { stationary } = report;
  if (!stationary)
    return emptyVerdict("not-curved", `${spec.label} has no curvature to place an optimum by.`, warnings);
  const dose = { a: stationary.x1, b: stationary.x2 };
  if (stationary.kind === "ridge")
    return emptyVerdict(
      "unbounded",
      `${spec.label} runs along a ridge: many pairs of A and B do equally well, so let cost choose among them.`,
      warnings,
    );
  if (stationary.kind !== spec.wanted)
    return emptyVerdict(
      "not-curved",
      `${spec.label} has a ${stationary.kind} and no ${spec.wanted} there: the best pair lies at the edge of what was tested.`,
      warnings,
    );
  const extent = stationaryExtent(surface);
  const interval = extent?.closed ? { low: extent.low, high: extent.high } : { low: null, high: null };
  if (!stationary.inside)
    return {
      ...emptyVerdict(
        "outside-range",
        `The optimum, ${pairWords(dose)}, lies outside the pairs tested: add jars towards it.`,
        warnings,
      ),
      dose,
      ...interval,
      modelInterval: interval,
    };
  if (!extent?.closed)
    return {
      ...emptyVerdict(
        "unbounded",
        "The jars do not close the optimum in: repeat jars or add pairs further out.",
        warnings,
      ),
      modelInterval: interval,
    };
  const tested = (pick: (point: JarPoint) => number) =>
    [Math.min(...jars.map(pick)), Math.max(...jars.map(pick))] as const;
  const [lowA, highA] = tested((point) => point.doses[0]!);
  const [lowB, highB] = tested((point) => point.doses[1]!);
  if (extent.low.a < lowA || extent.high.a > highA || extent.low.b < lowB || extent.high.b > highB)
    warnings.push("edge");
  const mover = report.influence[0];
  return {
    kind: "optimum",
    reason: null,
    dose,
    low: extent.low,
    high: extent.high,
    modelInterval: interval,
    sentence: `${pairWords(dose)} (A ${number(extent.low.a)} to ${number(extent.high.a)}, B ${number(extent.low.b)} to ${number(extent.high.b)})${mover ? `; jar ${jar(mover.row)} moves it most` : ""}.`,
    warnings,
  };
}

import { area } from "./language.ts";

type Letter = "A" | "B";

/** The Curves room: what the curves say, the models compared, residuals and the surface over two doses. */
export const curvesRoomWords = area("curvesRoom", {
  empty: "Curves come from the jars",
  emptyWhy:
    "As soon as a few jars have a dose and a reading, each response is drawn here against the dose, with how sure its best dose is.",
  goToBench: "Go to the bench",
  curves: "Curves",
  verdicts: "What the curves say",
  kinds: { knee: "knee", optimum: "optimum" },
  kneeMeans: { where: "where the", plateau: "plateau", begins: "begins is a", knee: "knee" },
  robust: {
    dose: "With far-off jars held down (bisquare) the dose is",
    jars: (jars: string) => `: jar ${jars} pulls it.`,
  },
  outlierHigh: (jar: string) =>
    `Jar ${jar} is higher than the curve: a short syringe, stirred-up fines, or a reading past its time. Repeat it, or leave it out with a reason.`,
  outlierLow: (jar: string) =>
    `Jar ${jar} is lower than the curve: a double dose, a reading of another jar, or a vial that had settled. Repeat it, or leave it out with a reason.`,
  mover: (jar: string, dose: string, shift: string) =>
    `Without jar ${jar} the dose would be ${dose} (${shift}); no other jar moves it as far.`,
  next: {
    jars: (doses: string, unit: string, shrinkPct: string) =>
      `Next jars at ${doses} ${unit} would shrink the interval by about ${shrinkPct} %.`,
    jarsAndTight: (doses: string, unit: string, shrinkPct: string) =>
      `Next jars at ${doses} ${unit} would shrink the interval by about ${shrinkPct} %. In money it is tight enough: the cost changes by less than 1 % across it.`,
    times: (dose: string, count: number) => `${dose} (${count} times)`,
    and: (doses: string[]) => doses.join(" and "),
  },
  models: {
    title: "Models compared",
    of: (response: string) => `Models of ${response}`,
    model: "model",
    aiccHint: "corrected Akaike criterion: lower is better, within 2 is a tie",
    lackOfFitHint: "lack of fit: below 0.05 the model misses the doses",
    lackOfFit: "lack of fit,",
    bestDose: "best dose,",
    withNoPolymer: "with no-polymer jars",
    suggested: "(suggested)",
  },
  residuals: {
    title: "Residuals",
    against: "Residuals against",
    againstDose: "against dose",
    againstOrder: "against running order",
    ofDose: (model: string) => `Residuals of ${model} against dose`,
    ofOrder: (model: string) => `Residuals of ${model} against order`,
    drawing: (beyond: number, jars: number) => `In standard deviations: ${beyond} of ${jars} jars beyond 2.`,
    point: (jar: string, deviations: string, at: string) =>
      `jar ${jar} at ${at}: ${deviations} standard deviations`,
    twoDeviations: "2 sd",
    note: (model: string) => `${model}, in standard deviations of the scatter; about 1 in 20 lies beyond 2.`,
    order: "running order",
    deviations: "standard deviations",
    jar: (jar: string) => `jar ${jar}`,
  },
  surface: {
    contour: "Contour of both doses",
    shown: "Response shown",
    none: "No surface could be fitted: see why beside.",
    verdicts: "What the surfaces say",
    atPair: (a: string, b: string, unit: string, responses: string) =>
      `At A ${a}, B ${b} ${unit}: ${responses}`,
    jar: (jar: string, value: string) => `jar ${jar}: ${value}`,
    lookedAt: "looked at",
    fileTitle: (response: string) => `${response} over both doses`,
    doseA: "dose A",
    doseB: "dose B",
    read: "read",
    held: (letter: Letter, dose: string) => `${letter} held at ${dose}`,
    along: (letter: Letter) => `Along ${letter}`,
    slice: (response: string, letter: Letter, held: string) =>
      `${response} along dose ${letter}, ${held}, with its 95 % band`,
  },
});

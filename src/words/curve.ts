import { area } from "./language.ts";

type Kind = "knee" | "optimum";
type Turn = "minimum" | "maximum";

const counts = ["two", "three", "four", "five"];
const apart = { knee: "knee", optimum: "optimum" } as const;

/** What the shape of each model means for somebody who is not a statistician. */
export const modelWords = area("models", {
  constant: "The dose makes no difference.",
  linear: "Every step of dose does the same.",
  quadratic: "A valley (or hill) with even sides.",
  "quadratic-log": "A valley with even sides per doubling of dose: steep below, slow above.",
  cubic: "A valley whose two sides differ.",
  "cubic-log": "A valley whose two sides differ per doubling of dose.",
  polynomial: "A polynomial of the degree asked for.",
  "saturating-exponential": "Rises (or falls) quickly, then levels off without coming back.",
  plateau: "Straight up to a knee, level after it.",
  "gaussian-valley": "A valley between flat shoulders: too little and far too much are equally bad.",
  logistic: "An S-shape: little happens, then much, then no more.",
  "log-logistic": "An S-shape with a long upper end: most of the gain comes early.",
});

/** The verdict on a response over one dose; doses come in as text. */
export const verdictWords = area("verdicts", {
  onlyNoPolymer: "Only no-polymer jars were read: add jars with polymer.",
  noCurvedModel:
    "No curved model could be fitted to these jars: check the readings, or add doses between them.",
  fewDoses: (doses: number) =>
    `${doses} distinct ${doses === 1 ? "dose is" : "doses are"} too few to tell a curve from scatter: run at least six doses, some of them twice.`,
  fewJars: (jars: number) =>
    `${jars} jars are too few to tell a curve from scatter: run at least six doses, some of them twice.`,
  masked: "An outlying jar hides that no model passes through the doses: repeat that jar, then look again.",
  noModel:
    "No model passes through the doses within the scatter of the replicates: check the jars furthest from the curve.",
  noEffect: (response: string, low: string, high: string, unit: string) =>
    `${response} does not change with dose beyond its scatter between ${low} and ${high} ${unit}.`,
  stillImproving: (response: string, high: string, unit: string) =>
    `${response} is still improving at the highest dose: add jars above ${high} ${unit}.`,
  onlyWorse: (response: string, low: string, unit: string) =>
    `${response} only gets worse with dose: add jars below ${low} ${unit}.`,
  noTurn: (response: string, wanted: Turn, low: string, high: string, unit: string) =>
    `${response} has no ${wanted === "minimum" ? "valley" : "top"} between ${low} and ${high} ${unit}.`,
  outside: (kind: Kind, side: "above" | "below", end: string, unit: string) =>
    `The ${apart[kind]} lies ${side} the doses tested: add jars ${side} ${end} ${unit}.`,
  ninety: (sentence: string, dose: string, unit: string) =>
    `${sentence} 90 % of the gain is reached at ${dose} ${unit}.`,
  unbounded: (kind: Kind, side: "low" | "high" | "either", low: string, high: string, unit: string) =>
    `The jars do not say where the ${apart[kind]} ends on ${side === "either" ? "either side" : `its ${side} side`}: add jars beyond ${low} and ${high} ${unit}, or repeat jars.`,
  span: (low: string | null, high: string | null) =>
    `${low ?? "below the doses tested"} to ${high ?? "above the doses tested"}`,
  ambiguous: (kind: Kind, span: string, unit: string) =>
    `Models that fit equally well put the ${apart[kind]} in different places (${span} ${unit}): add jars there to part them.`,
  located: (dose: string, span: string, unit: string) => `${dose} ${unit}, ${span}`,
  locatedKnee: (dose: string, gainPct: number | undefined, span: string, unit: string) =>
    `${dose} ${unit} (${gainPct} % of the gain), ${span}`,
  tie: (models: number) => `${counts[models - 2] ?? String(models)} models tie`,
  mover: (jar: string) => `jar ${jar} moves it most`,
  edge: "the interval leaves the doses tested, so add jars there",
});

/** The verdict on a response over both doses. */
export const surfaceWords = area("surfaceVerdicts", {
  pair: (a: string, b: string, unit: string) => `A ${a} and B ${b} ${unit}`,
  fewPairs: (pairs: number, jars: number) =>
    `${pairs} pairs of doses in ${jars} jars are too few for a surface: a three-by-three plan with repeated centres is enough.`,
  fewLines: "These pairs of doses lie on too few lines to tell A from B: vary both in between.",
  misses: "The surface misses the doses by more than the replicates scatter: check the furthest jars.",
  noEffect: (response: string) => `${response} does not change with either dose beyond its scatter.`,
  noCurvature: (response: string) => `${response} has no curvature to place an optimum by.`,
  ridge: (response: string) =>
    `${response} runs along a ridge: many pairs of A and B do equally well, so let cost choose among them.`,
  otherKind: (response: string, found: Turn | "saddle", wanted: Turn) =>
    `${response} has a ${found} and no ${wanted} there: the best pair lies at the edge of what was tested.`,
  outside: (pair: string) => `The optimum, ${pair}, lies outside the pairs tested: add jars towards it.`,
  unclosed: "The jars do not close the optimum in: repeat jars or add pairs further out.",
  located: (pair: string, lowA: string, highA: string, lowB: string, highB: string) =>
    `${pair} (A ${lowA} to ${highA}, B ${lowB} to ${highB})`,
});

/** What keeps a table of jars from being analysed. Lines are those of the file. */
export const jarTableWords = area("jarTable", {
  twoDoses: (name: string, jar: string, line: number, other: number) =>
    `${name}: jar ${jar} has one dose on line ${line} and another on line ${other}; a jar has one dose, so give the second another name.`,
  twoBounds: (name: string, jar: string | null, lines: string) =>
    `${name}: jar ${jar} has a reading above and one below a bound (lines ${lines}).`,
});

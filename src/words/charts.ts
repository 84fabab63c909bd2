import { area } from "./language.ts";

type Letter = "A" | "B";

/** Charts against dose on the screen, on paper and as files: axes, marks, lines, legends, tables and what is read aloud. */
export const chartWords = area("charts", {
  againstDose: (title: string, sentence: string) => `${title} against dose. ${sentence}`,
  said: (title: string, sentence: string) => `${title}. ${sentence}`,
  readings: (title: string) => `Read out: ${title}`,
  withTarget: (title: string, sentence: string) => `${title} against dose with its target. ${sentence}`,
  doseAxis: (letter: Letter, unit: string) => `dose ${letter}, ${unit} active`,
  doseOnPaper: (letter: Letter) => `dose ${letter}, kg active per t dry solids`,
  fitting: "Fitting…",
  preview: "Preview only: not fitted yet.",
  notFitted: "Not fitted.",
  range: (low: string, high: string) => `${low} to ${high}`,
  readOut: (dose: string, mean: string, low: string, high: string) => `${dose}: ${mean} (${low} to ${high})`,
  bounds: (mean: string, low: string, high: string) =>
    `${mean} (${low} to ${high}, each bound one-sided 95 %)`,
  responseAtDose: (response: string, mean: string, unit: string, low: string, high: string) =>
    `${response} ${mean} ${unit} (${low} to ${high})`,
  allAtDose: (responses: string) => `${responses}; each bound one-sided 95 %.`,
  jarOut: (jar: string) => `${jar} out`,
  jarLeftOut: (jar: string) => `${jar} (left out)`,
  approved: (dose: string) => `approved ${dose}`,
  plantToday: (dose: string) => `plant today ${dose}`,
  lines: {
    oneMore: "one more jar",
    band: "95 % band",
    mean: (letter: Letter) => `mean, ${letter}`,
    preview: "preview",
    untested: "not tested",
    testedWithin: "tested within",
  },
  legend: {
    jars: "numbers: jars",
    plant: "diamonds: plant runs, named in their table",
    beyond: "dotted: the curve past the doses tested",
    interval: "bar on the axis: range of the dose",
    limit: "hatched side of a limit: not met there",
    censored: "triangle: beyond the instrument's range",
    leftOut: "hollow: left out of the fit",
  },
  tip: {
    jar: (jar: string, value: string, dose: string) => `jar ${jar}: ${value} at ${dose}`,
    plant: (run: string, value: string, dose: string) => `plant, ${run}: ${value} at ${dose}`,
  },
  table: {
    jar: "jar",
    dose: (unit: string) => `dose, ${unit}`,
    fitted: "fitted",
    low: "low 95 %",
    high: "high 95 %",
  },
  frame: {
    chart: "Chart",
    table: "Table",
    titleAsTable: (title: string) => `${title}, as a table`,
    save: "Save this chart",
    saveHint: "As it is printed, dark on white and with its source, as SVG",
    savePng: "Save PNG",
    saveCsv: "Save CSV",
  },
  target: {
    line: (target: string) => `Target line, ${target}`,
    hint: "Drag to change the target, or use the arrow keys; Enter keeps it, Esc takes it back",
    keys: "Enter keeps it, Esc takes it back.",
    and: (spans: string[]) => spans.join(" and "),
    held: (target: string, spans: string) => `${target}: held from ${spans}`,
    heldNowhere: (target: string) => `${target}: held at no dose tested`,
    ruleAt: (rule: string, dose: string) => `${rule} ${dose}`,
    noDose: "no dose meets all limits",
    missed: (chance: string, dose: string) => `missed with a chance of ${chance} % at ${dose}`,
    missedUnder: (dose: string) => `missed with a chance of under 1 % at ${dose}`,
  },
  pair: {
    contours: (sentence: string) => `Contours over both doses. ${sentence}`,
    tested: (sentence: string) => `Pairs of doses tested. ${sentence}`,
  },
  file: {
    described: (label: string, source: string) => `${label} Source: ${source}`,
    study: (name: string) => `study ${name}`,
    inventedStudy: (name: string) => `study ${name} (every number is invented: a demonstration)`,
    series: (label: string) => `series ${label}`,
    saved: (moment: string) => `saved ${moment} UTC`,
    noHistory: "the history could not be read",
  },
});

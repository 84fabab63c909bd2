import { area } from "./language.ts";

/** How settings, steps, draw-downs and cylinder bands were made: formulas, inputs and sources. */
export const plantMadeWords = area("plantMade", {
  intercept: "line, intercept",
  slope: "line, slope",
  aStep: (unit: string) => `${unit} a step of the setting`,
  lowest: "lowest setting drawn down",
  highest: "highest setting drawn down",
  row: {
    formula:
      "load = feed flow x 1000 x density x TS; pump flow = flow of the case x load / load of the case; setting = (flow - intercept) / slope on a straight line; nothing outside the settings drawn down",
    totalSolids: "total solids of this row",
    density: "density of the feed",
    pumpFlow: "pump flow of the case",
    drySolids: "dry solids of the case",
  },
  step: {
    formula:
      "dose = factor x bench dose x (1 + n x step); setting = (flow for that dose - intercept) / slope",
    benchDose: "bench dose",
    factor: "factor",
    noFactor: "none known, taken as 1",
    step: "step",
    dose: "dose of this step",
    source: (plan: string, calibration: string) => `plan: ${plan}; pump: ${calibration}`,
  },
  drift: {
    formula: "dose now = dose set x total solids it was set at / total solids now",
    setAt: "total solids it was set at",
  },
  disposal: {
    formula: "wet cake x hours a day x days a year / 1000 x price of disposal",
    wetCake: "wet cake",
    price: "disposal of wet cake",
  },
  draw: {
    formula: "flow = caught / seconds x 60; off = flow - flow of the line at this setting",
    caught: "caught",
    seconds: "seconds",
    flowOfLine: "flow of the line",
  },
  band: {
    formula:
      "flow at the setting x seconds / 60; band: one draw-down's scatter and the line's error, the reading and the stopwatch in quadrature, Student's 95 %",
    scatter: "scatter of one draw-down",
    readWithin: "read within ±",
    stopwatch: "stopwatch ±",
  },
});

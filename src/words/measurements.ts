import { area } from "./language.ts";

const nominal =
  "nominal: water's viscosity stands for the sludge's, which is thicker; G = sqrt(P / (mu V)), Camp number G t";

/** What is worked out of a jar's readings besides the responses: names, formulas, inputs, standards and gaps. */
export const measurementWords = area("measurements", {
  suctionTime: {
    standard: "Standard Methods 2710 G (number from memory); EN 14701-1",
    mean: (readings: number, reservoirMm: number | null) =>
      `CST, mean of ${readings}${reservoirMm === null ? "" : `, ${reservoirMm} mm reservoir`}`,
    meanFormula: "mean of the readings; spread t(n - 1) s / sqrt(n) at 95 %",
    reading: (number: number) => `reading ${number}`,
    meanInput: "CST, mean",
    water: "water on the same paper",
    enterWater: "enter the CST of water on the same paper",
    normalised: "CST above water, per g/L",
    normalisedFormula: "(CST - water) / suspended solids",
    warmed: "CST at 20 °C",
    warmedFormula: "CST x viscosity at 20 °C / viscosity at the temperature",
    warmedStandard:
      "Standard Methods 2710 G (number from memory); EN 14701-1; water's viscosity, paper effects ignored",
    enterTemperature: "enter the sample's temperature",
  },
  feedSolids: "feed suspended solids",
  enterFeedSolids: "enter the feed's suspended solids",
  temperature: "temperature",
  time: "time",
  drainage: {
    standard: "EN 14701-4:2018, drainability of flocculated sludge",
    at: (seconds: number) => `drained at ${seconds} s`,
    formula: "100 V / (sample + what was added)",
    drained: "drained",
    sample: "sample",
    added: "added",
    needsVolumes: "needs the volumes in this jar",
  },
  filterTime: {
    standard: "Standard Methods 2710 H (conditions from memory)",
    title: "time to filter, per g/L",
    formula: "time / suspended solids",
  },
  resistance: {
    standard: "EN 14701-2:2013; constant-pressure form, from memory",
    title: "specific resistance",
    formula: "2 pressure area^2 b / (viscosity x cake), t/V = b V + c",
    medium: "resistance of the medium",
    mediumFormula: "c x pressure x area / viscosity",
    pointsUsed: "points used",
    points: (first: number, last: number, of: number) => `${first} to ${last} of ${of}`,
    diameter: "filter diameter",
    pressure: "pressure",
    cake: "dry cake per filtrate",
  },
  floc: {
    standard: "common practice; strength d2 / d1, recovery (d3 - d2) / (d1 - d2), from memory",
    strength: "floc strength",
    recovery: "floc recovery",
    first: "floc at first, d1",
    broken: "broken, d2",
    regrown: "regrown, d3",
  },
  zeta: { title: "zeta potential", asRead: "as read", read: "read" },
  mixing: {
    standard: (temperatureAssumed: boolean) =>
      `${nominal}${temperatureAssumed ? "; 20 °C assumed, no temperature was entered" : ""}`,
    pouringStandard: (temperatureAssumed: boolean) =>
      `${nominal}${temperatureAssumed ? "; 20 °C assumed, no temperature was entered" : ""}; upper bound, all the fall's energy counted`,
    gradient: { fast: "G of fast mixing", first: "G of first-polymer mixing", slow: "G of slow mixing" },
    camp: { fast: "Gt of fast mixing", first: "Gt of first-polymer mixing", slow: "Gt of slow mixing" },
    campFormula: "G x time",
    speed: "speed",
    powerNumber: "power number",
    stirrerDiameter: "stirrer diameter",
    liquid: "liquid",
    enterStirrer: "enter the stirrer's diameter and power number",
    enterSampleVolume: "enter the sample volume",
    pouringGradient: "G of pouring",
    pouringCamp: "Gt of pouring",
    pours: "pours",
    height: "height",
    timeForAll: "time for all",
  },
  press: {
    standard: "force over area; no common standard for press cake, common practice",
    formula: "force / piston area",
    force: "force",
    piston: "piston",
    asTyped: "as typed",
    pressure: "pressure",
  },
});

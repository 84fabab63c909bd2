import { area } from "./language.ts";

/** What is wrong with the rows of a file as jars of a study. Clauses without a beginning stand behind the cell or its column. */
export const importWords = area("imports", {
  nameSeries: "is empty: name the series of this jar.",
  nameJar: "is empty: name the jar.",
  tooMany: (name: string, records: number, most: number) =>
    `${name}: makes ${records} jars and readings; ${most} at once is the most: split the file.`,
  label: (file: string) => `import of ${file}`,
  tooLong: (name: string) => `${name}: holds more text than one step of a study can keep: split the file.`,
  jarThere: (jar: string, series: string) =>
    `jar ${jar} is in series ${series} already: give this one another name, or import into a new series.`,
  jarMissing: (jar: string, series: string) =>
    `series ${series} has no jar ${jar}, and the file gives no dose to make it with.`,
  doseMissing: "the dose is missing; a jar without this polymer has dose 0.",
  jarDosedOtherwise: (jar: string, series: string) =>
    `jar ${jar} of series ${series} was dosed otherwise: another jar needs another name.`,
  otherDoses: (jar: string, line: number) =>
    `jar ${jar} has other doses on line ${line}: a jar read again keeps its doses, another jar needs another name.`,
  manySeries: (name: string, count: number, column: string) =>
    `${name}: holds ${count} series by its column ${column}, so one name for all rows does not fit: leave the name out.`,
  seriesThere: (name: string, series: string) =>
    `${name}: there is already a series called "${series}": name the series that the rows belong to, or give a new name.`,
  noSample: (label: string) =>
    `this study has no sample called "${label}": enter it first in the Sample room, or leave the column out.`,
  noStock: (label: string) =>
    `this study has no stock solution called "${label}": enter it first in the Sample room, or leave the column out.`,
  sampleFirst: (name: string) =>
    `${name}: the study has no sludge sample yet: enter it first, because a dose is polymer per dry solids.`,
  whichSample: (name: string, samples: number, series: string) =>
    `${name}: the study has ${samples} samples: say in a column sample which one series "${series}" was dosed on, or add the rows to a series that is there.`,
  whichStock: (name: string, column: string, letter: string, series: string) =>
    `${name}: the study has several stock solutions: say in a column ${column} which one polymer ${letter} of series "${series}" was.`,
  seriesRefused: (name: string, series: string, why: string) => `${name}: series "${series}": ${why}`,
  sameStock: "polymers A and B name the same stock solution: choose another for one of them.",
  linkSample: (series: string, label: string, given: string) =>
    `series ${series} has "${label}" for its sample, and this row says "${given}".`,
  linkStock: (series: string, label: string, letter: string, given: string) =>
    `series ${series} has "${label}" for polymer ${letter}, and this row says "${given}".`,
  linkNoStock: (series: string, letter: string, given: string) =>
    `series ${series} has no solution for polymer ${letter}, and this row says "${given}".`,
  notRole: (given: string, roles: string) => `"${given}" is not a role of a jar; there are: ${roles}.`,
  needsReason: (reasons: string) => `needs a reason in the column beside it: ${reasons}.`,
  notReason: (given: string, reasons: string) => `"${given}" is not a reason; there are: ${reasons}.`,
  notMoment: (given: string) =>
    `"${given}" is not a date and time with its offset, such as 2026-03-04T09:05:00+01:00.`,
  noReadingBeside: (column: string) => `has no reading beside it (${column}).`,
  disagrees: (stated: number, made: string) =>
    `the file says ${stated}, but the values beside it make ${made}: correct one of them, or leave this column out.`,
  formula: (cell: string) =>
    `"${cell}" is a formula or its error, not a number: save the sheet with its values.`,
  otherTurbidityUnit: (series: string, unit: string) =>
    `series ${series} reads turbidity in ${unit}: the units differ.`,
  dilutionAlone: "has no turbidity as shown (turbidity_shown) beside it.",
  undiluted: "is empty: enter 1 where the sample was not diluted.",
  drainTime:
    "needs the time at which it was read: add a column drained_at_s, or enter the series' drain time on the Bench.",
  filtrationParts:
    "a specific resistance is kept with its volumes and times (srf_volumes_ml, srf_times_s and the columns that go with them): add them, or leave this column out.",
  timesVolumes: (times: number, volumes: number) => `has ${times} times for ${volumes} volumes.`,
  negativeDose: (dose: string) => `a dose cannot be negative (${dose}).`,
  doseDisagrees: (stated: string, volumeMl: string, made: string) =>
    `is ${stated} kg/t active, but ${volumeMl} mL of the solution makes ${made} kg/t here: correct one of them, or leave one column out.`,
  doseWaits: (unit: string, why: string) => `a dose in ${unit} cannot be used yet: ${why}.`,
  mgPerLFeed: "mg/L of feed",
  mlSolution: "mL of solution",
  pickStock: (letter: string, series: string) =>
    `pick the stock solution for polymer ${letter} of series "${series}"`,
  strengthOf: (stock: string, why: string) => `strength of ${stock}: ${why}`,
  enterDensity: (stock: string) => `enter the density of ${stock}`,
  enterVolume: (series: string) => `enter the sample volume of series "${series}"`,
  solidsOf: (why: string) => `total solids of the sample: ${why}`,
  densityOf: (why: string) => `density of the sample: ${why}`,
  enterActive: (product: string) => `enter the active share of ${product}`,
  emptyNeeded: {
    filterSolids: "is empty, but a filter's solids needs it.",
    drained: "is empty, but a drained volume needs it.",
    resistance: "is empty, but a specific resistance needs it.",
    cakeDish: "is empty, but a cake dish needs it.",
    flocStrength: "is empty, but a floc's strength needs it.",
  },
  workbook: {
    read: "what was read, unit",
    value: "value",
    takenAt: "taken at",
    leftOut: "left out",
    note: "note",
    series: "series",
    jar: "jar",
    yes: "yes",
    no: "no",
  },
  wholeDocument: "the whole",
  notRight: "is not right",
});

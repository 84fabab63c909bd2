import { demoWords as words } from "../words/demo.ts";
import type { SimpleCommand } from "./commands.ts";
import { neatDraws } from "./demo-rows.ts";
import type { Kind, NewRecordOf } from "./schema/records.ts";

// The plant of the demo: every number invented.

function add<K extends Kind>(kind: K, record: NewRecordOf<K>): SimpleCommand {
  return { do: "add", kind, record: record as Record<string, unknown> };
}

/** Feed cases, make-down, pump with its draw-downs, machine, mixing and limit on land. */
export function plantCommands(takenAt: string): SimpleCommand[] {
  const hours = { hoursPerDay: 8, daysPerYear: 250, flowUncertaintyPct: 1.5, temperatureC: 17 };
  return [
    add("feedCase", { id: "feed-1", label: words.feeds.night, size: "least", flowM3PerH: 12, ...hours }),
    add("feedCase", { id: "feed-2", label: words.feeds.day, size: "usual", flowM3PerH: 16, ...hours }),
    add("feedCase", {
      id: "feed-3",
      label: words.feeds.monday,
      size: "most",
      flowFrom: "difference",
      supplyM3PerH: 21,
      returnM3PerH: 3,
      ...hours,
    }),
    add("makeDown", {
      id: "makedown-1",
      benchProductId: "product-1",
      productId: "product-1",
      solutionActivePct: 0.2,
      solutionLimitPct: 0.01,
      solutionDensityKgPerL: 1,
      carrierActivePct: 0.1,
      batchL: 1000,
      fillMin: 12,
      wetMin: 5,
      ageingMin: 30,
      transferMin: 8,
      deadVolumePct: 10,
      containersInStock: 2,
      retainedPct: 100,
      injectionPoint: words.flocculantPlace,
    }),
    add("makeDown", {
      id: "makedown-2",
      benchProductId: "product-2",
      productId: "product-2",
      solutionActivePct: 5,
      solutionDensityKgPerL: 1.02,
      injectionPoint: words.coagulantPlace,
    }),
    add("pump", {
      id: "pump-1",
      label: words.neatPump,
      makeDownId: "makedown-1",
      stream: "neat",
      settingUnit: "%",
      settingLow: 0,
      settingHigh: 100,
      calibrationGoodDays: 90,
    }),
    ...neatDraws.map(([setting, amount, seconds], index) =>
      add("drawDown", {
        id: `draw-${index + 1}`,
        pumpId: "pump-1",
        setting,
        amount,
        seconds,
        takenAt,
        fluid: {
          lot: words.flocculantLot,
          activePct: 42,
          densityKgPerL: 1.03,
          solutionActivePct: null,
        },
      }),
    ),
    add("machine", {
      id: "machine-1",
      label: words.machine,
      effectiveWidthM: 10,
      loadings: [
        { sludgeClass: words.machineSludge.excess, kgPerHPerM: 40 },
        { sludgeClass: words.machineSludge.treatmentPlant, kgPerHPerM: 50 },
        { sludgeClass: words.machineSludge.flotationOrLivestock, kgPerHPerM: 60 },
      ],
      loadingClass: words.machineSludge.treatmentPlant,
      hydraulicLimitM3PerH: 20,
      feedLowPct: 0.5,
      feedHighPct: 5,
      solidsThresholdPct: 2,
      inorganicLowPct: 40,
      inorganicHighPct: 60,
      washM3PerH: 6,
      holdUpL: 2000,
      note: words.machineNote,
    }),
    add("mixing", {
      id: "mixing-1",
      makeDownId: "makedown-1",
      place: "in-line",
      mixerVolumeL: 5,
      pressureDropKPa: 15,
      pipeDiameterMm: 100,
      pipeLengthM: 12,
      wantedDelayS: 20,
    }),
    add("landLimit", {
      id: "land-1",
      limitKgPerHa: 45,
      years: 3,
      drySolidsTPerHa: 5,
      otherDoseKgPerT: 0,
    }),
  ];
}

/** What the crew caught when the approved dose was first set for the day's feed, well inside its band. */
export function checkCommand(at: string): SimpleCommand {
  return add("cylinderCheck", {
    id: "check-1",
    pumpId: "pump-1",
    setting: 94.9,
    amount: 79.4,
    seconds: 60,
    takenAt: new Date(Date.parse(at) - 140 * 60_000).toISOString(),
    byName: "Ilse K.",
  });
}

/** Minutes before `at`, feed m³/h, TS %, setting %, mL caught in 60 s, kg lost in hours, cake %, filtrate TSS mg/L. */
type SettledRow = [number, number, number, number, number, number, number, number, number];

const settled: SettledRow[] = [
  [130, 16.0, 2.5, 90, 75.5, 7.1, 1.5, 19.6, 92],
  [80, 15.8, 2.44, 85.4, 71.2, 4.46, 1, 19.4, 98],
  [30, 16.1, 2.53, 88.2, 74.1, 4.53, 1, 19.5, 95],
];

/** Cake %, filtrate TSS mg/L of routine runs, one a day before the trial. */
const routine: [number, number][] = [
  [19.5, 131],
  [19.2, 142],
  [19.7, 127],
  [19.4, 138],
  [19.6, 125],
  [19.3, 140],
  [19.5, 133],
  [19.4, 129],
];

/** Cake %, filtrate TSS mg/L with the belt as usual and soon after with a slow one: drier, and no clearer or dirtier. */
const pairs: { usual: [number, number]; slow: [number, number] }[] = [
  { usual: [19.4, 131], slow: [20.1, 136] },
  { usual: [19.2, 138], slow: [19.8, 134] },
  { usual: [19.6, 128], slow: [20.4, 139] },
  { usual: [19.5, 133], slow: [20.0, 131] },
];

/**
 * Three runs where the plant settled, with the dose by three ways; a week of routine ones before them, and within it two
 * belt speeds compared in pairs.
 */
export function runCommands(at: string): SimpleCommand[] {
  const minutesBefore = (minutes: number) => new Date(Date.parse(at) - minutes * 60_000).toISOString();
  const place = { seriesId: "series-1", machineId: "machine-1", washM3PerH: 6 };
  return [
    ...routine.map(([cakePct, filtrateTssMgPerL], index) =>
      add("plantRun", {
        id: `run-0${index + 1}`,
        label: words.routineRun(index + 1),
        kind: "routine",
        at: minutesBefore((routine.length - index) * 1440),
        cakePct,
        filtrateTssMgPerL,
        ...place,
      }),
    ),
    ...pairs.flatMap(({ usual, slow }, index) =>
      ([usual, slow] as const).map(([cakePct, filtrateTssMgPerL], second) => {
        const side = second === 0 ? "A" : "B";
        return add("plantRun", {
          id: `run-2${index + 1}-${side.toLowerCase()}`,
          label: words.pairedRun(index + 1, side),
          kind: "comparison",
          at: minutesBefore((pairs.length - index) * 1440 - 120 - second * 45),
          byName: "Ilse K.",
          side,
          pair: index + 1,
          cakePct,
          filtrateTssMgPerL,
          machineSettings: second === 0 ? words.machineSettings : words.slowBelt,
          ...place,
        });
      }),
    ),
    ...settled.flatMap(([minutes, feed, ts, setting, caught, loss, hours, cake, tss], index) => [
      add("plantRun", {
        id: `run-1${index + 1}`,
        label: words.settledRun(index + 1),
        kind: "step",
        decisionId: "decision-1",
        at: minutesBefore(minutes),
        byName: "Ilse K.",
        feedM3PerH: feed,
        totalSolidsPct: ts,
        feedSuspendedPct: Number((ts - 0.1).toFixed(2)),
        cakePct: cake,
        filtrateTssMgPerL: tss,
        machineSettings: words.machineSettings,
        best: true,
        ...place,
      }),
      add("runDose", {
        id: `run-1${index + 1}-a`,
        runId: `run-1${index + 1}`,
        makeDownId: "makedown-1",
        pumpId: "pump-1",
        setting,
        caught,
        caughtS: 60,
        containerLossKg: loss,
        containerHours: hours,
      }),
    ]),
  ];
}

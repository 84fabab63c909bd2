import { demoWords as words } from "../words/demo.ts";
import { applyCommand, type Command, type SimpleCommand } from "./commands.ts";
import { methodVersion, upstreamOf } from "./derive/decision.ts";
import { tableInputs } from "./derive/plant-table.ts";
import { plantChain } from "./derive/plant.ts";
import { emptyState, type Kind, type NewRecordOf, type StudyState } from "./schema/records.ts";
import { jarDrawing } from "./demo-drawing.ts";
import { checkCommand, plantCommands, runCommands } from "./demo-plant.ts";
import { dishRows, oneRows, twoRows } from "./demo-rows.ts";

function add<K extends Kind>(kind: K, record: NewRecordOf<K>): SimpleCommand {
  return { do: "add", kind, record: record as Record<string, unknown> };
}

function together(label: string, commands: SimpleCommand[]): Command {
  return { do: "together", label, commands };
}

/** The bench was done early enough for three plant runs after it, on the same day. */
const runsMinutes = 150;

const before = (at: string, minutes: number) =>
  new Date(Date.parse(at) - (minutes + runsMinutes) * 60_000).toISOString();

/**
 * The edits that build the invented demo study, in the order somebody would make them.
 * `at` is the moment of creation (ISO); the trial day is laid just before it, so that clocks and ages read plausibly.
 * Its labels and notes are in the language spoken now, and stay so.
 */
export function demoCommands(at: string, decimalMark: "." | "," = "."): Command[] {
  const commands = recordCommands(at, decimalMark);
  const bench = commands.reduce(after, emptyState());
  const decision = add("decision", {
    id: "decision-1",
    seriesId: "series-1",
    doseAKgPerT: picked.a,
    lowKgPerT: 4.9,
    highKgPerT: 5.5,
    rule: "own",
    reason: words.approvedBecause,
    byName: "Jon R.",
    at: before(at, 20),
    methodVersion,
    snapshot: upstreamOf(bench, "series-1"),
  });
  const decided = after(bench, decision);
  return [
    ...commands,
    decision,
    add("tableApproval", {
      id: "settings-1",
      seriesId: "series-1",
      byName: "Jon R.",
      at: before(at, 10),
      snapshot: tableInputs(decided, plantChain(decided, "series-1", picked)),
    }),
    together(words.steps.runs, [checkCommand(at), ...runCommands(at)]),
  ];
}

/** The dose that is approved, well inside the working window. */
const picked = { a: 5.2, b: null };

function after(state: StudyState, command: Command): StudyState {
  const applied = applyCommand(state, command);
  return applied.ok ? applied.value.state : state;
}

function recordCommands(at: string, decimalMark: "." | ","): Command[] {
  const minutesBefore = (minutes: number) => before(at, minutes);
  return [
    add("study", {
      id: "study",
      name: words.study,
      invented: true,
      decimalMark,
      note: words.studyNote,
    }),
    together(words.steps.people, [
      add("person", { id: "person-1", name: "Mara T.", role: "technician" }),
      add("person", { id: "person-2", name: "Jon R.", role: "engineer" }),
      add("person", { id: "person-3", name: "Ilse K.", role: "crew" }),
    ]),
    together(words.steps.sample, [
      add("stream", {
        id: "stream-1",
        label: words.stream,
        sludgeClass: "mixed",
        place: words.works,
      }),
      add("sample", {
        id: "sample-1",
        streamId: "stream-1",
        label: words.sample,
        takenAt: minutesBefore(230),
        place: words.samplePlace,
        temperatureC: 17,
        ph: 6.9,
        provisionalTotalSolidsPct: 2.5,
        suspendedSolidsPct: 2.38,
      }),
    ]),
    together(
      words.steps.dishes,
      dishRows.map(([tareG, wetG, dryG, ashG], index) =>
        add("dish", {
          id: `dish-${index + 1}`,
          sampleId: "sample-1",
          label: `${index + 1}`,
          tareG,
          wetG,
          dryG,
          ashG,
        }),
      ),
    ),
    together(words.steps.products, productCommands(minutesBefore(215))),
    seriesOne(minutesBefore(150)),
    seriesTwo(minutesBefore(80)),
    together(words.steps.targets, [
      add("targets", {
        id: "targets-1",
        seriesId: "series-1",
        turbidityAtMost: 80,
        cakeAtLeastPct: 18.5,
        captureAtLeastPct: 98,
        disposalPerWetT: 90,
        returnPerT: 40,
        assumedCapturePct: 99,
        presentDoseKgPerT: 6.4,
        feedDriftPct: 6,
      }),
      add("targets", {
        id: "targets-2",
        seriesId: "series-2",
        turbidityAtMost: 80,
        cakeAtLeastPct: 20,
        disposalPerWetT: 90,
        assumedCapturePct: 97,
        feedDriftPct: 6,
      }),
    ]),
    together(words.steps.plant, plantCommands(minutesBefore(30))),
  ];
}

function productCommands(mixStartedAt: string): SimpleCommand[] {
  const weighing = { neatMassUncertaintyG: 0.03, totalMassLimitG: 1, solutionDensityKgPerL: 1, mixStartedAt };
  return [
    add("product", {
      id: "product-1",
      label: words.flocculant,
      form: "emulsion",
      charge: "cationic",
      lot: words.lot(7),
      activePct: 42,
      activeLimitPct: 1,
      activeBasisNote: words.activeBasis,
      densityKgPerL: 1.03,
      pricePerKgNeat: 3.2,
      containerKg: 1030,
    }),
    add("product", {
      id: "product-2",
      label: words.coagulant,
      form: "solution",
      charge: "cationic",
      lot: words.lot(2),
      activePct: 40,
      activeLimitPct: 1,
      activeBasisNote: words.activeBasis,
      densityKgPerL: 1.15,
      pricePerKgNeat: 1.1,
      containerKg: 1150,
    }),
    add("stock", {
      id: "stock-1",
      productId: "product-1",
      label: words.flocculantStock,
      targetActivePct: 0.2,
      targetTotalG: 500,
      neatMassG: 2.381,
      totalMassG: 500,
      waterType: words.plantWater,
      waterTemperatureC: 18,
      ...weighing,
    }),
    add("stock", {
      id: "stock-2",
      productId: "product-2",
      label: words.coagulantStock,
      targetActivePct: 1,
      targetTotalG: 500,
      neatMassG: 12.5,
      totalMassG: 500,
      waterType: words.plantWater,
      waterTemperatureC: 18,
      ...weighing,
    }),
  ];
}

const seriesBasics = {
  sampleId: "sample-1",
  sampleVolumeMl: 500,
  sampleVolumeLimitMl: 5,
  syringeCapacityMl: 60,
  syringeLimitMl: 0.5,
  turbidityRange: { low: 0.1, high: 1000 },
  cstWaterS: 8,
  cstReservoirMm: 18,
};

function seriesOne(startedAt: string): Command {
  const commands: SimpleCommand[] = [
    add("series", {
      id: "series-1",
      label: words.seriesAlone,
      ...seriesBasics,
      stockAId: "stock-1",
      protocol: {
        fastRpm: 200,
        fastS: 15,
        slowRpm: 60,
        slowS: 45,
        drainS: 10,
        pressKPa: 150,
        pressMin: 5,
        stirrerDiameterMm: 50,
        stirrerPowerNumber: 1.6,
      },
      startedAt,
    }),
  ];
  for (const [index, [order, dose, ntu, tss, cake, drained, cst, floc]] of oneRows.entries()) {
    const id = `jar-1-${String(index + 1).padStart(2, "0")}`;
    const syringeAMl = Math.round(dose * 62.13) / 10;
    commands.push(
      add("jar", {
        id,
        seriesId: "series-1",
        label: `${index + 1}`,
        order,
        role: dose === 0 ? "no-polymer" : "dose",
        plannedDoseAKgPerT: dose,
        syringeAMl,
        blankWaterMl: Math.round((49.7 - syringeAMl) * 10) / 10,
      }),
    );
    const over = ntu.startsWith(">");
    const readings: NewRecordOf<"reading">["result"][] = [
      {
        kind: "turbidity",
        value: Number(ntu.replace(">", "")),
        censored: over ? "above" : null,
        dilution: 1,
      },
      { kind: "filtrate-tss", mgPerL: tss },
      { kind: "drained", ml: drained, atS: 10 },
      { kind: "cst", seconds: cst },
      { kind: "cake-ts", pct: cake },
      { kind: "floc-grade", grade: floc },
    ];
    for (const [at, result] of readings.entries())
      commands.push(add("reading", { id: `${id}-r${at + 1}`, jarId: id, result }));
    if (index === 7)
      commands.push(
        add("reading", {
          id: `${id}-r7`,
          jarId: id,
          note: words.readAgain,
          result: { kind: "turbidity", value: 44.8, dilution: 1 },
        }),
      );
  }
  // One of the two jars nearest the approved dose, both with large floc.
  commands.push(
    add("photo", {
      id: "drawing-1",
      jarId: "jar-1-08",
      label: words.drawing("8"),
      takenAt: new Date(Date.parse(startedAt) + 10 * 60_000).toISOString(),
      ...jarDrawing,
    }),
  );
  return together(words.steps.series(words.seriesAlone), commands);
}

function seriesTwo(startedAt: string): Command {
  const commands: SimpleCommand[] = [
    add("series", {
      id: "series-2",
      label: words.seriesPair,
      ...seriesBasics,
      stockAId: "stock-2",
      stockBId: "stock-1",
      protocol: { fastRpm: 200, fastS: 15, betweenS: 60, slowRpm: 60, slowS: 45, drainS: 10 },
      startedAt,
    }),
  ];
  for (const [index, [order, doseA, doseB, ntu, cake]] of twoRows.entries()) {
    const id = `jar-2-${String(index + 1).padStart(2, "0")}`;
    commands.push(
      add("jar", {
        id,
        seriesId: "series-2",
        label: `${index + 1}`,
        order,
        role: doseA === 6 && doseB === 3 ? "centre" : "dose",
        plannedDoseAKgPerT: doseA,
        plannedDoseBKgPerT: doseB,
        syringeAMl: Math.round(doseA * 12.43) / 10,
        syringeBMl: Math.round(doseB * 62.13) / 10,
        // The second series of the day: by its last jar the sample has stood for hours, and the quality panel says so.
        mixedAt: new Date(Date.parse(startedAt) + order * 5 * 60_000).toISOString(),
      }),
      add("reading", { id: `${id}-r1`, jarId: id, result: { kind: "turbidity", value: ntu, dilution: 1 } }),
      add("reading", { id: `${id}-r2`, jarId: id, result: { kind: "cake-ts", pct: cake } }),
    );
  }
  return together(words.steps.series(words.seriesPair), commands);
}

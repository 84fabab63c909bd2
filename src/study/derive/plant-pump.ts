import { bad, good, type Outcome } from "../../outcome.ts";
import { meteringFigures, type MeteringFigure } from "../../plant/metering.ts";
import { choosePumpModel, withinPanel, type PumpModel } from "../../plant/pump-model.ts";
import { checkPump, type Draw, type PumpCheck, type PumpLine } from "../../plant/pump-line.ts";
import { strokeAtHeldSpeed } from "../../plant/stroke-speed.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";

type Pump = RecordOf<"pump">;
type DrawDown = RecordOf<"drawDown">;

/** What a pump moves: as it stands now, or as it stood at a draw-down. */
export type Fluid = NonNullable<DrawDown["fluid"]>;

export interface PumpChain {
  pump: Pump;
  draws: DrawDown[];
  /** the line or curve in use, inside the panel's own ends; read flows by flowAt, settings by settingFor */
  line: Outcome<PumpLine>;
  check: Outcome<PumpCheck>;
  model: Outcome<PumpModel>;
  /** API 675-style figures of the draws that count */
  metering: Outcome<MeteringFigure[]>;
  /** flow in mL/min or g/min against the setting (for stroke times speed: the stroke at the held speed) */
  flows: Draw[];
  /** moment of the latest draw-down that counts; null where none has one */
  calibratedAt: string | null;
  /** what changed since the calibration was taken, each with the reason why it matters */
  changes: string[];
}

/** The lot, active share, density and strength of what a pump moves, as entered now. */
export function fluidOf(state: StudyState, pump: Pump): Fluid | null {
  const makeDown = state.makeDown[pump.makeDownId];
  const product = makeDown ? state.product[makeDown.productId] : undefined;
  if (!makeDown || !product) return null;
  return {
    lot: `${product.label}${product.lot ? `, ${product.lot}` : ""}`,
    activePct: product.activePct,
    densityKgPerL: pump.stream === "neat" ? product.densityKgPerL : makeDown.solutionDensityKgPerL,
    solutionActivePct: pump.stream === "solution" ? makeDown.solutionActivePct : null,
  };
}

const fluidWords: { field: keyof Fluid; name: string; unit: string; why: string }[] = [
  {
    field: "lot",
    name: "lot",
    unit: "",
    why: "another lot may be thicker or thinner, and a pump then slips by another amount",
  },
  {
    field: "activePct",
    name: "active share",
    unit: "%",
    why: "the product is not the one that was drawn, and its viscosity goes with it",
  },
  {
    field: "densityKgPerL",
    name: "density",
    unit: "kg/L",
    why: "volume and mass no longer belong together as when it was drawn",
  },
  {
    field: "solutionActivePct",
    name: "solution strength",
    unit: "%",
    why: "a stronger or weaker solution slips by another amount",
  },
];

function changesSince(before: Fluid, now: Fluid): string[] {
  const shown = (value: string | number | null, unit: string) =>
    value === null ? "nothing" : `${value}${unit ? ` ${unit}` : ""}`;
  return fluidWords.flatMap(({ field, name, unit, why }) =>
    before[field] === now[field]
      ? []
      : [`${name} was ${shown(before[field], unit)} and is now ${shown(now[field], unit)}: ${why}`],
  );
}

function flowsOf(pump: Pump, draws: DrawDown[]): Outcome<Draw[]> {
  const used = draws.filter((draw) => !draw.leftOut);
  if (used.length === 0) return bad("no draw-down yet");
  const flow = (draw: DrawDown) => (draw.amount / draw.seconds) * 60;
  if (pump.control === "one") return good(used.map((draw) => ({ setting: draw.setting, flow: flow(draw) })));
  if (pump.heldSpeedPct === null) return bad("enter the speed at which the pump is to be run");
  if (pump.zeroStrokePct === null)
    return bad("enter the stroke at which the pump stops delivering (0 for an ideal one)");
  const flows: Draw[] = [];
  for (const draw of used) {
    if (draw.speedPct === null) return bad("enter the speed of each draw-down");
    flows.push({
      setting: strokeAtHeldSpeed(draw.setting, draw.speedPct, pump.heldSpeedPct, pump.zeroStrokePct),
      flow: flow(draw),
    });
  }
  return good(flows);
}

/** A pump with its draw-downs and line. The pump must exist. */
export function pumpChain(state: StudyState, pumpId: string): PumpChain {
  const pump = state.pump[pumpId]!;
  const draws = Object.values(state.drawDown)
    .filter((draw) => draw.pumpId === pumpId)
    .sort((a, b) => a.setting - b.setting || (a.id < b.id ? -1 : 1));
  const flows = flowsOf(pump, draws);
  const model: Outcome<PumpModel> = flows.ok
    ? choosePumpModel(flows.value, { shape: pump.shape, weights: pump.weights })
    : flows;
  const highest = pump.control === "stroke-speed" ? (pump.settingHigh ?? 100) : pump.settingHigh;
  const counted = draws.filter((draw) => !draw.leftOut);
  const latest = counted
    .filter((draw) => draw.takenAt !== null)
    .sort((a, b) => (a.takenAt! < b.takenAt! ? 1 : -1))[0];
  const now = fluidOf(state, pump);
  const before = latest?.fluid ?? null;
  return {
    pump,
    draws,
    line: model.ok ? good(withinPanel(model.value.line, pump.settingLow, highest)) : model,
    check: flows.ok ? checkPump(flows.value) : flows,
    model,
    metering: flows.ok ? meteringFigures(flows.value) : flows,
    flows: flows.ok ? flows.value : [],
    calibratedAt: latest?.takenAt ?? null,
    changes: before && now ? changesSince(before, now) : [],
  };
}

/** What the panel's number is called: its unit, and the held speed of a stroke-times-speed pump. */
export function settingWords(pump: Pump): string {
  if (pump.control !== "stroke-speed") return pump.settingUnit;
  return `% stroke at ${pump.heldSpeedPct === null ? "the held" : `${pump.heldSpeedPct} %`} speed`;
}

export interface CalibrationAge {
  days: number | null;
  /** true where the crew's own limit is passed */
  old: boolean;
  words: string;
}

/** How old a calibration is at a moment, against the crew's own limit. */
export function calibrationAge(chain: PumpChain, now: string): CalibrationAge {
  if (chain.calibratedAt === null)
    return { days: null, old: false, words: "no draw-down says when it was taken" };
  const days = Math.max(0, (Date.parse(now) - Date.parse(chain.calibratedAt)) / 86_400_000);
  const hours = Math.floor(days * 24);
  const ago =
    days >= 2 ? `${Math.floor(days)} days ago` : hours >= 1 ? `${hours} h ago` : "within the last hour";
  const limit = chain.pump.calibrationGoodDays;
  const old = limit !== null && days > limit;
  return {
    days,
    old,
    words: old
      ? `calibrated ${ago}, past its ${limit} days: repeat the draw-downs`
      : limit === null
        ? `calibrated ${ago}; no limit of age is set`
        : `calibrated ${ago}, good for ${limit} days`,
  };
}

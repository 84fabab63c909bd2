import { bad, good, type Outcome } from "../../outcome.ts";
import { meteringFigures, type MeteringFigure } from "../../plant/metering.ts";
import { choosePumpModel, withinPanel, type PumpModel } from "../../plant/pump-model.ts";
import { checkPump, type Draw, type PumpCheck, type PumpLine } from "../../plant/pump-line.ts";
import { strokeAtHeldSpeed } from "../../plant/stroke-speed.ts";
import { pumpChainWords } from "../../words/pump-chain.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import type { StateTone } from "./tone.ts";

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

const fluidWords = (): { field: keyof Fluid; name: string; unit: string; why: string }[] => [
  {
    field: "lot",
    name: pumpChainWords.lot,
    unit: "",
    why: pumpChainWords.lotWhy,
  },
  {
    field: "activePct",
    name: pumpChainWords.activeShare,
    unit: "%",
    why: pumpChainWords.activeShareWhy,
  },
  {
    field: "densityKgPerL",
    name: pumpChainWords.density,
    unit: "kg/L",
    why: pumpChainWords.densityWhy,
  },
  {
    field: "solutionActivePct",
    name: pumpChainWords.strength,
    unit: "%",
    why: pumpChainWords.strengthWhy,
  },
];

function changesSince(before: Fluid, now: Fluid): string[] {
  const shown = (value: string | number | null, unit: string) =>
    value === null ? pumpChainWords.nothing : `${value}${unit ? ` ${unit}` : ""}`;
  return fluidWords().flatMap(({ field, name, unit, why }) =>
    before[field] === now[field]
      ? []
      : [pumpChainWords.changed(name, shown(before[field], unit), shown(now[field], unit), why)],
  );
}

function flowsOf(pump: Pump, draws: DrawDown[]): Outcome<Draw[]> {
  const used = draws.filter((draw) => !draw.leftOut);
  if (used.length === 0) return bad(pumpChainWords.noDrawDown);
  const flow = (draw: DrawDown) => (draw.amount / draw.seconds) * 60;
  if (pump.control === "one") return good(used.map((draw) => ({ setting: draw.setting, flow: flow(draw) })));
  if (pump.heldSpeedPct === null) return bad(pumpChainWords.enterHeldSpeed);
  if (pump.zeroStrokePct === null) return bad(pumpChainWords.enterZeroStroke);
  const flows: Draw[] = [];
  for (const draw of used) {
    if (draw.speedPct === null) return bad(pumpChainWords.enterSpeeds);
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
  if (pump.control !== "stroke-speed") return pumpChainWords.units[pump.settingUnit];
  return pump.heldSpeedPct === null
    ? pumpChainWords.strokeAtHeldSpeed
    : pumpChainWords.strokeAtSpeed(pump.heldSpeedPct);
}

export interface CalibrationAge {
  days: number | null;
  /** true where the crew's own limit is passed */
  old: boolean;
  words: string;
}

/** How a calibration is to be taken at an age: nobody can call one good that says not when it was taken. */
export function calibrationTone(chain: PumpChain, age: CalibrationAge): StateTone {
  if (age.old || chain.changes.length > 0) return "warn";
  return age.days === null ? "open" : "good";
}

/** How old a calibration is at a moment, against the crew's own limit. */
export function calibrationAge(chain: PumpChain, now: string): CalibrationAge {
  if (chain.calibratedAt === null) return { days: null, old: false, words: pumpChainWords.noMoment };
  const days = Math.max(0, (Date.parse(now) - Date.parse(chain.calibratedAt)) / 86_400_000);
  const hours = Math.floor(days * 24);
  const ago =
    days >= 2
      ? pumpChainWords.daysAgo(Math.floor(days))
      : hours >= 1
        ? pumpChainWords.hoursAgo(hours)
        : pumpChainWords.withinHour;
  const limit = chain.pump.calibrationGoodDays;
  const old = limit !== null && days > limit;
  return {
    days,
    old,
    words: old
      ? pumpChainWords.tooOld(ago, limit)
      : limit === null
        ? pumpChainWords.noLimit(ago)
        : pumpChainWords.goodFor(ago, limit),
  };
}

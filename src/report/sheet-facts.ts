import { cylinderBand } from "../plant/cylinder.ts";
import { flowAt } from "../plant/pump-line.ts";
import { decisionChain, type DecisionChain } from "../study/derive/decision.ts";
import {
  plantChain,
  type CaseChain,
  type CasePolymer,
  type PlantPolymer,
  type PumpChain,
} from "../study/derive/plant.ts";
import { sampleChain, type SampleChain } from "../study/derive/sample.ts";
import type { RecordOf } from "../study/schema/records.ts";
import type { PaperInput } from "./paper-input.ts";
import { settingGrid, type SettingGrid } from "./setting-grid.ts";
import { paperWords, type PaperWords } from "./words.ts";

/** What a setting sheet is made from. */
export interface SheetInput extends PaperInput {
  seriesId: string;
  /** the feed case the sheet is for; null for the usual one */
  feedCaseId: string | null;
  /** the dose looked at, used only while none is approved: the sheet then says that it is not approved */
  lookedAt: { a: number; b: number | null } | null;
}

/** The big number of a sheet, or the words that stand in its place. */
export type SettingFact =
  { kind: "setting"; text: string; unit: string; interval: string } | { kind: "words"; text: string };

/** One polymer's part of the sheet, in words. */
export interface PolymerFacts {
  polymer: PlantPolymer;
  dose: string;
  asSupplied: string;
  setting: SettingFact;
  /** flow that the pump should give, both unit systems; null where it is not known */
  flow: string | null;
  cylinder: string | null;
  hasBand: boolean;
  /** why there is no band, or that it is too wide to be of use */
  bandNote: string;
  solution: string;
  /** make-up water, and carrier water where there is any */
  water: string | null;
  grid: SettingGrid | null;
}

export interface SheetFacts {
  words: PaperWords;
  study: RecordOf<"study"> | null;
  series: RecordOf<"series">;
  sample: SampleChain;
  sampleRecord: RecordOf<"sample">;
  decision: DecisionChain | null;
  status: "approved" | "out of date" | "not approved";
  feed: CaseChain | null;
  /** what stands in the way of any setting, in words; null where nothing does */
  missing: string | null;
  polymers: PolymerFacts[];
  /** when the user's own record says so; null where it does not */
  validUntil: string | null;
}

/** seconds one draw-down is to last */
export const drawSeconds = 60;
/** how well a crew reads the cylinder and stops the watch: half-widths, common practice, no source */
export const reading = { cylinderLimitMl: 1, watchLimitS: 0.3 };
const widestPct = 5;

/** Everything a setting sheet says, from the same chain the screens use. The series must exist. */
export function sheetFacts(input: SheetInput): SheetFacts {
  const { state, seriesId } = input;
  const series = state.series[seriesId]!;
  const study = state.study["study"] ?? null;
  const words = paperWords(study?.decimalMark ?? ".", input.utcOffsetMin);
  const decision = decisionChain(state, seriesId);
  const dose = decision
    ? { a: decision.decision.doseAKgPerT, b: decision.decision.doseBKgPerT }
    : input.lookedAt;
  const plant = plantChain(state, seriesId, dose);
  const feed =
    plant.cases.find(({ feedCase }) => feedCase.id === input.feedCaseId) ??
    plant.cases.find(({ feedCase }) => feedCase.size === "usual") ??
    plant.cases[0] ??
    null;
  const missing = !feed
    ? (plant.missing ?? "add a feed case: the flow and its solids")
    : feed.rates.ok
      ? null
      : feed.rates.message;
  return {
    words,
    study,
    series,
    sample: sampleChain(state, series.sampleId),
    sampleRecord: state.sample[series.sampleId]!,
    decision,
    status: decision ? decision.word : "not approved",
    feed,
    missing,
    polymers: plant.polymers.map((polymer) =>
      polymerFacts(
        polymer,
        feed?.polymers.find((one) => one.polymer.letter === polymer.letter) ?? null,
        feed,
        plant.cases,
        missing,
        words,
      ),
    ),
    validUntil: ownText(decision?.decision, "validUntil"),
  };
}

/** A field that a later version of a record may hold. */
function ownText(record: object | undefined, field: string): string | null {
  const value: unknown =
    record && Object.hasOwn(record, field) ? (record as Record<string, unknown>)[field] : null;
  return typeof value === "string" && value !== "" ? value : null;
}

function polymerFacts(
  polymer: PlantPolymer,
  rated: CasePolymer | null,
  feed: CaseChain | null,
  cases: CaseChain[],
  missing: string | null,
  words: PaperWords,
): PolymerFacts {
  const product = polymer.product ?? polymer.benchProduct;
  const { makeDown } = polymer;
  return {
    polymer,
    dose: `${words.both(polymer.doseKgPerT, "doseKgPerT", 3)} active`,
    asSupplied:
      product.activePct === null
        ? "missing: the active share of the product"
        : `${words.both(polymer.doseKgPerT / (product.activePct / 100), "doseKgPerT", 3)} as supplied`,
    setting: settingFact(polymer.pump, rated, missing, words),
    ...cylinderFacts(polymer.pump, rated, words),
    solution:
      makeDown?.solutionActivePct == null
        ? "missing: the strength of the plant's solution"
        : solutionWords(makeDown.solutionActivePct, product.activePct, rated, words),
    water: rated ? waterWords(rated, words) : null,
    grid: rated && feed ? settingGrid(feed, cases, rated, words) : null,
  };
}

function waterWords({ rates, polymer }: CasePolymer, words: PaperWords): string {
  const makeUp = `make-up ${words.both(rates.makeUpWaterKgPerH, "kgPerH")}`;
  const to = polymer.makeDown?.carrierActivePct ?? null;
  if (rates.carrierLPerH === undefined || to === null) return makeUp;
  return `${makeUp}, carrier ${words.both(rates.carrierLPerH, "flowLPerH")} to reach ${words.entered(to)} % active`;
}

function solutionWords(
  solutionPct: number,
  activePct: number | null,
  rated: CasePolymer | null,
  words: PaperWords,
): string {
  const supplied =
    activePct === null ? "" : `, ${words.number((100 * solutionPct) / activePct, 3)} % as supplied`;
  const flow = rated ? `, ${words.both(rated.rates.solutionLPerH, "flowLPerH")}` : "";
  return `${words.entered(solutionPct)} % active${supplied}${flow}`;
}

const outside = {
  above:
    "No setting: needs more than the highest setting proven by draw-down. Another pump, a stronger solution, or draw-downs higher up.",
  below:
    "No setting: needs less than the lowest setting proven by draw-down. A weaker solution, a smaller pump, or draw-downs lower down.",
};

function settingFact(
  pump: PumpChain | null,
  rated: CasePolymer | null,
  missing: string | null,
  words: PaperWords,
): SettingFact {
  if (missing !== null || !rated)
    return { kind: "words", text: `No setting. Missing: ${missing ?? "the rates"}.` };
  if (!pump) return { kind: "words", text: "No setting. Missing: a pump with draw-downs." };
  if (!pump.line.ok)
    return { kind: "words", text: `No setting. Missing: ${pump.line.message}.`.replace("..", ".") };
  const { setting } = rated;
  if (!setting) return { kind: "words", text: "No setting. Missing: the flow that the pump must give." };
  if (setting.pct === null)
    return { kind: "words", text: setting.status === "below" ? outside.below : outside.above };
  return {
    kind: "setting",
    text: words.number(setting.pct, 3),
    unit: pump.pump.settingUnit,
    interval:
      setting.low === null || setting.high === null
        ? "no interval: fewer than three draw-downs"
        : `${words.number(setting.low, 3)} to ${words.number(setting.high, 3)} ${pump.pump.settingUnit} (95 %, pump line alone)`,
  };
}

function cylinderFacts(
  pump: PumpChain | null,
  rated: CasePolymer | null,
  words: PaperWords,
): Pick<PolymerFacts, "flow" | "cylinder" | "hasBand" | "bandNote"> {
  const pumpFlow = rated?.pumpFlow ?? null;
  if (!pump || pumpFlow === null) return { flow: null, cylinder: null, hasBand: false, bandNote: "" };
  const weighed = pump.pump.measuredIn === "g";
  const unit = weighed ? "g" : "mL";
  const flow = weighed
    ? words.both((pumpFlow * 60) / 1000, "kgPerH", 3)
    : words.both((pumpFlow * 60) / 1000, "flowLPerH", 3);
  const setting = rated?.setting?.pct ?? null;
  if (!pump.line.ok || setting === null) return { flow, cylinder: null, hasBand: false, bandNote: "" };
  const vessel = weighed ? "on the balance" : "in the cylinder";
  const line = pump.line.value;
  const band = cylinderBand(line, setting, drawSeconds, reading);
  if (!band) {
    const expected = (flowAt(line, setting).flow * drawSeconds) / 60;
    return {
      flow,
      cylinder: `${words.number(expected, 3)} ${unit} in ${drawSeconds} s ${vessel}`,
      hasBand: false,
      bandNote: "No band: fewer than three draw-downs, so nothing says how far off is still good.",
    };
  }
  return {
    flow,
    cylinder: `${words.number(band.expectedMl, 3)} ${unit} in ${drawSeconds} s ${vessel} (good from ${words.number(band.low, 3)} to ${words.number(band.high, 3)} ${unit})`,
    hasBand: true,
    bandNote:
      band.relativePct > widestPct
        ? `The band is wider than ${widestPct} %: use a larger vessel or a longer time.`
        : "",
  };
}

/** How to read the band. */
export function bandWords(words: PaperWords): string {
  return `Good from, to: 95 % of single draw-downs, read to ± ${words.entered(reading.cylinderLimitMl)} mL (or g) and ± ${words.entered(reading.watchLimitS)} s. Outside: set again, or find the fault: suction, air, relief valve, strength.`;
}

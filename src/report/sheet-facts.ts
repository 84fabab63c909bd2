import { flowAt } from "../plant/pump-line.ts";
import { decisionChain } from "../study/derive/decision.ts";
import { bandFor, widthWords } from "../study/derive/plant-check.ts";
import { settingWords } from "../study/derive/plant-pump.ts";
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
import { sheetState, type SheetState } from "./sheet-state.ts";
import { paperWords, type PaperWords } from "./words.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { sheetWords } from "../words/sheet.ts";

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

export interface SheetFacts extends SheetState {
  words: PaperWords;
  study: RecordOf<"study"> | null;
  series: RecordOf<"series">;
  sample: SampleChain;
  sampleRecord: RecordOf<"sample">;
  feed: CaseChain | null;
  /** what stands in the way of any setting, in words; null where nothing does */
  missing: string | null;
  polymers: PolymerFacts[];
}

/** seconds one draw-down is to last */
const drawSeconds = 60;

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
    ? (plant.missing ?? sheetWords.addFeedCase)
    : feed.rates.ok
      ? null
      : feed.rates.message;
  return {
    ...sheetState(state, seriesId, plant, input.now),
    words,
    study,
    series,
    sample: sampleChain(state, series.sampleId),
    sampleRecord: state.sample[series.sampleId]!,
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
  };
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
    dose: doseWords(polymer, words),
    asSupplied:
      product.activePct === null
        ? sheetWords.missingShare
        : onPaperWords.asSupplied(
            words.both(polymer.doseKgPerT / (product.activePct / 100), "doseKgPerT", 3),
          ),
    setting: settingFact(polymer.pump, rated, missing, words),
    ...cylinderFacts(polymer.pump, rated, words),
    solution:
      makeDown?.solutionActivePct == null
        ? sheetWords.missingStrength
        : solutionWords(makeDown.solutionActivePct, product.activePct, rated, words),
    water: rated ? waterWords(rated, words) : null,
    grid: rated && feed ? settingGrid(feed, cases, rated, words) : null,
  };
}

/** The dose that the settings follow, with the bench dose and factor it comes from where one is in use. */
function doseWords({ doseKgPerT, benchDoseKgPerT, factor }: PlantPolymer, words: PaperWords): string {
  const dose = onPaperWords.active(words.givenBoth(doseKgPerT, "doseKgPerT"));
  if (!factor?.factor.ok) return dose;
  const { factor: value, n } = factor.factor.value;
  return sheetWords.doseWithFactor(
    dose,
    words.givenBare(benchDoseKgPerT, "doseKgPerT"),
    words.number(value, 3),
    n,
  );
}

function waterWords({ rates, polymer }: CasePolymer, words: PaperWords): string {
  const makeUp = words.both(rates.makeUpWaterKgPerH, "kgPerH");
  const to = polymer.makeDown?.carrierActivePct ?? null;
  if (rates.carrierLPerH === undefined || to === null) return sheetWords.makeUp(makeUp);
  return sheetWords.makeUpAndCarrier(makeUp, words.both(rates.carrierLPerH, "flowLPerH"), words.entered(to));
}

function solutionWords(
  solutionPct: number,
  activePct: number | null,
  rated: CasePolymer | null,
  words: PaperWords,
): string {
  const supplied =
    activePct === null
      ? ""
      : `, ${sheetWords.pctAsSupplied(words.number((100 * solutionPct) / activePct, 3))}`;
  const flow = rated ? `, ${words.both(rated.rates.solutionLPerH, "flowLPerH")}` : "";
  return `${sheetWords.pctActive(words.entered(solutionPct))}${supplied}${flow}`;
}

function settingFact(
  pump: PumpChain | null,
  rated: CasePolymer | null,
  missing: string | null,
  words: PaperWords,
): SettingFact {
  if (missing !== null || !rated)
    return { kind: "words", text: sheetWords.noSetting(missing ?? sheetWords.gaps.rates) };
  if (!pump) return { kind: "words", text: sheetWords.noSetting(sheetWords.gaps.pump) };
  if (!pump.line.ok)
    return { kind: "words", text: sheetWords.noSetting(pump.line.message).replace("..", ".") };
  const { setting } = rated;
  if (!setting) return { kind: "words", text: sheetWords.noSetting(sheetWords.gaps.flow) };
  if (setting.pct === null)
    return { kind: "words", text: sheetWords.outside[setting.status === "below" ? "below" : "above"] };
  const write = words.interval(setting.pct, setting.low, setting.high);
  return {
    kind: "setting",
    text: write(setting.pct),
    unit: settingWords(pump.pump),
    interval:
      setting.low === null || setting.high === null
        ? sheetWords.noInterval
        : sheetWords.interval(write(setting.low), write(setting.high), settingWords(pump.pump)),
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
  const caught = sheetWords.caught[weighed ? "balance" : "cylinder"];
  const line = pump.line.value;
  const band = bandFor(pump, setting, drawSeconds);
  if (!band.ok) {
    const expected = (flowAt(line, setting).flow * drawSeconds) / 60;
    return {
      flow,
      cylinder: caught(`${words.number(expected, 3)} ${unit}`, drawSeconds),
      hasBand: false,
      bandNote: sheetWords.noBand(band.message),
    };
  }
  const { expectedMl, low, high } = band.value;
  const write = words.interval(expectedMl, low, high);
  return {
    flow,
    cylinder: sheetWords.goodFrom(
      caught(`${write(expectedMl)} ${unit}`, drawSeconds),
      write(low),
      `${write(high)} ${unit}`,
    ),
    hasBand: true,
    bandNote: widthWords(band.value),
  };
}

/** How to read the band, with how well the crew says that it reads vessel and watch. */
export function bandWords(polymers: PolymerFacts[], words: PaperWords): string {
  const limits = new Set(
    polymers.flatMap(({ polymer: { pump }, hasBand }) =>
      pump && hasBand
        ? [
            sheetWords.readTo(
              `${words.entered(pump.pump.readingLimit)} ${pump.pump.measuredIn === "g" ? "g" : "mL"}`,
              words.entered(pump.pump.watchLimitS),
            ),
          ]
        : [],
    ),
  );
  return sheetWords.band(sheetWords.anyOf([...limits]));
}

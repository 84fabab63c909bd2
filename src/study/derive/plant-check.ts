import { cylinderBand, wideBandPct, type CylinderBand } from "../../plant/cylinder.ts";
import { bad, good, type Outcome } from "../../outcome.ts";
import { checkChainWords } from "../../words/check-chain.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import type { Figure } from "./figure.ts";
import type { FeedChain } from "./plant-feed.ts";
import { doseOfFlow, leftOutParts, type PlantPolymer } from "./plant-polymer.ts";
import type { PumpChain } from "./plant-pump.ts";
import type { StateTone } from "./tone.ts";

/** The cylinder band of a pump at a setting and a time, with the crew's own reading limits, or what is missing. */
export function bandFor(chain: PumpChain, setting: number, seconds: number): Outcome<CylinderBand> {
  if (!chain.line.ok) return chain.line;
  const { tested } = chain.line.value;
  const slack = 1e-9 * (tested.high - tested.low);
  if (setting < tested.low - slack || setting > tested.high + slack)
    return bad(checkChainWords.outsideProven);
  const band = cylinderBand(chain.line.value, setting, seconds, {
    cylinderLimitMl: chain.pump.readingLimit,
    watchLimitS: chain.pump.watchLimitS,
  });
  if (!band) return bad(checkChainWords.twoDrawDowns);
  if (!(band.expectedMl > 0)) return bad(checkChainWords.noFlow);
  return good(band);
}

export interface CheckChain {
  check: RecordOf<"cylinderCheck">;
  band: Outcome<CylinderBand>;
  inside: boolean | null;
  tone: StateTone;
  word: string;
  /** what to do, in plain sentences */
  advice: string[];
  /** false where the pump is to be set to something else by now: the check does not speak for that */
  atSetting: boolean;
  /** apart from the band: what the caught flow means as a dose, with the range of solids, strength, density and fit */
  dose: Figure | null;
  /** parts of that range that are not known, in words */
  doseLeftOut: string[];
}

/** A check speaks for a setting within this share of the proven range. */
const nearShare = 0.005;

/** The sentence for a band that is too wide to tell much, or "". */
export function widthWords(band: CylinderBand): string {
  return band.relativePct > wideBandPct ? checkChainWords.wideBand(wideBandPct) : "";
}

/** The latest cylinder check of a pump, judged against the settings in force (one a feed case); null where none was made. */
export function checkChain(
  state: StudyState,
  pump: PumpChain,
  polymer: PlantPolymer | null,
  feed: FeedChain | null,
  settings: number[],
): CheckChain | null {
  const check = Object.values(state.cylinderCheck)
    .filter((one) => one.pumpId === pump.pump.id)
    .reduce<RecordOf<"cylinderCheck"> | null>(
      (best, one) =>
        best === null || one.takenAt > best.takenAt || (one.takenAt === best.takenAt && one.id > best.id)
          ? one
          : best,
      null,
    );
  if (!check) return null;
  const band = bandFor(pump, check.setting, check.seconds);
  const inside = band.ok ? check.amount >= band.value.low && check.amount <= band.value.high : null;
  const advice: string[] = [];
  if (band.ok && inside === false) {
    const less = check.amount < band.value.low;
    advice.push(
      less ? checkChainWords.lessThanBand : checkChainWords.moreThanBand,
      less ? checkChainWords.lessFault : checkChainWords.moreFault,
      checkChainWords.checkStrength,
    );
  }
  if (band.ok && widthWords(band.value)) advice.push(widthWords(band.value));
  const reach = pump.line.ok ? nearShare * (pump.line.value.tested.high - pump.line.value.tested.low) : 0;
  const atSetting = settings.some((setting) => Math.abs(setting - check.setting) <= reach);
  const measured = (check.amount / check.seconds) * 60;
  return {
    check,
    band,
    inside,
    atSetting,
    tone: inside === null ? "warn" : inside ? "good" : "bad",
    word:
      inside === null ? checkChainWords.noBand : inside ? checkChainWords.inside : checkChainWords.outside,
    advice,
    doseLeftOut: polymer && feed ? leftOutParts(polymer, feed.parts) : [],
    dose: polymer && feed ? doseOfFlow(polymer, measured, { ...feed.load, parts: feed.parts }) : null,
  };
}

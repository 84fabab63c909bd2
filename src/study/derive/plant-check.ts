import { cylinderBand, wideBandPct, type CylinderBand } from "../../plant/cylinder.ts";
import { bad, good, type Outcome } from "../../outcome.ts";
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
    return bad("this setting lies outside those proven by draw-down");
  const band = cylinderBand(chain.line.value, setting, seconds, {
    cylinderLimitMl: chain.pump.readingLimit,
    watchLimitS: chain.pump.watchLimitS,
  });
  if (!band) return bad("two draw-downs alone do not say how far one may lie off: add a third");
  if (!(band.expectedMl > 0)) return bad("the pump's line gives no flow at this setting");
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
  return band.relativePct > wideBandPct
    ? `The band is wider than ${wideBandPct} % either way: use a larger cylinder or a longer time.`
    : "";
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
      `${less ? "Less" : "More"} than the pump should give: set it again and repeat the draw-down.`,
      less
        ? "Then look for the fault: suction blocked or starved, air in the line, relief valve open, product thicker than when it was calibrated."
        : "Then look for the fault: siphoning or too little discharge pressure, another setting than shown, product thinner than when it was calibrated.",
      "Check the solution's strength before changing the dose.",
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
    word: inside === null ? "no band to judge by" : inside ? "pump within its band" : "pump outside its band",
    advice,
    doseLeftOut: polymer && feed ? leftOutParts(polymer, feed.parts) : [],
    dose: polymer && feed ? doseOfFlow(polymer, measured, { ...feed.load, parts: feed.parts }) : null,
  };
}

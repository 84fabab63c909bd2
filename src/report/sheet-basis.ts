import { settingWords } from "../study/derive/plant-pump.ts";
import type { PlantPolymer, PumpChain } from "../study/derive/plant.ts";
import { markup, type Markup } from "./markup.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import { agoWords, type PaperWords } from "./words.ts";
import { onPaperWords } from "../words/on-paper.ts";
import { sheetWords } from "../words/sheet.ts";

/** What the sheet rests on: sample, lots, strength and calibration, each with its age, and gaps as gaps. */
export function restsOn(facts: SheetFacts, now: string): Markup {
  const { polymers, words } = facts;
  const rows: [string, string][] = [
    [sheetWords.restsOn, sampleWords(facts, now)],
    ...polymers.flatMap(({ polymer }): [string, string][] => {
      const letter = polymers.length > 1 ? ` ${polymer.letter.toUpperCase()}` : "";
      return [
        [
          sheetWords.product(letter),
          sheetWords.productAndPump(productWords(polymer, words), calibrationWords(polymer.pump, now, words)),
        ],
      ];
    }),
  ];
  return markup`<section>${rows.map(([name, text]) => markup`<p><strong>${name}:</strong> ${text}</p>`)}</section>`;
}

function sampleWords({ sample, sampleRecord: record, words }: SheetFacts, now: string): string {
  const stage = sample.stage === "final" ? "" : `, ${sheetWords.stages[sample.stage]}`;
  const taken =
    record.takenAt === null
      ? sheetWords.timeNotNoted
      : sheetWords.taken(words.moment(record.takenAt), agoWords(record.takenAt, now));
  return `${record.label}, ${taken}, ${sheetWords.totalSolids(words.figure(sample.totalSolids))}${stage}`;
}

/** The range recorded with the decision. */
export function doseRange({ decision, words }: SheetFacts): string {
  const { lowKgPerT, highKgPerT } = decision!.decision;
  return lowKgPerT === null || highKgPerT === null
    ? sheetWords.noRange
    : sheetWords.doseGood(words.fromTo((lowKgPerT + highKgPerT) / 2, lowKgPerT, highKgPerT, "doseKgPerT"));
}

function productWords({ product, benchProduct, makeDown }: PlantPolymer, words: PaperWords): string {
  const used = product ?? benchProduct;
  const parts = [
    used.lot || onPaperWords.lotNotNoted,
    used.activePct === null ? sheetWords.shareMissing : sheetWords.pctActive(words.entered(used.activePct)),
    makeDown?.solutionActivePct == null
      ? sheetWords.strengthMissing
      : sheetWords.plantSolution(words.entered(makeDown.solutionActivePct)),
  ];
  if (!product) parts.push(sheetWords.noMakeDown);
  else if (product.id !== benchProduct.id)
    parts.push(sheetWords.otherLot(`${benchProduct.label}${benchProduct.lot && `, ${benchProduct.lot}`}`));
  return parts.join(", ");
}

/** The newest draw-down's moment, how many there are and between which settings. */
export function calibrationWords(pump: PumpChain | null, now: string, words: PaperWords): string {
  if (!pump) return onPaperWords.calibration.noPump;
  const used = pump.draws.filter(({ leftOut }) => !leftOut);
  if (used.length === 0) return onPaperWords.calibration.noDraws;
  const moments = used
    .flatMap(({ takenAt }) => (takenAt === null ? [] : [takenAt]))
    .sort((a, b) => Date.parse(a) - Date.parse(b));
  const last = moments.at(-1);
  const settings = used.map(({ setting }) => setting);
  const draws = onPaperWords.calibration.draws(
    used.length,
    words.entered(Math.min(...settings)),
    words.entered(Math.max(...settings)),
    settingWords(pump.pump),
  );
  const when =
    last === undefined ? onPaperWords.calibration.noDate : `${words.moment(last)} (${agoWords(last, now)})`;
  return `${draws}, ${when}`;
}

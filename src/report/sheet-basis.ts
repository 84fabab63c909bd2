import { settingWords } from "../study/derive/plant-pump.ts";
import type { PlantPolymer, PumpChain } from "../study/derive/plant.ts";
import { markup, type Markup } from "./markup.ts";
import type { SheetFacts } from "./sheet-facts.ts";
import { agoWords, type PaperWords } from "./words.ts";

/** What the sheet rests on: sample, lots, strength and calibration, each with its age, and gaps as gaps. */
export function restsOn(facts: SheetFacts, now: string): Markup {
  const { polymers, words } = facts;
  const rows: [string, string][] = [
    ["Rests on sample", sampleWords(facts, now)],
    ...polymers.flatMap(({ polymer }): [string, string][] => {
      const letter = polymers.length > 1 ? ` ${polymer.letter.toUpperCase()}` : "";
      return [
        [
          `Product${letter}`,
          `${productWords(polymer, words)}; pump: ${calibrationWords(polymer.pump, now, words)}`,
        ],
      ];
    }),
  ];
  return markup`<section>${rows.map(([name, text]) => markup`<p><strong>${name}:</strong> ${text}</p>`)}</section>`;
}

function sampleWords({ sample, sampleRecord: record, words }: SheetFacts, now: string): string {
  const stage = sample.stage === "final" ? "" : `, ${sample.stage.toUpperCase()}`;
  const taken =
    record.takenAt === null
      ? "time not noted"
      : `taken ${words.moment(record.takenAt)} (${agoWords(record.takenAt, now)})`;
  return `${record.label}, ${taken}, TS ${words.figure(sample.totalSolids)}${stage}`;
}

/** The range recorded with the decision. */
export function doseRange({ decision, words }: SheetFacts): string {
  const { lowKgPerT, highKgPerT } = decision!.decision;
  return lowKgPerT === null || highKgPerT === null
    ? "Dose: no range was recorded"
    : `Dose good from ${words.range(lowKgPerT, highKgPerT, "doseKgPerT")} active`;
}

function productWords({ product, benchProduct, makeDown }: PlantPolymer, words: PaperWords): string {
  const used = product ?? benchProduct;
  const parts = [
    used.lot || "lot not noted",
    used.activePct === null ? "active share missing" : `${words.entered(used.activePct)} % active`,
    makeDown?.solutionActivePct == null
      ? "plant solution's strength missing"
      : `plant solution ${words.entered(makeDown.solutionActivePct)} % active`,
  ];
  if (!product) parts.push("no make-down entered: the bench's lot is named");
  else if (product.id !== benchProduct.id)
    parts.push(
      `ANOTHER LOT THAN ON THE BENCH (${benchProduct.label}${benchProduct.lot && `, ${benchProduct.lot}`})`,
    );
  return parts.join(", ");
}

/** The newest draw-down's moment, how many there are and between which settings. */
export function calibrationWords(pump: PumpChain | null, now: string, words: PaperWords): string {
  if (!pump) return "missing: a pump with draw-downs";
  const used = pump.draws.filter(({ leftOut }) => !leftOut);
  if (used.length === 0) return "missing: draw-downs";
  const moments = used
    .flatMap(({ takenAt }) => (takenAt === null ? [] : [takenAt]))
    .sort((a, b) => Date.parse(a) - Date.parse(b));
  const last = moments.at(-1);
  const settings = used.map(({ setting }) => setting);
  return `${used.length} ${used.length === 1 ? "draw-down" : "draw-downs"} from ${words.number(Math.min(...settings))} to ${words.number(Math.max(...settings))} ${settingWords(pump.pump)}, ${
    last === undefined ? "date not noted" : `${words.moment(last)} (${agoWords(last, now)})`
  }`;
}

import { mixingPlaceWords } from "../../words/mixing-places.ts";
import type { RecordOf, StudyState } from "../schema/records.ts";
import type { SeriesChain } from "./jars.ts";
import { mixingChain, type MixingChain } from "./plant-mixing.ts";
import type { PlantChain } from "./plant.ts";

/** Where the plant mixes one polymer in, held against the jars of its series. */
export interface MixingPlace {
  letter: "A" | "B";
  makeDown: RecordOf<"makeDown">;
  /** the product's name */
  label: string;
  mixing: RecordOf<"mixing"> | null;
  compared: MixingChain | null;
}

/** Every polymer of a series that is made down at the plant, with its mixing where that was entered. */
export function mixingPlaces(state: StudyState, series: SeriesChain, plant: PlantChain): MixingPlace[] {
  const usual = plant.cases.find(({ feedCase }) => feedCase.size === "usual") ?? plant.cases[0] ?? null;
  const sample = state.sample[series.series.sampleId];
  return plant.polymers.flatMap(({ letter, makeDown, benchProduct }): MixingPlace[] => {
    if (!makeDown) return [];
    const mixing = Object.values(state.mixing).find((one) => one.makeDownId === makeDown.id) ?? null;
    const solution = usual?.polymers.find(({ polymer }) => polymer.letter === letter)?.rates ?? null;
    return [
      {
        letter: letter === "a" ? "A" : "B",
        makeDown,
        label: benchProduct.label,
        mixing,
        compared:
          mixing &&
          mixingChain(mixing, series.series, {
            benchTemperatureC: sample?.temperatureC ?? null,
            plantTemperatureC: usual?.feedCase.temperatureC ?? null,
            densityKgPerL: series.sample.density.value,
            feedM3PerH: usual?.flowM3PerH ?? null,
            solutionLPerH: solution ? solution.solutionLPerH + (solution.carrierLPerH ?? 0) : null,
          }),
      },
    ];
  });
}

/** What is told of a comparison of mixing, in its order. */
export function mixingFigures(compared: MixingChain) {
  return [
    { title: mixingPlaceWords.benchGt, figure: compared.benchGt },
    { title: mixingPlaceWords.plantGt, figure: compared.plantGt },
    { title: mixingPlaceWords.ratio, figure: compared.ratio },
    { title: mixingPlaceWords.matchFast, figure: compared.matchFastS },
    { title: mixingPlaceWords.plantG, figure: compared.plantG },
    { title: mixingPlaceWords.retention, figure: compared.retention },
    { title: mixingPlaceWords.pipeDelay, figure: compared.pipeDelay },
    { title: mixingPlaceWords.pipeNeeded, figure: compared.pipeNeeded },
  ];
}

import type { mixingPlaceWords } from "../mixing-places.ts";

export const mixingPlaces: typeof mixingPlaceWords = {
  benchGt: "Becher, G x t",
  plantGt: "Betrieb, G x t",
  ratio: "Betrieb / Becher",
  matchFast: "Schnelle Phase, die dem entspräche",
  plantG: "Betrieb, G",
  retention: "Verweilzeit im Mischer",
  pipeDelay: "Zeit im Rohr dahinter",
  pipeNeeded: "Rohr für die gewünschte Verzögerung",
  nominal:
    "G ist nominell: Gerechnet wird mit der Viskosität von Wasser; Schlamm ist dicker und wird unter Scherung dünner. Faktor zwei: übliche Praxis, ohne Quelle.",
};

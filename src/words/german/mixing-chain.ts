import type { mixingChainWords } from "../mixing-chain.ts";

export const mixingChain: typeof mixingChainWords = {
  density: "Dichte des Schlamms",
  sampleTemperature: "Temperatur der Probe",
  feedTemperature: "Temperatur des Zulaufs",
  flow: "Zulaufstrom mit seiner Lösung",
  jarPowerNumber: "Leistungskennzahl des Rührers im Becher",
  jarPaddle: "Durchmesser des Rührers im Becher",
  sampleVolume: "Probenvolumen der Reihe",
  fastSpeed: "schnelle Drehzahl der Reihe",
  fastTime: "schnelle Rührzeit der Reihe",
  slowSpeed: "langsame Drehzahl der Reihe (0 für keine)",
  slowTime: "langsame Rührzeit der Reihe (0 für keine)",
  benchFormula:
    "Summe von G x t der schnellen und der langsamen Phase; G = sqrt(P / (mu V)), P = Np rho N^3 D^5",
  tankVolume: "Volumen des Mischbehälters",
  mixerVolume: "Volumen des Mischers oder Ventils",
  retentionFormula: "Volumen / Durchfluss",
  tankPowerNumber: "Leistungskennzahl des Rührers im Behälter",
  tankSpeed: "Drehzahl des Rührers im Behälter",
  tankPaddle: "Durchmesser des Rührers im Behälter",
  pressureDrop: "Druckverlust über dem Mischer",
  inLineFormula: "sqrt(Druckverlust / (mu x Verweilzeit))",
  campFormula: "G x Verweilzeit",
  pipeDiameter: "Durchmesser des Rohrs",
  pipeLength: "Länge des Rohrs",
  delayFormula: "Länge x Querschnitt / Durchfluss",
  delayWanted: "gewünschte Verzögerung",
  pipeFormula: "4 x Durchfluss x Verzögerung / (pi x Durchmesser^2)",
  ratioFormula: "Gt im Betrieb / Gt im Labor",
  plantMixing: "Mischen im Betrieb",
  benchMixing: "Mischen im Labor",
  matchFormula: "(Gt im Betrieb - Gt der langsamen Phase) / G der schnellen Phase",
  enterMixing: "das Mischen eintragen",
  toCompare: (lack) => `Um das Mischen zu vergleichen: ${lack}.`,
  plantMixesMore: {
    tank: "Im Betrieb wird stärker gemischt als in den Bechern: Flocken können brechen und eine höhere Dosis brauchen. Die Becher länger oder schneller rühren, bis beides gleich ist, oder die Drehzahl des Rührers oder das Volumen des Behälters verringern.",
    inLine:
      "Im Betrieb wird stärker gemischt als in den Bechern: Flocken können brechen und eine höhere Dosis brauchen. Die Becher länger oder schneller rühren, bis beides gleich ist, oder das Ventil schwächer einstellen oder das Volumen des Mischers verringern.",
  },
  plantMixesLess: {
    tank: "Im Betrieb wird schwächer gemischt als in den Bechern: Polymer kann ungenutzt abgehen. Die Becher kürzer oder langsamer rühren, bis beides gleich ist, oder die Drehzahl des Rührers oder das Volumen des Behälters erhöhen.",
    inLine:
      "Im Betrieb wird schwächer gemischt als in den Bechern: Polymer kann ungenutzt abgehen. Die Becher kürzer oder langsamer rühren, bis beides gleich ist, oder das Ventil stärker einstellen oder das Volumen des Mischers erhöhen.",
  },
  alike: "Becher und Betrieb mischen gleich stark, bis auf einen Faktor zwei.",
};

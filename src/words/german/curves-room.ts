import type { curvesRoomWords } from "../curves-room.ts";

export const curvesRoom: typeof curvesRoomWords = {
  empty: "Kurven entstehen aus den Bechern",
  emptyWhy:
    "Sobald einige Becher eine Dosis und eine Ablesung haben, wird hier jede Messgröße über der Dosis gezeichnet, mit der Sicherheit ihrer besten Dosis.",
  goToBench: "Zum Labor",
  curves: "Kurven",
  verdicts: "Was die Kurven sagen",
  kinds: { knee: "Knick", optimum: "Optimum" },
  kneeMeans: { where: "wo das", plateau: "Plateau", begins: "beginnt, liegt der", knee: "Knick" },
  robust: {
    dose: "Mit weniger Gewicht für weit abliegende Becher (Bisquare) wäre die Dosis",
    jars: (jars) => `: Becher ${jars} zieht sie.`,
  },
  outlierHigh: (jar) =>
    `Becher ${jar} liegt über der Kurve: zu wenig in der Spritze, aufgewirbelte Feinstoffe oder zu spät abgelesen. Wiederholen oder mit Begründung weglassen.`,
  outlierLow: (jar) =>
    `Becher ${jar} liegt unter der Kurve: doppelte Dosis, Ablesung eines anderen Bechers oder eine Küvette, deren Inhalt sich abgesetzt hatte. Wiederholen oder mit Begründung weglassen.`,
  mover: (jar, dose, shift) =>
    `Ohne Becher ${jar} wäre die Dosis ${dose} (${shift}); kein anderer Becher verschiebt sie so weit.`,
  next: {
    jars: (doses, unit, shrinkPct) =>
      `Weitere Becher bei ${doses} ${unit} würden das Intervall um etwa ${shrinkPct} % verkleinern.`,
    jarsAndTight: (doses, unit, shrinkPct) =>
      `Weitere Becher bei ${doses} ${unit} würden das Intervall um etwa ${shrinkPct} % verkleinern. Für die Kosten ist es eng genug: Sie ändern sich darin um weniger als 1 %.`,
    times: (dose, count) => `${dose} (${count}-mal)`,
    and: (doses) => doses.join(" und "),
  },
  models: {
    title: "Modelle im Vergleich",
    of: (response) => `Modelle: ${response}`,
    model: "Modell",
    aiccHint: "korrigiertes Akaike-Kriterium: kleiner ist besser, bis 2 Abstand gilt als gleichauf",
    lackOfFitHint: "Modellabweichung: unter 0,05 verfehlt das Modell die Dosen",
    lackOfFit: "Modell\u00adabweichung,",
    bestDose: "beste Dosis,",
    withNoPolymer: "mit Bechern ohne Polymer",
    suggested: "(Vorschlag)",
  },
  residuals: {
    title: "Residuen",
    against: "Residuen aufgetragen über",
    againstDose: "über der Dosis",
    againstOrder: "über der Reihenfolge",
    ofDose: (model) => `Residuen (${model}) über der Dosis`,
    ofOrder: (model) => `Residuen (${model}) über der Reihenfolge`,
    drawing: (beyond, jars) => `In Standardabweichungen: ${beyond} von ${jars} Bechern jenseits von 2.`,
    point: (jar, deviations, at) => `Becher ${jar} bei ${at}: ${deviations} Standardabweichungen`,
    twoDeviations: "2 SD",
    note: (model) => `${model}, in Standardabweichungen der Streuung; etwa 1 von 20 liegt jenseits von 2.`,
    order: "Reihenfolge",
    deviations: "Standardabweichungen",
    jar: (jar) => `Becher ${jar}`,
  },
  surface: {
    contour: "Höhenlinien über beiden Dosen",
    shown: "Gezeigte Messgröße",
    none: "Keine Fläche ließ sich anpassen: Die Gründe stehen daneben.",
    verdicts: "Was die Flächen sagen",
    atPair: (a, b, unit, responses) => `Bei A ${a}, B ${b} ${unit}: ${responses}`,
    jar: (jar, value) => `Becher ${jar}: ${value}`,
    lookedAt: "betrachtet",
    fileTitle: (response) => `${response} über beiden Dosen`,
    doseA: "Dosis A",
    doseB: "Dosis B",
    read: "abgelesen",
    held: (letter, dose) => `${letter} fest bei ${dose}`,
    along: (letter) => `Entlang ${letter}`,
    slice: (response, letter, held) => `${response} entlang der Dosis ${letter}, ${held}, mit dem 95-%-Band`,
  },
};

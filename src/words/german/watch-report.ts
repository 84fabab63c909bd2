import type { watchReportWords } from "../watch-report.ts";

export const watchReport: typeof watchReportWords = {
  driftTitle: (series) => `Driftüberwachung an Routineversuchen: ${series}`,
  noChart: (what, why) => `Kein Diagramm (${what}): ${why}.`,
  pairs: {
    title: (series) => `Zwei Maschineneinstellungen im Paarvergleich: ${series}`,
    caption: "B minus A, Paare kurz nacheinander; t-Test für Paare",
    result: "Ergebnis",
    pairs: "Paare",
    difference: "B minus A",
    says: "was es sagt",
    notYet: (why) => `noch nicht: ${why}`,
    real: "ein echter Unterschied",
    chance: "kein Unterschied, den diese Paare vom Zufall trennen könnten",
  },
  mixing: {
    title: "Einmischen, Becher gegen Betrieb",
    inTank: (letter, product) => `Polymer ${letter}, ${product}: in einem Rührbehälter eingemischt`,
    inPipe: (letter, product) => `Polymer ${letter}, ${product}: in einem Rohr eingemischt`,
  },
  land: {
    title: "Kuchen auf Flächen: Polymer je Hektar",
    limit: "Grenzwert, Wirksubstanz",
    period: "innerhalb von",
    years: (years) => `${years} Jahren`,
    drySolids: "Ausgebrachte Trockenmasse",
    inThoseYears: (amount) => `${amount} t/ha in diesen Jahren`,
    elsewhere: "Anderswo dosiert",
    highest: "Höchste Dosis nach diesem Grenzwert",
    together: "Dosis insgesamt",
    notEntered: "nicht eingetragen",
  },
};

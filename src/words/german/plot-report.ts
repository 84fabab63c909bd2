import type { plotReportWords } from "../plot-report.ts";

export const plotReport: typeof plotReportWords = {
  drainage: "Entwässerung über der Zeit",
  inJarTable: "Jedes Volumen steht in der Tabelle der Becher.",
  filtration: {
    title: "Filtrationsversuche",
    filled: "Gefüllt: die Punkte, durch die die Gerade geht; die Wertepaare stehen in der Tabelle.",
    caption: "Filtrationsversuche, Filtrat in mL nach Sekunden",
    jar: "Becher",
    pairs: "Wertepaare",
    straight: "gerader Teil",
    pair: (volume, seconds) => `${volume} nach ${seconds}`,
    points: (first, last) => `Punkte ${first} bis ${last}`,
    none: "keine",
  },
  residuals: {
    title: "Residuen der vorgeschlagenen Modelle",
    note: "In Standardabweichungen der Streuung jedes Modells; etwa 1 von 20 liegt jenseits von 2. Die Ablesungen stehen in der Tabelle der Becher, die Streuung in den Tabellen der Modelle.",
    beyond: (jars) => `Jenseits von 2: ${jars.join(", ")}.`,
    jarAt: (jar, deviations) => `Becher ${jar} bei ${deviations}`,
  },
  slices: {
    through: {
      approved: "Schnitt durch das freigegebene Paar",
      cheapest: "Schnitt durch das Paar nach der Regel",
      best: "Schnitt durch das Optimum der Anpassung",
    },
    mark: (dose) => `Schnitt bei ${dose}`,
    where: "Die Glieder der Fläche stehen in ihrer Tabelle.",
  },
  limits:
    "Dunkel: eingehalten mit einseitig 95 % Sicherheit der mittleren Kurve, jeder Grenzwert für sich; hell: nur im Mittel eingehalten. Die Dosen stehen in der Tabelle darüber.",
  cost: "Die Kosten bei der Dosis jeder Regel stehen in der Tabelle darüber.",
  pump: "Die Auslitermessungen stehen in der Tabelle darüber.",
  runsOnCurves: "Die Versuche sind die Rauten auf den Laborkurven ihrer Reihe, unter Kurven.",
};

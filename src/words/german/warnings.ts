import type { warningWords } from "../warnings.ts";

export const warnings: typeof warningWords = {
  "few-doses": "Weniger als fünf verschiedene Dosen: auf beiden Seiten Dosen ergänzen.",
  tie: "Mehrere Modelle passen etwa gleich gut: Der Bereich deckt sie alle ab.",
  "lack-of-fit": "Ein Modell verfehlt die Dosen stärker, als wiederholte Becher streuen.",
  outlier: "Ein Becher liegt weit neben der Kurve: wiederholen oder mit Begründung weglassen.",
  "outlier-masks-lack-of-fit":
    "Ein Ausreißer vergrößert die Streuung und verdeckt, dass das Modell schlecht passt.",
  edge: "Das Intervall verlässt die geprüften Dosen: dort Becher ergänzen.",
  censored: "Ablesungen außerhalb des Messbereichs gelten als Schranken, nicht als Zahlen.",
  "single-jars":
    "Keine Dosis wurde in einem eigenen Becher wiederholt; die Streuung wird nur aus der Kurve geschätzt.",
  "zero-dose": "Becher ohne Polymer zählen beim Vergleich nicht mit und dienen nur Formen, die bei 0 gelten.",
};

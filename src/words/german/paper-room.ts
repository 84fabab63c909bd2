import type { paperRoomWords } from "../paper-room.ts";

export const paperRoom: typeof paperRoomWords = {
  paper: "Papier",
  sizes: { A4: "A4", Letter: "Letter" },
  savePdf: "Als PDF speichern",
  saveHtml: "Als HTML speichern",
  print: "Drucken",
  pdfSaved: "Das PDF ist gespeichert.",
  backToPlant: "Zurück zum Betrieb",
  forFeed: "Für Zulauf",
  feedOf: (label, size) => `${label} (${size})`,
  noSheet: "Das Einstellblatt kommt zuletzt",
  noSheetWhy:
    "Es bringt die Pumpeneinstellungen einer Reihe auf eine Seite für das Bedienfeld: mit freigegebener Dosis, Zulauf und ausgeliterter Pumpe.",
  noReport: "Der Bericht hat noch nichts zu sagen",
  noReportWhy:
    "Er gibt den ganzen Versuch mit seinen Eingaben wieder, von der Probe bis zu den Pumpeneinstellungen, und füllt sich, während sie eingetragen werden.",
  fittingOne: "Der Bericht entsteht: Seine Kurven werden angepasst.",
  fitting: (number, total) => `Der Bericht entsteht: Reihe ${number} von ${total} wird angepasst.`,
  cancelled: "Der Bericht wurde abgebrochen. Es wurde nichts geändert.",
  make: "Bericht erstellen",
  failed: "Der Bericht ließ sich nicht erstellen.",
};

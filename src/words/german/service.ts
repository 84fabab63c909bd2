import type { serviceWords } from "../service.ts";

export const service: typeof serviceWords = {
  noStudy: "Es ist keine Studie geöffnet.",
  notInList: "Diese Studie steht nicht mehr in der Liste: erneut nachsehen.",
  noDialog: "Dieses Fenster hat keinen Dateidialog: die Studie in den Ordner der Studien legen.",
  historyPart:
    "Ein Teil des Verlaufs in dieser Datei lässt sich nicht lesen; was die Studie jetzt enthält, ist davon nicht berührt.",
  badHistory: "Der Verlauf in dieser Datei lässt sich nicht lesen. Sie bleibt, wie sie ist.",
  noPdf: "Dieses Fenster kann selbst kein PDF schreiben: drucken und als Drucker PDF wählen.",
  pdfNotWritten: "Das PDF ließ sich dort nicht schreiben: einen anderen Ort wählen.",
  noSuchCall: "Diesen Aufruf gibt es nicht.",
  otherStudy:
    "Ein anderes Fenster hat eine andere Studie geöffnet oder diese geschlossen. Was hier steht, wird nur gezeigt: dieses Fenster neu laden, um weiterzuarbeiten.",
  badAnswer: "Flocwright hat etwas geantwortet, was es nicht hätte sollen; dadurch wurde nichts geändert.",
  failed: "In Flocwright selbst ist etwas fehlgeschlagen. Was vorher gespeichert war, ist sicher.",
  stale: "Ein anderes Fenster hat die Studie inzwischen geändert: vor dieser Änderung erneut nachsehen.",
  stepGone: "Dieser Schritt steht nicht mehr im Verlauf.",
  approvalStays:
    "Der letzte Schritt hat eine Dosis oder eine Einstelltabelle freigegeben oder zurückgezogen; das wird nicht rückgängig gemacht: mit Begründung zurückziehen oder neu freigeben.",
  stepOfAnother: (name) => `Den letzten Schritt hat ${name} gemacht: Nur diese Person macht ihn rückgängig.`,
  noFolder: (fault) => `Der Ordner für Studien lässt sich nicht anlegen: ${fault}`,
  tooManyOfName: "Es gibt zu viele Studien dieses Namens: einen anderen Namen geben.",
  studyNamed: (name) => `Studie ${name}`,
  backupGone: "Diese Sicherung ist nicht mehr da: erneut nachsehen.",
  nothingRestored: (fault) => `Es wurde nichts wiederhergestellt. ${fault}`,
  whatCouldBeRead: (name) => `was aus ${name} lesbar war`,
  savedNotWritten: (fault) => `Was lesbar war, ließ sich nicht schreiben: ${fault}`,
  savedCopy: (name, number) => `${name} (gerettet${number})`,
  tooManySaved: "Neben dieser Studie liegen zu viele gerettete Kopien: einige wegräumen.",
  recordsApart:
    "Die Einträge dieser Studie passen nicht zusammen; deshalb lassen sich ihre Ergebnisse nicht berechnen.",
};

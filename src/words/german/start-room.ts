import type { startRoomWords } from "../start-room.ts";

export const startRoom: typeof startRoomWords = {
  what: "Von einer Reihe Becher zu Pumpeneinstellungen, mit Angabe, wie sicher das ist.",
  newStudy: "Neue Studie",
  newStudyWhat:
    "Eine Studie enthält einen Schlammstrom: seine Proben, Becher, die Entscheidung und die Pumpeneinstellungen. Ein Wegweiser führt von der ersten Schale zur ersten Dosis; er lässt sich jederzeit ausblenden.",
  name: "Name der Studie",
  begin: "Neue Studie beginnen",
  nameFirst: "Zuerst der neuen Studie einen Namen geben, zum Beispiel Anlage und Straße.",
  lookAround: "Erst einmal umsehen",
  lookAroundWhat:
    "Eine vollständige Studie zum Umsehen, in der jede Zahl erfunden ist: Schalen, Becher, Kurven, eine freigegebene Dosis, Pumpeneinstellungen und Betriebsversuche.",
  openDemo: "Erfundenes Beispiel öffnen",
  inFolder: "Alle Studien im Ordner",
  compare: "Studien suchen und vergleichen",
  folderEmpty:
    "Hier ist noch keine Studie. Oben eine neue beginnen oder die Datei einer Studie in diesen Ordner legen.",
  openOther: "Andere Datei öffnen…",
  recent: {
    title: "Zuletzt geöffnet",
    lost: (why, fileName) => `${why} Die Datei hieß ${fileName}.`,
    opened: (when) => `geöffnet ${when}`,
    takeOff: "Aus der Liste nehmen",
    takeOffNamed: (study) => `${study} aus der Liste nehmen`,
    isOff: (study) => `${study} ist aus der Liste genommen. Die Datei bleibt unberührt.`,
  },
  broken: {
    whatToDo: (fileName) => `Was sich für ${fileName} tun lässt`,
    looking: "Sicherungen werden gesucht…",
    noBackup: "Von dieser Studie gibt es keine Sicherung.",
    putBackup:
      "Eine Sicherung an ihre Stelle setzen (die jetzige Datei wird beiseitegelegt und geht nicht verloren):",
    salvage: "Was noch lesbar ist, als neue Studie speichern",
    salvaged: (fromRecords, fromHistory, dropped) =>
      `Aus der beschädigten Datei gelesen: ${fromRecords} Einträge, wie sie standen, ${fromHistory} nur aus dem Verlauf; ${dropped} ließen sich nicht verwenden. Die beschädigte Datei selbst ist unverändert.`,
  },
};

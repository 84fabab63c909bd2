import type { storageWords } from "../storage.ts";

export const storage: typeof storageWords = {
  folder: "Das ist ein Ordner, keine Studiendatei.",
  notPlain: "Das ist keine gewöhnliche Datei. Sie bleibt, wie sie ist.",
  empty: "Diese Datei ist leer. Sie bleibt, wie sie ist.",
  notAStudy: "Das ist keine Flocwright-Studie. Die Datei bleibt, wie sie ist.",
  cutShort:
    "Diese Studiendatei ist abgeschnitten. Sie bleibt, wie sie ist: eine Sicherung oder eine andere Kopie öffnen.",
  otherJournal:
    "Diese Studie wurde von einem anderen Programm auf eine andere Schreibweise umgestellt. Sie bleibt, wie sie ist: dort den Journalmodus auf DELETE zurückstellen oder eine Sicherung öffnen.",
  otherDatabase: "Das ist die Datenbank eines anderen Programms. Sie bleibt, wie sie ist.",
  newer: (version, known) =>
    `Diese Studie wurde von einem neueren Flocwright geschrieben (Format ${version}, dieses hier liest bis ${known}). Sie bleibt, wie sie ist: zuerst aktualisieren.`,
  neverFinished: "Diese Studiendatei wurde nie fertig geschrieben. Sie bleibt, wie sie ist.",
  damaged:
    "Diese Studiendatei ist beschädigt. Sie bleibt, wie sie ist: eine Sicherung oder eine andere Kopie öffnen.",
  strange: (part) =>
    `Diese Datei enthält etwas, das nicht zu einer Studie gehört (${part}). Sie bleibt, wie sie ist.`,
  noPart: (part) => `ohne ${part}`,
  beingSaved:
    "Diese Studie wird gerade gespeichert oder blieb mitten im Speichern stehen: öffnen und dann erneut nachsehen.",
  nameTaken: "Es gibt schon eine Datei dieses Namens. Sie bleibt, wie sie ist.",
  // A whole sentence after a colon keeps its capital.
  within: (sentence) => sentence,
  disk: {
    noFile: "Diese Datei gibt es nicht.",
    notAllowed: "Für diese Datei oder diesen Ordner fehlt Ihnen die Berechtigung.",
    nameTooLong: "Dieser Name ist zu lang für den Datenträger.",
    readOnlyFolder: "Dieser Ordner ist schreibgeschützt.",
    full: "Der Datenträger ist voll. Von dieser Änderung wurde nichts gespeichert: Platz schaffen, dann erneut versuchen.",
    notWritable: "Die Datei oder ihr Ordner lässt sich nicht beschreiben.",
    held: "Ein anderes Programm hält die Datei fest. Von dieser Änderung wurde nichts gespeichert: dort schließen, dann erneut versuchen.",
    unreachable:
      "Der Datenträger ließ sich nicht lesen oder beschreiben. Von dieser Änderung wurde nichts gespeichert: Verbindung prüfen, dann erneut versuchen.",
    damaged:
      "Die Datei ist beschädigt. Sie bleibt, wie sie ist: eine Sicherung oder eine andere Kopie öffnen.",
    unusable: "Die Datei ließ sich nicht verwenden.",
  },
  content: {
    badRecord: "Diese Studie enthält einen Eintrag, der sich nicht lesen lässt. Sie bleibt, wie sie ist.",
    unknownKind: (kind) =>
      `Diese Studie enthält eine Art von Eintrag, die dieses Flocwright nicht kennt (${kind}).`,
    wrongKind: (kind) =>
      `Diese Studie enthält einen Eintrag (${kind}), der nicht zu seiner Art passt. Sie bleibt, wie sie ist.`,
    lostReference: (from, to) =>
      `Diese Studie enthält einen Eintrag (${from}), der auf einen anderen verweist (${to}), der fehlt. Sie bleibt, wie sie ist: eine Sicherung öffnen oder retten, was lesbar ist.`,
    badHistory:
      "Der Verlauf in dieser Datei lässt sich nicht lesen. Sie bleibt, wie sie ist: eine Sicherung oder eine andere Kopie öffnen.",
    nothingReadable: "In dieser Datei ist nichts mehr lesbar. Sie bleibt, wie sie ist.",
  },
  open: {
    onlyLookedAt: "Diese Studie wird hier nur angesehen.",
    readOnly: (fault) => `Diese Studie wird nur zum Lesen gezeigt: ${fault}`,
    elsewhere: (machine, since) =>
      `Diese Studie ist seit ${since} auf dem Rechner ${machine} geöffnet. Sie wird hier nur zum Lesen gezeigt. Wenn dort niemand mehr arbeitet, die Datei mit der Endung .lock neben der Studie entfernen.`,
    here: "Diese Studie ist auf diesem Rechner schon in einem anderen Flocwright geöffnet. Sie wird hier nur zum Lesen gezeigt.",
    keepsTaking:
      "Ein anderes Flocwright belegt diese Studie immer wieder. Sie wird hier nur zum Lesen gezeigt.",
    notClosed:
      "Die letzte Sitzung mit dieser Studie endete, ohne sie zu schließen. Alles, was gespeichert war, ist da.",
    notUpgraded: (fault) => `Diese Studie hat ein älteres Format und wurde nicht umgestellt. ${fault}`,
    upgraded: (from, to) =>
      `Diese Studie wurde von einem älteren Flocwright geschrieben (Format ${from}). Sie wurde auf Format ${to} umgestellt; eine Kopie von vorher liegt bei ihren Sicherungen.`,
    vanished: (name) =>
      `Die Datei ${name} wurde verschoben, gelöscht oder ersetzt, während sie geöffnet war. Von dieser Änderung wurde nichts gespeichert: „Speichern unter“ verwenden oder die Datei zurücklegen.`,
    changedUnder: (name) =>
      `Die Datei ${name} wurde von einem anderen Programm geändert, während sie geöffnet war. Von dieser Änderung wurde nichts gespeichert: die Studie schließen und wieder öffnen.`,
  },
  copy: {
    strange: "Die Kopie enthält etwas, das nicht zu einer Studie gehört.",
    damaged: "Die Kopie ist beschädigt.",
    lacksChanges: "Der Kopie fehlen die letzten Änderungen.",
    busy: "Ein anderes Flocwright macht gerade eine Kopie dieses Namens: einen anderen wählen.",
    thrownAway: "Die Kopie war beschädigt und wurde verworfen; die Studie selbst ist, wie sie war.",
    backupThrownAway: (fault) =>
      `${fault} Die Sicherung wurde verworfen; die Studie selbst ist, wie sie war.`,
    noBackup: (fault) => `Die Sicherung ließ sich nicht erstellen: ${fault}`,
    noCopy: (fault) => `Es ließ sich keine Kopie aufbewahren: ${fault}`,
    cannotRestore: (fault) => `Diese Sicherung lässt sich nicht wiederherstellen: ${fault}`,
    studyAsItWas: (fault) => `${fault} Die Studie ist, wie sie war.`,
    notRestored: (fault) => `Die Sicherung ließ sich nicht wiederherstellen: ${fault}`,
  },
};

import type { kindWords, recordWords } from "../records.ts";

export const kinds: typeof kindWords = {
  study: { one: "Studie", many: "Studien" },
  person: { one: "Person", many: "Personen" },
  stream: { one: "Schlammstrom", many: "Schlammströme" },
  machine: { one: "Maschine", many: "Maschinen" },
  product: { one: "Produkt", many: "Produkte" },
  sample: { one: "Probe", many: "Proben" },
  dish: { one: "Schale", many: "Schalen" },
  stock: { one: "Stammlösung", many: "Stammlösungen" },
  series: { one: "Reihe", many: "Reihen" },
  jar: { one: "Becher", many: "Becher" },
  reading: { one: "Ablesung", many: "Ablesungen" },
  photo: { one: "Foto", many: "Fotos" },
  targets: { one: "Zielwertsatz", many: "Zielwertsätze" },
  decision: { one: "Entscheidung", many: "Entscheidungen" },
  feedCase: { one: "Zulauffall", many: "Zulauffälle" },
  makeDown: { one: "Ansatz im Betrieb", many: "Ansätze im Betrieb" },
  pump: { one: "Pumpe", many: "Pumpen" },
  drawDown: { one: "Auslitermessung", many: "Auslitermessungen" },
  cylinderCheck: { one: "Messzylinderprüfung", many: "Messzylinderprüfungen" },
  tableApproval: { one: "Freigabe von Einstellungen", many: "Freigaben von Einstellungen" },
  landLimit: { one: "Grenzwert für Flächen", many: "Grenzwerte für Flächen" },
  mixing: { one: "Mischstelle", many: "Mischstellen" },
  stepTest: { one: "Stufenversuch", many: "Stufenversuche" },
  plantRun: { one: "Betriebsversuch", many: "Betriebsversuche" },
  runDose: { one: "Dosis eines Betriebsversuchs", many: "Dosen der Betriebsversuche" },
};

// The kinds have three genders, so the sentences speak of entries and put the kind in brackets.
export const records: typeof recordWords = {
  unreadable: (kind) =>
    `Diese Studie enthält einen Eintrag (${kind}), der nicht zu seiner Art passt. Er bleibt, wie er ist.`,
  linkMissing: (kind, named) =>
    `Der Eintrag (${kind}) verweist auf einen Eintrag (${named}), der nicht in der Studie ist.`,
  inUse: (kind, count, user, users) =>
    count === 1
      ? `Dieser Eintrag (${kind}) wird von 1 anderen (${user}) benutzt: zuerst jenen entfernen oder ändern.`
      : `Dieser Eintrag (${kind}) wird von ${count} anderen (${users}) benutzt: zuerst jene entfernen oder ändern.`,
  nameTaken: (kind, name) =>
    `Es gibt schon einen Eintrag (${kind}) mit dem Namen „${name}“: diesem einen anderen Namen geben.`,
  idTaken: (kind) => `Es gibt schon einen Eintrag (${kind}) mit dieser Kennung.`,
  gone: (kind) => `Dieser Eintrag (${kind}) ist nicht mehr in der Studie.`,
  studyStays: "Der Eintrag der Studie selbst lässt sich nicht entfernen.",
  decisionStays:
    "Eine freigegebene Entscheidung wird nie geändert: mit Begründung zurückziehen und eine andere freigeben.",
  tableApprovalStays: "Eine Freigabe von Einstellungen wird nie geändert: die Einstellungen neu freigeben.",
  idStays: "Die Kennung eines Eintrags lässt sich nicht ändern.",
};

import type { importWords } from "../imports.ts";

export const imports: typeof importWords = {
  nameSeries: "ist leer: die Reihe dieses Bechers nennen.",
  nameJar: "ist leer: den Becher benennen.",
  tooMany: (name, records, most) =>
    `${name}: ergibt ${records} Becher und Ablesungen; höchstens ${most} auf einmal sind möglich: die Datei teilen.`,
  label: (file) => `Import von ${file}`,
  tooLong: (name) =>
    `${name}: enthält mehr Text, als ein Schritt einer Studie behalten kann: die Datei teilen.`,
  jarThere: (jar, series) =>
    `Becher ${jar} ist schon in Reihe ${series}: diesem einen anderen Namen geben oder in eine neue Reihe importieren.`,
  jarMissing: (jar, series) =>
    `Reihe ${series} hat keinen Becher ${jar}, und die Datei gibt keine Dosis an, mit der er angelegt werden könnte.`,
  doseMissing: "die Dosis fehlt; ein Becher ohne dieses Polymer hat Dosis 0.",
  jarDosedOtherwise: (jar, series) =>
    `Becher ${jar} der Reihe ${series} wurde anders dosiert: Ein anderer Becher braucht einen anderen Namen.`,
  otherDoses: (jar, line) =>
    `Becher ${jar} hat in Zeile ${line} andere Dosen: Ein erneut abgelesener Becher behält seine Dosen, ein anderer Becher braucht einen anderen Namen.`,
  manySeries: (name, count, column) =>
    `${name}: enthält nach der Spalte ${column} ${count} Reihen, ein Name für alle Zeilen passt also nicht: den Namen weglassen.`,
  seriesThere: (name, series) =>
    `${name}: Es gibt schon eine Reihe „${series}“: die Reihe nennen, zu der die Zeilen gehören, oder einen neuen Namen geben.`,
  noSample: (label) =>
    `Diese Studie hat keine Probe „${label}“: zuerst im Raum Probe eintragen oder die Spalte weglassen.`,
  noStock: (label) =>
    `Diese Studie hat keine Stammlösung „${label}“: zuerst im Raum Probe eintragen oder die Spalte weglassen.`,
  sampleFirst: (name) =>
    `${name}: Die Studie hat noch keine Schlammprobe: zuerst eintragen, denn eine Dosis ist Polymer je Trockenrückstand.`,
  whichSample: (name, samples, series) =>
    `${name}: Die Studie hat ${samples} Proben: in einer Spalte sample angeben, an welcher die Reihe „${series}“ dosiert wurde, oder die Zeilen einer vorhandenen Reihe hinzufügen.`,
  whichStock: (name, column, letter, series) =>
    `${name}: Die Studie hat mehrere Stammlösungen: in einer Spalte ${column} angeben, welche das Polymer ${letter} der Reihe „${series}“ war.`,
  seriesRefused: (name, series, why) => `${name}: Reihe „${series}“: ${why}`,
  sameStock: "Polymer A und B nennen dieselbe Stammlösung: für eines eine andere wählen.",
  linkSample: (series, label, given) =>
    `Reihe ${series} hat „${label}“ als Probe, und diese Zeile sagt „${given}“.`,
  linkStock: (series, label, letter, given) =>
    `Reihe ${series} hat „${label}“ für Polymer ${letter}, und diese Zeile sagt „${given}“.`,
  linkNoStock: (series, letter, given) =>
    `Reihe ${series} hat keine Lösung für Polymer ${letter}, und diese Zeile sagt „${given}“.`,
  notRole: (given, roles) => `„${given}“ ist keine Rolle eines Bechers; es gibt: ${roles}.`,
  needsReason: (reasons) => `braucht einen Grund in der Spalte daneben: ${reasons}.`,
  notReason: (given, reasons) => `„${given}“ ist kein Grund; es gibt: ${reasons}.`,
  notMoment: (given) =>
    `"${given}" ist kein Datum mit Uhrzeit und Zeitverschiebung, wie 2026-03-04T09:05:00+01:00.`,
  noReadingBeside: (column) => `hat keine Ablesung neben sich (${column}).`,
  disagrees: (stated, made) =>
    `die Datei sagt ${stated}, die Werte daneben ergeben aber ${made}: eines davon berichtigen oder diese Spalte weglassen.`,
  formula: (cell) =>
    `„${cell}“ ist eine Formel oder ihr Fehler, keine Zahl: das Blatt mit seinen Werten speichern.`,
  otherTurbidityUnit: (series, unit) =>
    `Reihe ${series} liest die Trübung in ${unit} ab: Die Einheiten sind verschieden.`,
  dilutionAlone: "hat keine angezeigte Trübung (turbidity_shown) neben sich.",
  undiluted: "ist leer: 1 eintragen, wo die Probe nicht verdünnt wurde.",
  drainTime:
    "braucht die Zeit, nach der abgelesen wurde: eine Spalte drained_at_s ergänzen oder die Entwässerungszeit der Reihe im Labor eintragen.",
  filtrationParts:
    "ein spezifischer Filtrationswiderstand wird mit seinen Volumina und Zeiten geführt (srf_volumes_ml, srf_times_s und die Spalten dazu): diese ergänzen oder diese Spalte weglassen.",
  timesVolumes: (times, volumes) => `hat ${times} Zeiten für ${volumes} Volumina.`,
  negativeDose: (dose) => `eine Dosis kann nicht negativ sein (${dose}).`,
  doseDisagrees: (stated, volumeMl, made) =>
    `ist ${stated} kg/t Wirksubstanz, ${volumeMl} mL der Lösung ergeben hier aber ${made} kg/t: eines davon berichtigen oder eine Spalte weglassen.`,
  doseWaits: (unit, why) => `eine Dosis in ${unit} lässt sich noch nicht verwenden: ${why}.`,
  mgPerLFeed: "mg/L Zulauf",
  mlSolution: "mL Lösung",
  pickStock: (letter, series) => `die Stammlösung für Polymer ${letter} der Reihe „${series}“ wählen`,
  strengthOf: (stock, why) => `Konzentration von ${stock}: ${why}`,
  enterDensity: (stock) => `die Dichte von ${stock} eintragen`,
  enterVolume: (series) => `das Probenvolumen der Reihe „${series}“ eintragen`,
  solidsOf: (why) => `Trockenrückstand der Probe: ${why}`,
  densityOf: (why) => `Dichte der Probe: ${why}`,
  enterActive: (product) => `den Wirksubstanzanteil von ${product} eintragen`,
  emptyNeeded: {
    filterSolids: "ist leer, wird aber für die abfiltrierbaren Stoffe gebraucht.",
    drained: "ist leer, wird aber für ein abgelaufenes Volumen gebraucht.",
    resistance: "ist leer, wird aber für einen spezifischen Filtrationswiderstand gebraucht.",
    cakeDish: "ist leer, wird aber für eine Kuchenschale gebraucht.",
    flocStrength: "ist leer, wird aber für die Flockenfestigkeit gebraucht.",
  },
  workbook: {
    read: "was abgelesen wurde, Einheit",
    value: "Wert",
    takenAt: "abgelesen am",
    leftOut: "weggelassen",
    note: "Bemerkung",
    series: "Reihe",
    jar: "Becher",
    yes: "ja",
    no: "nein",
  },
  wholeDocument: "das Ganze",
  notRight: "stimmt nicht",
};

import type { issueWords, schemaWords } from "../schema.ts";
import { fieldNames } from "./field-names.ts";

export const schema: typeof schemaWords = {
  notId: "ist keine Kennung",
  needsName: "braucht einen Namen",
  longName: "ist länger als 120 Zeichen",
  unshowable: "enthält ein Zeichen, das sich nicht darstellen lässt",
  longNote: "ist länger als 4000 Zeichen",
  unstorable: "enthält ein Zeichen, das sich nicht speichern lässt",
  notInstant: "ist kein Datum mit Uhrzeit",
  notNumber: "ist keine Zahl",
  aboveZero: "muss über 0 liegen",
  notNegative: "darf nicht negativ sein",
  aboveMost: (max) => `liegt über ${max}, dem höchsten möglichen Wert`,
  below: (low) => `liegt unter ${low}`,
  above: (high) => `liegt über ${high}`,
  needsReason: "braucht eine Begründung",
  rangeOrder: "hat das obere Ende unter dem unteren",
  wholeGrade: "muss eine ganze Zahl von 1 bis 5 sein",
  grade: "muss 1 bis 5 sein",
  fewVolumes: "braucht mindestens drei Volumina",
  largePicture: "ist ein zu großes Bild",
  notPicture: "ist kein JPEG-Bild",
};

// The library speaks English; its faults are told by their code instead.
function libraryFault(code: string, bound: string): string {
  if (code === "too_big") return `ist zu groß oder zu lang (höchstens ${bound})`;
  if (code === "too_small") return `ist zu klein oder zu kurz (mindestens ${bound})`;
  return "hat nicht die verlangte Form";
}

export const issues: typeof issueWords = {
  field: (derived, name) => (Object.hasOwn(fieldNames, name) && fieldNames[name]) || derived,
  perT: "je t",
  perWetT: "je t nass",
  item: (number) => `Eintrag ${number}`,
  unknownField: (names) => `hat ein unbekanntes Feld ${names}`,
  missing: "fehlt",
  wrongType: {
    string: "ist kein Text",
    number: "ist keine Zahl",
    int: "ist keine ganze Zahl",
    boolean: "ist nicht Ja oder Nein",
    group: "ist keine Gruppe von Feldern",
    array: "ist keine Liste",
    other: "ist nicht das, was es sein soll",
  },
  noneOf: "ist nichts von dem, was es sein kann",
  notRight: (why) => why,
  library: (_message, code, bound) => libraryFault(code, bound),
  cannotBeUsed: "lässt sich nicht verwenden",
  subjectUnread: (subject) => `Dieser Eintrag (${subject}) ließ sich nicht lesen.`,
  refused: (place, what) => `${place} ${what}.`,
  refusedGiven: (place, what, given) => `${place} ${what} (angegeben: ${given}).`,
  refusedCell: (cell, what) => `„${cell}“ ${what}.`,
};

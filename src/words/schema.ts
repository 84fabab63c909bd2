import { area } from "./language.ts";

/** What is wrong with one field of a record: the rest of a sentence that begins with the field's name. */
export const schemaWords = area("schema", {
  notId: "is not an id",
  needsName: "needs a name",
  longName: "is longer than 120 characters",
  unshowable: "holds a character that cannot be shown",
  longNote: "is longer than 4000 characters",
  unstorable: "holds a character that cannot be stored",
  notInstant: "is not a date and time",
  notNumber: "is not a number",
  aboveZero: "must be above 0",
  notNegative: "must not be negative",
  aboveMost: (max: number) => `is above ${max}, the most this can be`,
  below: (low: number) => `is below ${low}`,
  above: (high: number) => `is above ${high}`,
  needsReason: "needs a reason",
  rangeOrder: "has its high end below its low end",
  wholeGrade: "must be a whole number from 1 to 5",
  grade: "must be 1 to 5",
  fewVolumes: "needs at least three volumes",
  largePicture: "is too large a picture",
  notPicture: "is not a JPEG picture",
});

/** A refused record in words: the field, what is wrong with it and what was given. */
export const issueWords = area("issues", {
  field: (derived: string, _name: string) => derived,
  perT: "per t",
  perWetT: "per wet t",
  item: (number: number) => `item ${number}`,
  unknownField: (names: string) => `has an unknown field ${names}`,
  missing: "is missing",
  wrongType: {
    string: "is not a text",
    number: "is not a number",
    int: "is not a whole number",
    boolean: "is not yes or no",
    group: "is not a group of fields",
    array: "is not a list",
    other: "is not what it should be",
  },
  noneOf: "is none of what it could be",
  notRight: (why: string) => `is not right: ${why}`,
  library: (message: string, _code: string, _bound: string) => message,
  cannotBeUsed: "cannot be used",
  subjectUnread: (subject: string) => `This ${subject} could not be read.`,
  refused: (place: string, what: string) => `${place} ${what}.`,
  refusedGiven: (place: string, what: string, given: string) => `${place} ${what} (given: ${given}).`,
  refusedCell: (cell: string, what: string) => `"${cell}" ${what}.`,
});

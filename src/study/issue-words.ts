import type { z } from "zod";
import { issueWords } from "../words/schema.ts";

const units: Record<string, string> = {
  KgPerHPerM: "kg/h·m",
  KgPerT: "kg/t",
  KgPerL: "kg/L",
  KgPerH: "kg/h",
  MgPerL: "mg/L",
  M3PerH: "m³/h",
  MsPerCm: "mS/cm",
  KgPerHa: "kg/ha",
  TPerHa: "t/ha",
  PerWetT: "perWetT",
  PerT: "perT",
  Pct: "%",
  Ml: "mL",
  Mm: "mm",
  KPa: "kPa",
  Rpm: "rpm",
  Kg: "kg",
  Min: "min",
  Hours: "h",
  Days: "d",
  M2: "m²",
  M3: "m³",
  G: "g",
  L: "L",
  C: "°C",
  S: "s",
  M: "m",
};
// A single letter is a unit only after a small letter: the A of syringeA is the polymer's.
const endings = Object.keys(units);
const unitEnding = new RegExp(
  `(?:(?<=[a-zA-Z])(?:${endings.filter((one) => one.length > 1).join("|")})|(?<=[a-z])[${endings.filter((one) => one.length === 1).join("")}])$`,
);

/** The unit that a field's name carries, or "". */
export function fieldUnit(field: string): string {
  const unit = units[unitEnding.exec(field)?.[0] ?? ""] ?? "";
  return unit === "perT" || unit === "perWetT" ? issueWords[unit] : unit;
}

/** "totalSolidsPct" -> "total solids": a field's name as words for a sentence, without its unit. */
export function fieldWords(field: string): string {
  const derived = field
    .replace(unitEnding, "")
    // a field that names another record is called after that record
    .replace(/(?<=[a-zA-Z])Id$/, "")
    .replace(/([a-z0-9])([A-Z])/g, "$1 $2")
    .toLowerCase()
    .trim()
    .replace(/^ph$/, "pH")
    // polymers are A and B
    .replace(/ ([ab])$/, (_, letter: string) => ` ${letter.toUpperCase()}`);
  return issueWords.field(derived, field);
}

type TypeWord = keyof typeof issueWords.wrongType;
const typeWords: Partial<Record<string, TypeWord>> = {
  string: "string",
  number: "number",
  int: "int",
  boolean: "boolean",
  object: "group",
  record: "group",
  array: "array",
};

// Our own messages go on after the field's name, in small letters; the library's are sentences of their own.
const isLibrarys = (message: string) => /^\p{Lu}/u.test(message);

/** A message of a schema as the rest of a sentence that begins with the field's name. */
function afterField(message: string, issue: z.core.$ZodIssue): string {
  if (!isLibrarys(message)) return message;
  const bound = issue.code === "too_big" ? issue.maximum : issue.code === "too_small" ? issue.minimum : "";
  const words = issueWords.library(message, issue.code, String(bound));
  return issueWords.notRight(`${words.charAt(0).toLowerCase()}${words.slice(1)}`);
}

/** A given text as a sentence may hold it: short, on one line, without half a character. */
function shown(text: string): string {
  return text
    .slice(0, 40)
    .replace(/\p{Cc}/gu, " ")
    .toWellFormed();
}

/** A fault in words, without the field: the library's own for a wrong type name the program's types, these do not. */
export function issueMessage(issue: z.core.$ZodIssue, value: unknown): string {
  if (issue.code === "unrecognized_keys")
    return issueWords.unknownField(issue.keys.slice(0, 3).map(shown).join(", "));
  if (!issue.message.startsWith("Invalid input")) return issue.message;
  if (value === undefined) return issueWords.missing;
  return issue.code === "invalid_type"
    ? issueWords.wrongType[typeWords[issue.expected] ?? "other"]
    : issueWords.noneOf;
}

/** The sentence for a value of one cell that its kind does not allow. */
export function refusedValue(text: string, issue: z.core.$ZodIssue | undefined): string {
  return issueWords.refusedCell(text, issue ? afterField(issue.message, issue) : issueWords.cannotBeUsed);
}

/** Turns the first fault of a refused record into one sentence that names the field and what was given. */
export function describeIssue(error: z.ZodError, subject: string, given: unknown): string {
  const [issue] = error.issues;
  if (!issue) return issueWords.subjectUnread(subject);
  const path = issue.path
    .filter((part) => part !== "result")
    .slice(0, 6)
    .map((part) => (typeof part === "number" ? issueWords.item(part + 1) : fieldWords(shown(String(part)))));
  const where = path.length > 0 ? path.join(", ") : subject;
  let value: unknown = given;
  for (const part of issue.path) value = (value as Record<PropertyKey, unknown> | null | undefined)?.[part];
  const given40 =
    (typeof value === "number" && Number.isFinite(value)) || (typeof value === "string" && value.length > 0)
      ? shown(String(value))
      : null;
  const words = afterField(issueMessage(issue, value), issue);
  // pH begins small in every sentence.
  const place = where.startsWith("pH") ? where : `${where.charAt(0).toUpperCase()}${where.slice(1)}`;
  return given40 === null ? issueWords.refused(place, words) : issueWords.refusedGiven(place, words, given40);
}

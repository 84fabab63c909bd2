import type { z } from "zod";

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
  PerWetT: "per wet t",
  PerT: "per t",
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
  return units[unitEnding.exec(field)?.[0] ?? ""] ?? "";
}

/** "totalSolidsPct" -> "total solids": a field's name as words for a sentence, without its unit. */
export function fieldWords(field: string): string {
  return (
    field
      .replace(unitEnding, "")
      .replace(/([a-z0-9])([A-Z])/g, "$1 $2")
      .toLowerCase()
      .trim()
      .replace(/^ph$/, "pH")
      // polymers are A and B
      .replace(/ ([ab])$/, (_, letter: string) => ` ${letter.toUpperCase()}`)
  );
}

const typeWords: Record<string, string> = {
  string: "a text",
  number: "a number",
  int: "a whole number",
  boolean: "yes or no",
  object: "a group of fields",
  record: "a group of fields",
  array: "a list",
};

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
    return `has an unknown field ${issue.keys.slice(0, 3).map(shown).join(", ")}`;
  if (!issue.message.startsWith("Invalid input")) return issue.message;
  if (value === undefined) return "is missing";
  return issue.code === "invalid_type"
    ? `is not ${typeWords[issue.expected] ?? "what it should be"}`
    : "is none of what it could be";
}

/** Turns the first fault of a refused record into one sentence that names the field and what was given. */
export function describeIssue(error: z.ZodError, subject: string, given: unknown): string {
  const [issue] = error.issues;
  if (!issue) return `This ${subject} could not be read.`;
  const path = issue.path
    .filter((part) => part !== "result")
    .slice(0, 6)
    .map((part) => (typeof part === "number" ? `item ${part + 1}` : fieldWords(shown(String(part)))));
  const where = path.length > 0 ? path.join(", ") : subject;
  let value: unknown = given;
  for (const part of issue.path) value = (value as Record<PropertyKey, unknown> | null | undefined)?.[part];
  const given40 =
    (typeof value === "number" && Number.isFinite(value)) || (typeof value === "string" && value.length > 0)
      ? ` (given: ${shown(String(value))})`
      : "";
  const message = issueMessage(issue, value);
  const words = /^(is|needs|has|holds|must) /.test(message)
    ? message
    : `is not right: ${message.charAt(0).toLowerCase()}${message.slice(1)}`;
  // pH begins small in every sentence.
  const start = where.startsWith("pH") ? where : `${where.charAt(0).toUpperCase()}${where.slice(1)}`;
  return `${start} ${words}${given40}.`;
}

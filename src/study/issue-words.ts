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
      // polymers are A and B
      .replace(/ ([ab])$/, (_, letter: string) => ` ${letter.toUpperCase()}`)
  );
}

/** Turns the first fault of a refused record into one sentence that names the field and what was given. */
export function describeIssue(error: z.ZodError, subject: string, given: unknown): string {
  const [issue] = error.issues;
  if (!issue) return `This ${subject} could not be read.`;
  const path = issue.path
    .filter((part) => part !== "result")
    .map((part) => (typeof part === "number" ? `item ${part + 1}` : fieldWords(String(part))));
  const where = path.length > 0 ? path.join(", ") : subject;
  let value: unknown = given;
  for (const part of issue.path) value = (value as Record<PropertyKey, unknown> | null | undefined)?.[part];
  const shown =
    typeof value === "number" || (typeof value === "string" && value.length > 0)
      ? ` (given: ${String(value).slice(0, 40)})`
      : "";
  const message =
    issue.code === "unrecognized_keys" ? `has an unknown field ${issue.keys.join(", ")}` : issue.message;
  const words = /^(is|needs|has|holds|must) /.test(message)
    ? message
    : `is not right: ${message.charAt(0).toLowerCase()}${message.slice(1)}`;
  return `${where.charAt(0).toUpperCase()}${where.slice(1)} ${words}${shown}.`;
}

import { z } from "zod";
import { mostTogether, simpleSchema } from "./commands.ts";

/** Parts parsed between two steps: some milliseconds of work at most. */
const partsAStep = 200;
const partsSchema = z.array(simpleSchema);

type Fields = Record<string, unknown>;
const isObject = (value: unknown): value is Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value);

/** The parts of a step that is large enough to be parsed in steps, else null. */
function manyParts(command: unknown): unknown[] | null {
  const parts = isObject(command) && command["do"] === "together" ? command["commands"] : null;
  return Array.isArray(parts) && parts.length > partsAStep && parts.length <= mostTogether ? parts : null;
}

/**
 * Parses an object that holds commands under these keys. What it answers is what the schema's own parser answers, but a
 * large step is parsed a few of its parts at a time. Where anything does not fit, the parser itself has the last word.
 */
export function* parseInSteps<T>(
  schema: z.ZodType<T>,
  value: unknown,
  keys: readonly string[],
): Generator<number, z.ZodSafeParseResult<T>> {
  const large = isObject(value) ? keys.filter((key) => manyParts(value[key])) : [];
  if (!isObject(value) || large.length === 0) return schema.safeParse(value);
  const short: Fields = { ...value };
  for (const key of large)
    short[key] = { ...(value[key] as Fields), commands: manyParts(value[key])!.slice(0, 1) };
  const parsed = schema.safeParse(short);
  if (!parsed.success) return schema.safeParse(value);
  for (const key of large) {
    const parts = manyParts(value[key])!;
    const whole: z.output<typeof simpleSchema>[] = [];
    for (let from = 0; from < parts.length; from += partsAStep) {
      const some = partsSchema.safeParse(parts.slice(from, from + partsAStep));
      if (!some.success) return schema.safeParse(value);
      whole.push(...some.data);
      yield whole.length;
    }
    ((parsed.data as Fields)[key] as Fields)["commands"] = whole;
  }
  return parsed;
}

import type { z } from "zod";

/** Whether a value surely fits a schema exactly as it stands; false says only "not sure", never "wrong". */
export type Acceptor = (value: unknown) => boolean;

type Schema = z.core.$ZodType;
type Check = z.core.$ZodCheck;

const unsure: Acceptor = () => false;
const anything: Acceptor = () => true;

function all(parts: Acceptor[]): Acceptor {
  const [only] = parts;
  if (only && parts.length === 1) return only;
  return (value) => {
    for (const part of parts) if (!part(value)) return false;
    return true;
  };
}

function checkAcceptor(check: Check): Acceptor {
  const def = check._zod.def as unknown as Record<string, unknown> & { check: string };
  switch (def.check) {
    case "less_than": {
      const limit = def["value"] as number;
      return def["inclusive"] ? (value) => (value as number) <= limit : (value) => (value as number) < limit;
    }
    case "greater_than": {
      const limit = def["value"] as number;
      return def["inclusive"] ? (value) => (value as number) >= limit : (value) => (value as number) > limit;
    }
    case "number_format":
      return def["format"] === "safeint" ? (value) => Number.isSafeInteger(value) : unsure;
    case "min_length": {
      const least = def["minimum"] as number;
      return (value) => (value as { length: number }).length >= least;
    }
    case "max_length": {
      const most = def["maximum"] as number;
      return (value) => (value as { length: number }).length <= most;
    }
    case "string_format": {
      const pattern = def["pattern"];
      // A pattern that keeps a position between tests would answer differently each time.
      if (!(pattern instanceof RegExp) || pattern.global || pattern.sticky) return unsure;
      return def["format"] === "regex" || def["format"] === "datetime"
        ? (value) => pattern.test(value as string)
        : unsure;
    }
    case "overwrite":
      // The only thing our schemas overwrite is the space around a name; without any, nothing is overwritten.
      return (value) => typeof value === "string" && value === value.trim();
    case "custom": {
      const hold = def["fn"] as ((value: unknown) => unknown) | undefined;
      return hold ? (value) => hold(value) === true : unsure;
    }
    default:
      return unsure;
  }
}

function objectAcceptor(def: z.core.$ZodObjectDef): Acceptor {
  if (def.catchall?._zod.def.type !== "never") return unsure;
  const fields = Object.entries(def.shape).map(([name, schema]) => [name, acceptorOf(schema)] as const);
  return (value) => {
    if (typeof value !== "object" || value === null || Array.isArray(value)) return false;
    if (Object.keys(value).length !== fields.length) return false;
    for (const [name, accepts] of fields)
      if (!accepts((value as Record<string, unknown>)[name])) return false;
    return true;
  };
}

function unionAcceptor(def: z.core.$ZodUnionDef & { discriminator?: string }): Acceptor {
  const options = def.options.map((option) => acceptorOf(option));
  const { discriminator } = def;
  if (discriminator === undefined) return (value) => options.some((accepts) => accepts(value));
  const byName = new Map<unknown, Acceptor>();
  for (const [index, option] of def.options.entries()) {
    const shape = (option._zod.def as z.core.$ZodObjectDef).shape as Record<string, Schema> | undefined;
    const literal = shape?.[discriminator]?._zod.def as
      z.core.$ZodLiteralDef<z.core.util.Literal> | undefined;
    if (literal?.type !== "literal") return unsure;
    for (const name of literal.values) byName.set(name, options[index]!);
  }
  return (value) => {
    if (typeof value !== "object" || value === null) return false;
    const accepts = byName.get((value as Record<string, unknown>)[discriminator]);
    return accepts !== undefined && accepts(value);
  };
}

function typeAcceptor(schema: Schema): Acceptor {
  const { def } = schema._zod as { def: z.core.$ZodTypeDef };
  switch (def.type) {
    case "string":
      return (value) => typeof value === "string";
    case "number":
      return (value) => typeof value === "number" && Number.isFinite(value);
    case "boolean":
      return (value) => typeof value === "boolean";
    case "null":
      return (value) => value === null;
    case "literal": {
      const values = new Set<unknown>((def as z.core.$ZodLiteralDef<z.core.util.Literal>).values);
      return (value) => values.has(value);
    }
    case "enum": {
      const values = new Set<unknown>(Object.values((def as z.core.$ZodEnumDef).entries));
      return (value) => values.has(value);
    }
    case "nullable": {
      const accepts = acceptorOf((def as z.core.$ZodNullableDef).innerType);
      return (value) => value === null || accepts(value);
    }
    case "default":
    case "prefault":
      // A value that is there is passed to the inner schema as it is; one that is missing is for the parser to fill in.
      return acceptorOf((def as z.core.$ZodDefaultDef).innerType);
    case "array": {
      const accepts = acceptorOf((def as z.core.$ZodArrayDef).element);
      return (value) => Array.isArray(value) && value.every(accepts);
    }
    case "object":
      return objectAcceptor(def as z.core.$ZodObjectDef);
    case "union":
      return unionAcceptor(def as z.core.$ZodUnionDef);
    default:
      return unsure;
  }
}

/**
 * A quick judge made from a schema: where it says yes, the schema's own parser would answer this very value unchanged.
 * It says yes only to what it knows; whatever else (a default to fill in, a name to trim, a fault) is left to the parser.
 */
export function acceptorOf(schema: Schema): Acceptor {
  const { def } = schema._zod as { def: z.core.$ZodTypeDef & { checks?: Check[]; check?: string } };
  const type = typeAcceptor(schema);
  if (type === unsure) return unsure;
  // A string format such as a date is a type that is its own check.
  const own = def.check === undefined ? anything : checkAcceptor(schema as unknown as Check);
  const checks = (def.checks ?? []).map(checkAcceptor);
  if (own === unsure || checks.includes(unsure)) return unsure;
  return all([type, ...(own === anything ? [] : [own]), ...checks]);
}

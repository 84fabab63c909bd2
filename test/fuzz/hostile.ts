import type { z } from "zod";
import type { Chance } from "./chance.ts";

const long = "x".repeat(60_000);

/** Texts that have broken programs: control characters, half characters, markup, formulas, names of built-in properties. */
export const hostileTexts: readonly string[] = [
  "",
  " ",
  "\u0000",
  "a\u0000b",
  "\ud800",
  "half \udfff character",
  "line\nbreak",
  "\u202Eleft",
  "\uFEFF",
  "e\u0301".repeat(60),
  "<img src=x onerror=alert(1)>",
  "'; DROP TABLE record; --",
  "=1+1",
  "__proto__",
  "constructor",
  "prototype",
  "toString",
  "../../etc/passwd",
  "C:\\con",
  "con",
  "1e999",
  "0x10",
  "2026-13-45T99:00:00Z",
  "ß".repeat(120),
  "漢".repeat(120),
  "🧪".repeat(60),
  long,
];

const hostileNumbers: readonly number[] = [
  NaN,
  Infinity,
  -Infinity,
  0,
  -0,
  -1,
  1e308,
  -1e308,
  5e-324,
  2 ** 53,
  2 ** 53 - 1,
  -(2 ** 31),
  0.1,
  4294967296.5,
];

/** Objects nested so deep that naive recursion overflows. */
export function deep(levels: number, inArrays: boolean): unknown {
  let value: unknown = 1;
  for (let level = 0; level < levels; level++) value = inArrays ? [value] : { a: value };
  return value;
}

/** A value that no schema asked for, of any type that can cross the boundary of a host. */
export function hostileValue(chance: Chance): unknown {
  const makers: (() => unknown)[] = [
    () => undefined,
    () => null,
    () => chance.odds(0.5),
    () => chance.pick(hostileNumbers),
    () => chance.pick(hostileNumbers),
    () => chance.pick(hostileTexts),
    () => chance.pick(hostileTexts),
    () => 10n ** 30n,
    () => new Date(NaN),
    () => new Map([["a", 1]]),
    () => new Uint8Array(8),
    () => [],
    () => ({}),
    () => Array.from({ length: chance.whole(1, 400) }, () => chance.pick(hostileTexts.slice(0, 12))),
    () => JSON.parse('{"__proto__":{"polluted":1}}') as unknown,
    () => ({ constructor: { prototype: { polluted: 1 } } }),
    () => Object.assign(Object.create(null) as object, { id: "x" }),
    () => Object.fromEntries(Array.from({ length: 300 }, (_, i) => [`key${i}${"y".repeat(i)}`, i])),
    () => ({ [chance.pick(hostileTexts)]: chance.pick(hostileNumbers) }),
    () => deep(chance.pick([3, 200, 20_000]), chance.odds(0.5)),
  ];
  return chance.pick(makers)();
}

interface Definition {
  type: string;
  shape?: Record<string, z.ZodType>;
  innerType?: z.ZodType;
  element?: z.ZodType;
  options?: z.ZodType[];
  entries?: Record<string, string>;
  values?: unknown[];
  valueType?: z.ZodType;
  in?: z.ZodType;
  checks?: { _zod: { def: { check: string; minimum?: number; maximum?: number } } }[];
}

/** Where leaves take their values from; what does not fit a leaf's schema is passed over. */
export interface Pools {
  texts: readonly string[];
  numbers: readonly number[];
  /** how often a node is replaced by something hostile, or an extra key is added: 0 for a valid value */
  wild: number;
}

/**
 * A value made from a schema itself: valid as far as the pools reach, with hostile parts as often as `wild` says. So a
 * field added to the contract or to a record is fuzzed without anybody thinking of it.
 */
export function valueFor(schema: z.ZodType, chance: Chance, pools: Pools): unknown {
  if (chance.odds(pools.wild)) return hostileValue(chance);
  const definition = schema._zod.def as unknown as Definition;
  const inner = (part: z.ZodType) => valueFor(part, chance, pools);
  switch (definition.type) {
    case "object": {
      const made: Record<string, unknown> = {};
      for (const [key, part] of Object.entries(definition.shape!)) {
        const { type } = part._zod.def as unknown as Definition;
        if ((type === "default" || type === "optional" || type === "prefault") && chance.odds(0.5)) continue;
        made[key] = inner(part);
      }
      if (chance.odds(pools.wild)) made[chance.pick(hostileTexts)] = hostileValue(chance);
      return made;
    }
    case "nullable":
      return chance.odds(0.3) ? null : inner(definition.innerType!);
    case "default":
    case "prefault":
    case "optional":
      return inner(definition.innerType!);
    case "pipe":
      return inner(definition.in!);
    case "array": {
      const [low, high] = lengthsOf(definition);
      return Array.from({ length: chance.whole(low, Math.min(high, low + 4)) }, () =>
        inner(definition.element!),
      );
    }
    case "union":
      return inner(chance.pick(definition.options!));
    case "enum":
      return chance.pick(Object.values(definition.entries!));
    case "literal":
      return chance.pick(definition.values!);
    case "boolean":
      return chance.odds(0.5);
    case "record":
      return Object.fromEntries(
        Array.from({ length: chance.whole(0, 3) }, () => [
          chance.pick(pools.texts),
          definition.valueType ? inner(definition.valueType) : hostileValue(chance),
        ]),
      );
    case "string":
      return leaf(schema, chance, pools.texts);
    case "number":
    case "int":
      return leaf(schema, chance, pools.numbers);
    default:
      return hostileValue(chance);
  }
}

/** The fewest and most items that a list's own checks allow. */
function lengthsOf(definition: Definition): [number, number] {
  let [low, high] = [0, Infinity];
  for (const { _zod } of definition.checks ?? []) {
    if (_zod.def.check === "min_length") low = _zod.def.minimum ?? 0;
    if (_zod.def.check === "max_length") high = _zod.def.maximum ?? Infinity;
  }
  return [low, high];
}

function leaf(schema: z.ZodType, chance: Chance, pool: readonly unknown[]): unknown {
  for (let attempt = 0; attempt < 12; attempt++) {
    const value = chance.pick(pool);
    if (schema.safeParse(value).success) return value;
  }
  return hostileValue(chance);
}

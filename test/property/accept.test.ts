import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { applyCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { acceptorOf } from "../../src/study/schema/accept.ts";
import { readRecord } from "../../src/study/schema/read.ts";
import {
  emptyState,
  kinds,
  recordSchemas,
  type Kind,
  type StudyState,
} from "../../src/study/schema/records.ts";

const demo = demoCommands("2026-01-01T12:00:00Z").reduce<StudyState>((state, command) => {
  const applied = applyCommand(state, command);
  if (!applied.ok) throw new Error(applied.message);
  return applied.value.state;
}, emptyState());

const extra: [Kind, object][] = [
  [
    "cylinderCheck",
    {
      id: "check-1",
      pumpId: "pump-1",
      setting: 50,
      amount: 100,
      seconds: 60,
      takenAt: "2026-01-01T12:00:00+02:00",
    },
  ],
  ["stepTest", { id: "step-1", seriesId: "s-1", makeDownId: "m-1", machineId: null }],
  ["landLimit", { id: "land-1", limitKgPerHa: 45, years: 3, drySolidsTPerHa: 5 }],
  [
    "tableApproval",
    {
      id: "table-1",
      seriesId: "s-1",
      byName: "Ilse K.",
      at: "2026-01-01T12:00:00Z",
      snapshot: [{ key: "a", name: "b", value: 1 }],
    },
  ],
  [
    "photo",
    { id: "p-1", jarId: "j-1", label: "x", widthPx: 4, heightPx: 4, image: "data:image/jpeg;base64,AAAA" },
  ],
  [
    "reading",
    {
      id: "r-1",
      jarId: "j-1",
      result: {
        kind: "srf",
        points: [1, 2, 3].map((n) => ({ volumeMl: n, seconds: n * n })),
        firstUsed: 1,
        lastUsed: 3,
        diameterMm: 70,
        pressureKPa: 50,
        temperatureC: 20,
        cakeKgPerM3: 30,
      },
    },
  ],
];

const samples: [Kind, Record<string, unknown>][] = [
  ...kinds.flatMap((kind) =>
    Object.values(demo[kind]).map((record): [Kind, Record<string, unknown>] => [kind, record as never]),
  ),
  ...extra.flatMap(([kind, record]): [Kind, Record<string, unknown>][] => {
    const parsed = recordSchemas[kind].safeParse(record);
    return parsed.success ? [[kind, parsed.data as never]] : [];
  }),
];

const odd = fc.oneof(
  fc.constantFrom<unknown>(
    null,
    true,
    0,
    -1,
    1e9,
    5e-324,
    1.5,
    "",
    " ",
    " padded ",
    "x",
    "a\u0000b",
    "line\nbreak",
    "2026-01-01T12:00:00Z",
    "2026-13-01T12:00:00Z",
    "2026-01-01",
    [],
    {},
    ["x"],
    "study",
    "mixed",
    "dose",
    "__proto__",
    "x".repeat(121),
    { low: 5, high: 1 },
    { low: 1, high: 5 },
    { reason: "spilled", note: "" },
    { reason: "spilled" },
    { kind: "cst", seconds: 9 },
    { kind: "cst", seconds: 0 },
    { kind: "cst", seconds: 9, more: 1 },
    { kind: "nothing" },
  ),
  fc.double(),
  fc.string(),
  fc.anything({ maxDepth: 2 }),
);

/** Every place inside a value, as a path. */
function placesIn(value: unknown, path: string[] = []): string[][] {
  if (typeof value !== "object" || value === null) return [path];
  return [path, ...Object.entries(value).flatMap(([key, inner]) => placesIn(inner, [...path, key]))];
}

function changed(
  value: unknown,
  path: string[],
  change: (holder: Record<string, unknown>, key: string) => void,
): unknown {
  const copy = structuredClone(value) as Record<string, unknown>;
  let holder = copy;
  for (const key of path.slice(0, -1)) holder = holder[key] as Record<string, unknown>;
  change(holder, path.at(-1)!);
  // only what JSON can hold is ever stored
  return JSON.parse(JSON.stringify(copy));
}

describe("the quick judge of stored records", () => {
  test("knows every kind: records as they are written never wait for the parser", () => {
    for (const [kind, record] of samples)
      expect([kind, acceptorOf(recordSchemas[kind])(record)]).toEqual([kind, true]);
    expect(new Set(samples.map(([kind]) => kind)).size).toBe(kinds.length);
  });

  test("says yes only where the parser would answer the very same record", () => {
    const judges = Object.fromEntries(kinds.map((kind) => [kind, acceptorOf(recordSchemas[kind])]));
    let yes = 0;
    let no = 0;
    fc.assert(
      fc.property(
        fc.constantFrom(...samples),
        fc.nat(),
        fc.constantFrom("set", "drop", "more"),
        odd,
        ([kind, record], where, how, value) => {
          const places = placesIn(record).filter((path) => path.length > 0);
          const path = places[where % places.length]!;
          const given = changed(record, path, (holder, key) => {
            if (how === "set") holder[key] = value;
            else if (how === "drop") delete holder[key];
            else holder["surplus"] = value;
          });
          const parsed = recordSchemas[kind].safeParse(given);
          if (judges[kind]!(given)) {
            yes += 1;
            expect(parsed.success).toBe(true);
            expect(parsed.data).toEqual(given);
          } else no += 1;
          const read = readRecord(kind, given);
          expect(read.ok).toBe(parsed.success);
          if (read.ok) expect(read.value).toEqual(parsed.data);
        },
      ),
      { numRuns: 6000, seed: 8 },
    );
    // both answers were given often enough for the comparison to mean something
    expect(yes).toBeGreaterThan(150);
    expect(no).toBeGreaterThan(2000);
  });
});

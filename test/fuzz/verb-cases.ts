import { readdirSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import type { z } from "zod";
import { analyse } from "../../main/verbs/analyse.ts";
import { calibrate } from "../../main/verbs/calibrate.ts";
import { fit } from "../../main/verbs/fit.ts";
import { plan } from "../../main/verbs/plan.ts";
import { rates } from "../../main/verbs/rates.ts";
import { surface } from "../../main/verbs/surface.ts";
import type { Verb } from "../../main/verbs/verb.ts";
import { planInputSchema } from "../../src/bench/plan.ts";
import { modelNames } from "../../src/curve/models/registry.ts";
import { ratesInputSchema } from "../../src/plant/rates.ts";
import { chanceFrom, fault, newTally, type Chance, type Tally } from "./chance.ts";
import { deep, hostileTexts, valueFor } from "./hostile.ts";
import { sentenceFault } from "./sentence.ts";

const heads: Record<string, string[]> = {
  analyse: [
    "jar",
    "dose_a_kg_per_t",
    "dose_b_kg_per_t",
    "turbidity_ntu",
    "filtrate_tss_mg_per_l",
    "cake_ts_pct",
    "cst_s",
    "drained_ml",
    "block",
    "order",
  ],
  fit: ["x", "y", "jar", "block", "order"],
  surface: ["x1", "x2", "y", "jar", "block"],
  calibrate: ["setting", "ml", "seconds"],
};

const oddCells = [
  "",
  " ",
  ">1000",
  "<2",
  "1e308",
  "-1e308",
  "1e-308",
  "9".repeat(400),
  "1.2.3",
  "1,234",
  "NaN",
  "Infinity",
  "0x10",
  "--",
  "1e400",
  "5e-324",
  "=1+1",
  '"',
  "\t",
  "Ω",
  "\u0000",
  "1 000",
];

/** One cell: mostly a number of a chosen size, so that whole fits are reached, now and then anything at all. */
function cell(chance: Chance, odd: number, size: number): string {
  if (chance.odds(odd)) return chance.pick([...oddCells, ...hostileTexts.slice(0, 24)]);
  const number = chance.next() * size;
  return chance.pick([
    String(number),
    number.toFixed(1),
    String(Math.round(number)),
    number.toExponential(2),
  ]);
}

function csv(verb: string, chance: Chance): string | Buffer {
  if (chance.odds(0.03))
    return Buffer.from(Array.from({ length: chance.whole(0, 300) }, () => chance.whole(0, 255)));
  if (chance.odds(0.03)) return chance.pick(hostileTexts);
  const odd = chance.pick([0, 0, 0, 0.02, 0.3]);
  const separator = chance.pick([",", ",", ";", "\t"]);
  const own = heads[verb]!;
  const columns = chance.odds(0.6)
    ? own
    : chance.odds(0.7)
      ? own.filter(() => chance.odds(0.85))
      : [...own, chance.pick([...own, "", "other"])];
  const size = chance.pick([1, 10, 100, 1e6, 1e-6, 1e14, 1e-13, 1e150, 1e-300]);
  // Every column its own size, so that wide spans of magnitude meet in one fit.
  const sizes = columns.map(() => (chance.odds(0.8) ? chance.pick([1, 10, 30, 100]) : size));
  const constant = columns.map(() => (chance.odds(0.1) ? cell(chance, 0, size) : null));
  const levels = Array.from({ length: 5 }, () => chance.next());
  const rows = Array.from({ length: chance.odds(0.1) ? chance.whole(0, 2) : chance.whole(3, 14) }, (_, row) =>
    columns
      .map((name, column) => {
        if (constant[column] !== null) return constant[column]!;
        if (name === "jar") return chance.odds(0.98) ? String(row + 1) : String(chance.whole(1, 5));
        if (name === "block") return chance.pick(["a", "b", ""]);
        if (name === "order") return String(row + 1);
        if (/^dose|^x/.test(name) && chance.odds(0.7) && odd < 0.3)
          return String((chance.pick(levels) * sizes[column]!).toPrecision(3));
        return cell(chance, odd, sizes[column]!);
      })
      .join(separator),
  );
  return [columns.join(separator), ...rows].join(chance.pick(["\n", "\r\n", "\n\n"]));
}

function fitWords(chance: Chance): string[] {
  const model = chance.odds(0.95)
    ? chance.pick([...modelNames])
    : chance.pick(["", "__proto__", "constructor", "spline"]);
  const words = ["--x", chance.pick(["x", "x", "x", "x", "x", "nothing"]), "--y", "y", "--model", model];
  if (model === "polynomial" || chance.odds(0.03))
    words.push("--degree", chance.pick(["1", "2", "3", "9", "10", "0", "99", "x"]));
  if (chance.odds(0.3)) words.push("--log-y");
  if (chance.odds(0.15)) words.push("--level", chance.pick(["0.9", "0.99", "0.5", "1", "abc", "1e308"]));
  if (chance.odds(0.1))
    words.push(
      "--fix",
      chance.pick([
        "knee=5",
        "rate=1e300",
        "rate=-1",
        "base=0",
        "slope=1",
        "b0=1e308",
        "mid=",
        "=",
        "constructor=1",
        "spread=1e-300",
      ]),
    );
  if (chance.odds(0.05))
    words.push(
      "--bootstrap",
      chance.pick(["20", "0", "-1", "x"]),
      "--seed",
      chance.pick(["1", "-1", "1e999"]),
    );
  return words;
}

const numbers = [
  0, 1, 2, 3, 4, 5, 6, 8, 10, 12.5, 18.25, 33, 45, 60, 99.9, 100, 250, 500, 999, 1e4, 1e5, 1e6, 0.001, 0.05,
  0.5, 0.98, 1.02, 1e-9, 1e-12, 1e9, 1e12, 1e300,
];
const modest = [1, 2, 3, 4, 5, 6, 8, 10, 12.5, 20, 33, 45, 60, 0.5, 0.98, 1.02];

/** Puts right what only fits together: the lower end below the upper, a liquid's density. So whole answers are reached. */
function mend(value: unknown, chance: Chance, depth = 0): void {
  if (typeof value !== "object" || value === null || depth > 4) return;
  const object = value as Record<string, unknown>;
  const { low, high } = object;
  if (typeof low === "number" && typeof high === "number")
    [object["low"], object["high"]] = [Math.min(low, high), Math.max(low, high) * 1.5];
  if ("doseKgPerT" in object) {
    object["densityKgPerL"] ??= 1.04;
    delete object["carrierActivePct"];
    if (chance.odds(0.8)) [object["activePct"], object["solutionActivePct"]] = [40, 0.5];
  }
  if (["geometric", "bracketing"].includes(String(object["design"]))) delete object["second"];
  for (const part of Object.values(object)) mend(part, chance, depth + 1);
}

function json(schema: z.ZodType, chance: Chance): string {
  if (chance.odds(0.04))
    return chance.pick([
      "",
      "{",
      "nul",
      "[".repeat(50_000),
      '{"__proto__":{"a":1}}',
      "\uFEFF{}",
      "NaN",
      "1e999",
      '"x"',
    ]);
  if (chance.odds(0.03)) return JSON.stringify(deep(chance.pick([10, 2000]), chance.odds(0.5)));
  const wild = chance.pick([0, 0, 0, 0.02, 0.2]);
  const pools = {
    texts: ["a", ...hostileTexts.slice(0, 24)],
    numbers: chance.odds(0.5) ? modest : numbers,
    wild,
  };
  const value = valueFor(schema, chance, pools);
  if (wild === 0 && chance.odds(0.9)) mend(value, chance);
  try {
    return (
      JSON.stringify(value, (_, one: unknown) => (typeof one === "bigint" ? Number(one) : one)) ?? "null"
    );
  } catch {
    return "[".repeat(20_000) + "]".repeat(20_000);
  }
}

/** The path of the first number in a value that JSON cannot hold, or null. */
function notJson(value: unknown, at = "$"): string | null {
  if (typeof value === "number") return Number.isFinite(value) ? null : `${at} is ${value}`;
  if (value === undefined || typeof value === "bigint" || typeof value === "function")
    return `${at} is ${typeof value}`;
  if (typeof value !== "object" || value === null) return null;
  for (const [key, part] of Object.entries(value)) {
    if (part === undefined && !Array.isArray(value)) continue;
    const wrong = notJson(part, `${at}.${key}`);
    if (wrong) return wrong;
  }
  return null;
}

const verbs: {
  name: string;
  verb: Verb;
  file: (chance: Chance) => string | Buffer;
  words: (chance: Chance) => string[];
}[] = [
  { name: "analyse", verb: analyse, file: (chance) => csv("analyse", chance), words: () => [] },
  { name: "fit", verb: fit, file: (chance) => csv("fit", chance), words: fitWords },
  {
    name: "surface",
    verb: surface,
    file: (chance) => csv("surface", chance),
    words: (chance) => ["--x1", "x1", "--x2", "x2", "--y", "y", ...(chance.odds(0.3) ? ["--log-y"] : [])],
  },
  { name: "calibrate", verb: calibrate, file: (chance) => csv("calibrate", chance), words: () => [] },
  { name: "rates", verb: rates, file: (chance) => json(ratesInputSchema, chance), words: () => [] },
  { name: "plan", verb: plan, file: (chance) => json(planInputSchema, chance), words: () => [] },
];

/** Longest that one small file may take on a busy machine; beyond it counts as a hang. */
const longestMs = 10_000;

/** Fuzzes the terminal verbs in process: each answers a JSON value without NaN, or one sentence; never an exception. */
export async function runVerbCases(seed: number, cases: number, folder: string): Promise<Tally> {
  const chance = chanceFrom(seed);
  const tally = newTally("terminal verbs");
  for (let index = 0; index < cases; index++) {
    const { name, verb, file, words } = verbs[index % verbs.length]!;
    const path = join(folder, `input-${index}`);
    const content = file(chance);
    writeFileSync(path, content);
    const args = [
      path,
      ...words(chance),
      ...(chance.odds(0.05)
        ? chance.pick([["--decimal", ","], ["--decimal", "x"], ["more"], ["--wild"], ["--decimal"]])
        : []),
    ];
    tally.tried += 1;
    const about = `${name} ${args.slice(1).join(" ")} <- ${JSON.stringify(String(content)).slice(0, 500)}`;
    const started = Date.now();
    try {
      const outcome = await verb.run(args);
      if (outcome.ok) {
        tally.accepted += 1;
        const wrong = notJson(outcome.value);
        if (wrong) fault(tally, "acceptedWrongly", `${wrong} <- ${about}`);
        const inWords = /[^a-z](NaN|undefined|Infinity|\[object)[^a-z]/i.exec(
          JSON.stringify(outcome.value) ?? "",
        );
        if (inWords) fault(tally, "acceptedWrongly", `says ${inWords[1]} <- ${about}`);
      } else {
        tally.refused += 1;
        // The file's own name and what was typed may be repeated; the sentence around them is judged.
        const wrong = sentenceFault(
          outcome.message
            .replaceAll(path, "FILE")
            .replace(/ Usage: .*$/, "")
            .replace(/"[^"]*"/g, '"it"'),
          folder,
        );
        if (wrong) fault(tally, "crashed", `${wrong} <- ${about}`);
      }
    } catch (error) {
      fault(
        tally,
        "crashed",
        `threw ${error instanceof Error ? `${error.message} ${error.stack?.split("\n")[1] ?? ""}` : String(error)} <- ${about}`,
      );
    }
    if (Date.now() - started > longestMs)
      fault(tally, "crashed", `took ${Date.now() - started} ms <- ${about}`);
    rmSync(path);
  }
  if (readdirSync(folder).length > 0)
    fault(tally, "acceptedWrongly", `left behind: ${readdirSync(folder).join()}`);
  return tally;
}

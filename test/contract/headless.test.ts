import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const entry = join(import.meta.dirname, "..", "..", "main", "headless.ts");
let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-verbs-"));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

function verb(...args: string[]): { code: number | null; out: string; error: string } {
  const result = spawnSync(process.execPath, [entry, ...args], { cwd: folder, encoding: "utf8" });
  return { code: result.status, out: result.stdout, error: result.stderr };
}

function file(name: string, text: string): string {
  writeFileSync(join(folder, name), text);
  return name;
}

const valley = "dose_a_kg_per_t;turbidity_ntu\n2,0;400\n3,0;150\n4,0;66\n5,0;44\n6,0;55\n8,0;130\n";

describe("the terminal verbs", () => {
  test("fit answers the report's keys, and intervals by every method", () => {
    file("v.csv", valley);
    const { code, out } = verb(
      "fit",
      "v.csv",
      "--x",
      "dose_a_kg_per_t",
      "--y",
      "turbidity_ntu",
      "--model",
      "quadratic",
      "--log-y",
      "--bootstrap",
      "50",
      "--seed",
      "1",
    );
    expect(code).toBe(0);
    const report = JSON.parse(out) as Record<string, unknown> & {
      optimum: { intervals: { method: string }[] };
    };
    expect(Object.keys(report)).toEqual([
      "model",
      "n",
      "rowsUsed",
      "scale",
      "status",
      "iterations",
      "parameters",
      "covariance",
      "rss",
      "df",
      "residualSd",
      "r2",
      "aicc",
      "aiccNatural",
      "fModel",
      "lackOfFit",
      "optimum",
      "outliers",
      "influence",
      "warnings",
    ]);
    expect(report.optimum.intervals.map(({ method }) => method)).toEqual([
      "profile",
      "fieller",
      "delta",
      "bootstrap",
    ]);
    expect(out).not.toMatch(/NaN|Infinity/);
    expect(
      verb(
        "fit",
        "v.csv",
        "--x",
        "dose_a_kg_per_t",
        "--y",
        "turbidity_ntu",
        "--model",
        "quadratic",
        "--log-y",
        "--bootstrap",
        "50",
        "--seed",
        "1",
      ).out,
    ).toBe(out);
  });
  test("a fit that cannot be had is not bad input", () => {
    file("few.csv", "x,y\n1,2\n2,3\n");
    const { code, out } = verb("fit", "few.csv", "--x", "x", "--y", "y", "--model", "gaussian-valley");
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      status: "too-few-points",
      parameters: [],
      rss: null,
      optimum: null,
    });
  });
  test("a re-read of one jar is one point, and a log-dose model at 0 names the line", () => {
    file("jars.csv", "jar,x,y\n1,1,10\n2,2,5\n2,2,7\n3,3,4\n4,4,6\n5,5,9\n");
    const { out } = verb("fit", "jars.csv", "--x", "x", "--y", "y", "--model", "quadratic");
    expect(JSON.parse(out)).toMatchObject({ n: 5, rowsUsed: [2, 3, 4, 5, 6, 7] });
    file("zero.csv", "x,y\n1,10\n0,5\n3,4\n4,6\n5,9\n");
    expect(verb("fit", "zero.csv", "--x", "x", "--y", "y", "--model", "quadratic-log")).toMatchObject({
      code: 2,
      out: "",
      error: expect.stringMatching(/^zero\.csv: line 3, column x: /) as string,
    });
  });
  const refused: [string, string[], RegExp][] = [
    ["no verb", [], /^Name a verb/],
    ["an unknown verb", ["dance"], /^There is no verb "dance"/],
    ["a missing file", ["analyse", "nowhere.csv"], /no such file/],
    ["a missing option", ["fit", "v.csv", "--x", "dose_a_kg_per_t"], /--y is missing/],
    ["an unknown option", ["analyse", "v.csv", "--sideways"], /Unknown option/],
    [
      "an unknown model",
      ["fit", "v.csv", "--x", "dose_a_kg_per_t", "--y", "turbidity_ntu", "--model", "spline"],
      /There is no model "spline"/,
    ],
    [
      "an unknown parameter",
      [
        "fit",
        "v.csv",
        "--x",
        "dose_a_kg_per_t",
        "--y",
        "turbidity_ntu",
        "--model",
        "plateau",
        "--fix",
        "depth=1",
      ],
      /no parameter "depth"/,
    ],
    ["a study that is none", ["inspect", "v.csv"], /not a Flocwright study/],
    ["a demo over a file", ["demo", "v.csv"], /ends in \.flocwright/],
    ["JSON that is none", ["rates", "v.csv"], /is not JSON/],
  ];
  for (const [name, args, words] of refused)
    test(`${name}: one sentence, exit 2, nothing on standard output`, () => {
      file("v.csv", valley);
      const { code, out, error } = verb(...args);
      expect({ code, out }).toEqual({ code: 2, out: "" });
      expect(error).toMatch(words);
      expect(error.trim().split("\n")).toHaveLength(1);
      expect(error).not.toMatch(/\bat .*:\d+:\d+/);
    });
  test("rates names the JSON path", () => {
    file("r.json", JSON.stringify({ feed: { flowM3PerH: -1 }, polymers: [] }));
    expect(verb("rates", "r.json").error).toMatch(/^r\.json: feed\.flowM3PerH: /);
  });
  test("demo writes a study once, and inspect counts it without touching it", () => {
    expect(JSON.parse(verb("demo", "d.flocwright").out)).toMatchObject({
      file: "d.flocwright",
      invented: true,
    });
    const before = readFileSync(join(folder, "d.flocwright"));
    expect(JSON.parse(verb("inspect", "d.flocwright").out)).toMatchObject({
      samples: 1,
      series: 2,
      jars: 24,
      decisions: 1,
      integrity: "ok",
      history: "whole",
    });
    expect(readFileSync(join(folder, "d.flocwright")).equals(before)).toBe(true);
    expect(verb("demo", "d.flocwright")).toMatchObject({
      code: 2,
      error: expect.stringMatching(/already a file/) as string,
    });
    expect(readdirSync(folder).filter((name) => name.startsWith("d."))).toEqual(["d.flocwright"]);
  });
  test("calibrate and plan answer their shapes", () => {
    file("p.csv", "setting;ml;seconds\n20;14,1;60\n40;31,6;60\n60;49;60\n80;66,9;60\n100;84,2;60\n");
    expect(JSON.parse(verb("calibrate", "p.csv").out)).toMatchObject({
      repeatabilityPct: null,
      lackOfFit: null,
    });
    file(
      "plan.json",
      JSON.stringify({
        design: "geometric",
        low: 2,
        high: 8,
        steps: 6,
        replicates: 2,
        seed: 1,
        sampleVolumeMl: 500,
        densityKgPerL: 1,
        totalSolidsPct: 2.5,
        solutionActivePct: 0.2,
      }),
    );
    const plan = JSON.parse(verb("plan", "plan.json").out) as { jars: object[]; warnings: string[] };
    expect(Object.keys(plan.jars[0]!)).toEqual([
      "order",
      "label",
      "role",
      "doseAKgPerT",
      "doseBKgPerT",
      "syringeAMl",
      "syringeBMl",
      "blankWaterMl",
    ]);
  });
});

// npm run torture: hundreds of kills and far more fuzz than the test run, one JSON line for each part. Not part of the
// tests. usage: npm run torture -- [--kills N] [--cases N] [--files N] [--verbs N] [--seed N]
import { execFile } from "node:child_process";
import { rmSync } from "node:fs";
import { join } from "node:path";
import { parseArgs, promisify } from "node:util";
import type { Tally } from "../fuzz/chance.ts";
import { runContractCases } from "../fuzz/contract-cases.ts";
import { fuzzFolder } from "../fuzz/folder.ts";
import { runStudyFileCases } from "../fuzz/study-file-cases.ts";
import { runVerbCases } from "../fuzz/verb-cases.ts";
import { killAtSteps, stepActions } from "../storage/step-kills.ts";

const { values } = parseArgs({
  options: {
    kills: { type: "string", default: "500" },
    cases: { type: "string", default: "150000" },
    files: { type: "string", default: "20000" },
    verbs: { type: "string", default: "100000" },
    seed: { type: "string", default: "1" },
  },
});
const number = (name: keyof typeof values) => {
  const value = Number(values[name]);
  if (!Number.isInteger(value) || value < 0) throw new Error(`--${name} takes a whole number.`);
  return value;
};
const seed = number("seed");
let faults = 0;

async function part(name: string, work: () => Promise<object> | object): Promise<void> {
  const started = Date.now();
  const seconds = () => Math.round((Date.now() - started) / 100) / 10;
  try {
    const counts = await work();
    console.log(JSON.stringify({ part: name, seed, seconds: seconds(), ...counts }));
  } catch (error) {
    faults += 1;
    console.log(JSON.stringify({ part: name, seed, seconds: seconds(), fault: String(error) }));
  }
}

async function inFolder<T>(folder: string, work: (folder: string) => Promise<T>): Promise<T> {
  try {
    return await work(folder);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** Many runs of one kind of fuzz, each with its own seed and a fresh folder, counted together. */
async function fuzz(
  run: (seed: number, cases: number, folder: string) => Promise<Tally>,
  cases: number,
  each: number,
): Promise<Omit<Tally, "what">> {
  const sum = { tried: 0, accepted: 0, refused: 0, crashed: 0, acceptedWrongly: 0, faults: [] as string[] };
  for (let index = 0; sum.tried < cases; index++) {
    const own = seed * 100_000 + index;
    const tally = await inFolder(fuzzFolder(), (folder) =>
      run(own, Math.min(each, cases - sum.tried), folder),
    );
    sum.tried += tally.tried;
    sum.accepted += tally.accepted;
    sum.refused += tally.refused;
    sum.crashed += tally.crashed;
    sum.acceptedWrongly += tally.acceptedWrongly;
    for (const words of tally.faults) if (sum.faults.length < 20) sum.faults.push(`seed ${own}: ${words}`);
  }
  faults += sum.crashed + sum.acceptedWrongly;
  return sum;
}

// A study of some hundred changes is as good as one that grows without end, and quicker to look over after each kill.
const killLane = async (own: number, kills: number): Promise<object> => {
  const lane = join(import.meta.dirname, "kill-lane.ts");
  const { stdout } = await promisify(execFile)(process.execPath, [lane, String(own), String(kills)]);
  return JSON.parse(stdout) as object;
};
const killsEach = 25;
const lanes = 4;
const rounds = Array.from({ length: Math.ceil(number("kills") / killsEach) }, (_, index) => index);
await Promise.all(
  Array.from({ length: lanes }, async () => {
    for (let round = rounds.shift(); round !== undefined; round = rounds.shift()) {
      const own = seed * 1000 + round;
      await part(`random kills, seed ${own}`, () =>
        killLane(own, Math.min(killsEach, number("kills") - (own - seed * 1000) * killsEach)),
      );
    }
  }),
);
if (number("kills") > 0)
  for (const action of stepActions)
    await part(`kills at every step: ${action}`, () => killAtSteps(action, true));
await part("contract calls", () => fuzz(runContractCases, number("cases"), 3000));
await part("study files", () => fuzz(runStudyFileCases, number("files"), 1000));
await part("terminal verbs", () => fuzz(runVerbCases, number("verbs"), 5000));
console.log(JSON.stringify({ part: "all", seed, faults }));
process.exitCode = faults === 0 ? 0 : 1;

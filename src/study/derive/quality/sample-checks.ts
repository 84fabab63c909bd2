import { feedDifferenceLimitPct, replicates } from "../../../sample/solids.ts";
import type { StudyState } from "../../schema/records.ts";
import type { SeriesChain } from "../jars.ts";
import type { StockChain } from "../stock.ts";
import { hoursBetween, jarList, type Flag, type FlagWords } from "./flag.ts";

/** Past these a sample of sludge is ageing, then old: common practice, no source. */
const freshHours = 2;
export const oldSampleHours = 24;

const aim = { room: "sample" } as const;

/** The sample's age while jars are made, and how far its solids can be trusted. */
export function sampleFlags(state: StudyState, chain: SeriesChain, { now, number }: FlagWords): Flag[] {
  const sample = state.sample[chain.series.sampleId]!;
  const flags: Flag[] = [];
  const mixed = chain.jars.flatMap(({ jar }) => jar.mixedAt ?? []).sort();
  // Once the last jar is mixed the sample's age stands still: what counts is how old it was on the bench.
  const waiting = chain.jars.some(({ jar, readings }) => jar.leftOut === null && readings.length === 0);
  const used = mixed.at(-1);
  const at = !waiting && used ? used : waiting && chain.jars.length > 0 ? now : (used ?? null);
  if (sample.takenAt === null)
    flags.push({
      id: "sample-time",
      tone: "open",
      word: "sample time unknown",
      sentence: "Nobody wrote down when the sample was taken, so its age cannot be watched.",
      todo: "Enter when it was taken.",
      aim,
    });
  else if (at !== null && hoursBetween(sample.takenAt, at) > freshHours) {
    const hours = hoursBetween(sample.takenAt, at);
    const old = hours > oldSampleHours;
    flags.push({
      id: "sample-age",
      tone: old ? "bad" : "warn",
      word: old ? "old sample" : "ageing sample",
      sentence: `The sample is ${number(hours)} h old ${waiting ? "now" : "at the last jar"}; past ${freshHours} h sludge begins to change (common practice, no source).`,
      todo: old ? "Take a fresh sample." : "Watch the standard jar, and take a fresh sample where it drifts.",
      aim,
    });
  }
  if (chain.sample.stage === "provisional")
    flags.push({
      id: "provisional",
      tone: "warn",
      word: "TS provisional",
      sentence: "Total solids are the moisture balance's: every dose will move when the dishes are dry.",
      todo: "Enter the dry masses as soon as the dishes are cool.",
      aim,
    });
  const totals = chain.sample.dishes
    .filter(({ dish }) => dish.leftOut === null)
    .flatMap(({ totalSolids }) => totalSolids.value ?? []);
  const summary = replicates(totals);
  const difference = summary.ok ? summary.value.relativeDifferencePct : null;
  if (difference !== null && difference > feedDifferenceLimitPct)
    flags.push({
      id: "dishes",
      tone: "warn",
      word: "dishes differ",
      sentence: `The dishes differ by ${number(difference)} % of their mean, more than ${feedDifferenceLimitPct} % (Standard Methods 2540 G, from memory).`,
      todo: "Dry another dish, or leave one out with a reason.",
      aim,
    });
  return flags;
}

/** Solutions used before they were ready or after their life, and what a jar mixed now would get. */
export function solutionFlags(chain: SeriesChain, { now }: FlagWords): Flag[] {
  const flags: Flag[] = [];
  const stocks = [chain.stockA, chain.stockB].filter((stock): stock is StockChain => stock !== null);
  for (const [index, stock] of stocks.entries()) {
    const letter = index === 0 ? "A" : "B";
    const { usableFrom, discardAfter } = stock;
    const name = stock.stock.label;
    if (usableFrom === null || discardAfter === null) {
      flags.push({
        id: `solution-time-${letter}`,
        tone: "open",
        word: "mixing time unknown",
        sentence: `Nobody wrote down when ${name} was mixed, so its ageing and life cannot be watched.`,
        todo: "Enter when mixing started.",
        aim,
      });
      continue;
    }
    const used = chain.jars.filter(
      ({ jar }) => jar.mixedAt !== null && (letter === "A" ? jar.syringeAMl : jar.syringeBMl),
    );
    const young = used.filter(({ jar }) => jar.mixedAt! < usableFrom).map(({ jar }) => jar.label);
    const late = used.filter(({ jar }) => jar.mixedAt! > discardAfter).map(({ jar }) => jar.label);
    if (young.length > 0)
      flags.push({
        id: `solution-young-${letter}`,
        tone: "warn",
        word: "too young",
        sentence: `${name} was not aged yet when it went into ${jarList(young)}.`,
        todo: "Repeat with the aged solution, or leave out with a reason.",
        aim: { room: "bench", jarId: used.find(({ jar }) => jar.label === young[0])!.jar.id },
      });
    if (late.length > 0)
      flags.push({
        id: `solution-late-${letter}`,
        tone: "bad",
        word: "past its life",
        sentence: `${name} was past its life when it went into ${jarList(late)}.`,
        todo: "Make a new solution and repeat, or leave out with a reason.",
        aim: { room: "bench", jarId: used.find(({ jar }) => jar.label === late[0])!.jar.id },
      });
    const waiting = chain.jars.some(({ jar, readings }) => jar.leftOut === null && readings.length === 0);
    if (waiting && now > discardAfter)
      flags.push({
        id: `solution-now-${letter}`,
        tone: "bad",
        word: "discard",
        sentence: `${name} is past its life now.`,
        todo: "Make a new solution before the next jar.",
        aim,
      });
    else if (waiting && now < usableFrom)
      flags.push({
        id: `solution-now-${letter}`,
        tone: "open",
        word: "still ageing",
        sentence: `${name} is still ageing.`,
        todo: "Prepare the jars meanwhile.",
        aim,
      });
  }
  return flags;
}

import { feedDifferenceLimitPct, replicates } from "../../../sample/solids.ts";
import { qualityFlagWords } from "../../../words/quality-flags.ts";
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
      word: qualityFlagWords.sampleTime.word,
      sentence: qualityFlagWords.sampleTime.sentence,
      todo: qualityFlagWords.sampleTime.todo,
      aim,
    });
  else if (at !== null && hoursBetween(sample.takenAt, at) > freshHours) {
    const hours = hoursBetween(sample.takenAt, at);
    const old = hours > oldSampleHours;
    flags.push({
      id: "sample-age",
      tone: old ? "bad" : "warn",
      word: old ? qualityFlagWords.sampleAge.old : qualityFlagWords.sampleAge.ageing,
      sentence: waiting
        ? qualityFlagWords.sampleAge.now(number(hours), freshHours)
        : qualityFlagWords.sampleAge.atLastJar(number(hours), freshHours),
      todo: old ? qualityFlagWords.sampleAge.oldTodo : qualityFlagWords.sampleAge.ageingTodo,
      aim,
    });
  }
  if (chain.sample.stage === "provisional")
    flags.push({
      id: "provisional",
      tone: "warn",
      word: qualityFlagWords.provisional.word,
      sentence: qualityFlagWords.provisional.sentence,
      todo: qualityFlagWords.provisional.todo,
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
      word: qualityFlagWords.dishes.word,
      sentence: qualityFlagWords.dishes.sentence(number(difference), feedDifferenceLimitPct),
      todo: qualityFlagWords.dishes.todo,
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
        word: qualityFlagWords.solutionTime.word,
        sentence: qualityFlagWords.solutionTime.sentence(name),
        todo: qualityFlagWords.solutionTime.todo,
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
        word: qualityFlagWords.solutionYoung.word,
        sentence: qualityFlagWords.solutionYoung.sentence(name, jarList(young)),
        todo: qualityFlagWords.solutionYoung.todo,
        aim: { room: "bench", jarId: used.find(({ jar }) => jar.label === young[0])!.jar.id },
      });
    if (late.length > 0)
      flags.push({
        id: `solution-late-${letter}`,
        tone: "bad",
        word: qualityFlagWords.solutionLate.word,
        sentence: qualityFlagWords.solutionLate.sentence(name, jarList(late)),
        todo: qualityFlagWords.solutionLate.todo,
        aim: { room: "bench", jarId: used.find(({ jar }) => jar.label === late[0])!.jar.id },
      });
    const waiting = chain.jars.some(({ jar, readings }) => jar.leftOut === null && readings.length === 0);
    if (waiting && now > discardAfter)
      flags.push({
        id: `solution-now-${letter}`,
        tone: "bad",
        word: qualityFlagWords.solutionOver.word,
        sentence: qualityFlagWords.solutionOver.sentence(name),
        todo: qualityFlagWords.solutionOver.todo,
        aim,
      });
    else if (waiting && now < usableFrom)
      flags.push({
        id: `solution-now-${letter}`,
        tone: "open",
        word: qualityFlagWords.solutionAgeing.word,
        sentence: qualityFlagWords.solutionAgeing.sentence(name),
        todo: qualityFlagWords.solutionAgeing.todo,
        aim,
      });
  }
  return flags;
}

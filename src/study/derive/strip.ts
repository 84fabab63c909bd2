import type { Analysis } from "../../curve/analyse-types.ts";
import { pumpChainWords } from "../../words/pump-chain.ts";
import { stripWords } from "../../words/strip.ts";
import type { StudyState } from "../schema/records.ts";
import type { DoseWords } from "../../units/dose-words.ts";
import { decisionChain } from "./decision.ts";
import type { Figure } from "./figure.ts";
import { seriesChain } from "./jars.ts";
import { checkChain } from "./plant-check.ts";
import { tableChain } from "./plant-table.ts";
import { plantChain } from "./plant.ts";
import { sampleChain } from "./sample.ts";
import type { StripSegment } from "./strip-types.ts";

/** Number text in the study's own units and decimal mark. */
export interface StripWords {
  doses: DoseWords;
  /** a number with its spread, to one place */
  figure(figure: Figure): { value: string; spread: string };
  plain(value: number): string;
  /** a writer for a number and the ends of its interval, all to one place */
  interval(value: number, low: number | null, high: number | null): (number: number) => string;
  /** a flow with its unit */
  flowLPerH(value: number): string;
}

export interface StripInput {
  state: StudyState;
  sampleId: string | null;
  seriesId: string | null;
  /** null while it is running */
  analysis: Analysis | null;
  running: boolean;
  changes: number;
  words: StripWords;
}

const missing = (room: StripSegment["room"], spread = ""): StripSegment => ({
  room,
  headline: "",
  spread,
  word: stripWords.missing,
  tone: "missing",
});

/** The whole result in one line: six segments, each with its headline number, spread and state in a word. */
export function stripSegments(input: StripInput): StripSegment[] {
  return [
    sampleSegment(input),
    benchSegment(input),
    curvesSegment(input),
    doseSegment(input),
    plantSegment(input),
    recordSegment(input),
  ];
}

function sampleSegment({ state, sampleId, words }: StripInput): StripSegment {
  if (!sampleId || !state.sample[sampleId]) return missing("sample", stripWords.noSample);
  const chain = sampleChain(state, sampleId);
  const { value, spread } = words.figure(chain.totalSolids);
  if (chain.totalSolids.value === null) return missing("sample", stripWords.totalSolids);
  return {
    room: "sample",
    headline: stripWords.solids(value),
    spread: spread === "" ? stripWords.oneValue : `${spread} %`,
    word: stripWords.stage[chain.stage],
    tone: chain.tone,
  };
}

function benchSegment({ state, seriesId }: StripInput): StripSegment {
  if (!seriesId || !state.series[seriesId]) return missing("bench", stripWords.noSeries);
  const { jars } = seriesChain(state, seriesId);
  if (jars.length === 0) return missing("bench", stripWords.noJars);
  const out = jars.filter(({ jar }) => jar.leftOut !== null).length;
  const unread = jars.filter(
    ({ jar, responses }) => jar.leftOut === null && Object.keys(responses).length === 0,
  ).length;
  const undosed = jars.filter(({ doseA, doseB }) => doseA.value === null || doseB.value === null).length;
  return {
    room: "bench",
    headline: stripWords.jars(jars.length),
    spread:
      out > 0
        ? stripWords.leftOut(out)
        : undosed > 0
          ? stripWords.withoutDose(undosed)
          : stripWords.noneLeftOut,
    word: unread > 0 ? stripWords.toRead(unread) : undosed > 0 ? stripWords.incomplete : stripWords.allRead,
    tone: unread > 0 || undosed > 0 ? "open" : "good",
  };
}

function curvesSegment({ analysis, running, words }: StripInput): StripSegment {
  if (running) return { room: "curves", headline: "", spread: "", word: stripWords.running, tone: "open" };
  if (!analysis || analysis.responses.length === 0) return missing("curves", stripWords.noReadings);
  const found = analysis.responses.find(({ verdict }) => verdict.kind !== "none");
  if (!found) {
    const { reason } = analysis.responses[0]!.verdict;
    return {
      room: "curves",
      headline: stripWords.noDose,
      spread: reason ? stripWords.reasons[reason] : "",
      word: stripWords.refused,
      tone: "warn",
    };
  }
  const { verdict } = found;
  const around = (letter: "a" | "b" | null) => {
    const part = (value: typeof verdict.dose) =>
      value === null ? null : typeof value === "number" ? value : letter && value[letter];
    const dose = part(verdict.dose);
    return dose === null ? undefined : { dose, low: part(verdict.low), high: part(verdict.high) };
  };
  const { number, unit } = words.doses;
  const one = (value: typeof verdict.dose) =>
    value === null
      ? stripWords.openEnd
      : typeof value === "number"
        ? number(value, around(null))
        : `${number(value.a, around("a"))} + ${number(value.b, around("b"))}`;
  const range = verdict.warnings.includes("tie") ? stripWords.rangeWithTie : stripWords.range;
  return {
    room: "curves",
    headline: `${one(verdict.dose)} ${unit}`,
    spread: range(one(verdict.low), one(verdict.high)),
    word: verdict.warnings.some(
      (warning) => warning !== "tie" && warning !== "zero-dose" && warning !== "censored",
    )
      ? stripWords.lookCloser
      : stripWords.fitted,
    tone: verdict.warnings.some(
      (warning) => warning !== "tie" && warning !== "zero-dose" && warning !== "censored",
    )
      ? "warn"
      : "good",
  };
}

function doseSegment({ state, seriesId, words }: StripInput): StripSegment {
  const chain = seriesId ? decisionChain(state, seriesId) : null;
  if (!chain) return missing("dose", stripWords.nothingPicked);
  const { decision } = chain;
  const b = decision.doseBKgPerT;
  return {
    room: "dose",
    headline: `${words.doses.given(decision.doseAKgPerT)}${b === null ? "" : ` + ${words.doses.given(b)}`} ${words.doses.unit}`,
    spread: chain.moved ? stripWords.inputMoved : decision.byName,
    word: chain.word,
    tone: chain.tone,
  };
}

function plantSegment({ state, seriesId, words }: StripInput): StripSegment {
  const picked = seriesId ? decisionChain(state, seriesId) : null;
  if (!seriesId || !picked) return missing("plant", stripWords.needsDose);
  const chain = plantChain(state, seriesId, {
    a: picked.decision.doseAKgPerT,
    b: picked.decision.doseBKgPerT,
  });
  const usual = chain.cases.find(({ feedCase }) => feedCase.size === "usual") ?? chain.cases[0];
  if (!usual) return missing("plant", stripWords.noFeed);
  if (!usual.rates.ok) return missing("plant", usual.rates.message);
  const first = usual.polymers[0];
  if (!first) return missing("plant", stripWords.noPolymer);
  const stale = picked.moved !== null;
  const unit = pumpChainWords.units[first.polymer.pump?.pump.settingUnit ?? "%"];
  const flow =
    first.pumpFlow === null
      ? stripWords.solutionFlow(words.flowLPerH(first.rates.solutionLPerH))
      : `${words.plain(first.pumpFlow)} ${first.polymer.pump?.pump.measuredIn === "g" ? "g" : "mL"}/min`;
  if (!first.setting)
    return {
      room: "plant",
      headline: flow,
      spread: stripWords.noPumpLine,
      word: stale ? stripWords.outOfDate : stripWords.uncalibrated,
      tone: "warn",
    };
  if (first.setting.pct === null)
    return {
      room: "plant",
      headline: flow,
      spread:
        first.setting.status === "below" ? stripWords.outsideProven.below : stripWords.outsideProven.above,
      word: stale ? stripWords.outOfDate : stripWords.refused,
      tone: stale ? "warn" : "bad",
    };
  const pump = first.polymer.pump;
  const settings = chain.cases.flatMap(({ polymers }) =>
    polymers.flatMap(({ polymer, setting }) =>
      polymer.letter === first.polymer.letter && setting?.pct != null ? [setting.pct] : [],
    ),
  );
  const latest = pump ? checkChain(state, pump, null, null, settings) : null;
  const check = latest?.atSetting ? latest : null;
  const old = stale || tableChain(state, seriesId, chain).moved.length > 0;
  return {
    room: "plant",
    headline: `${words.interval(first.setting.pct, first.setting.low, first.setting.high)(first.setting.pct)} ${unit}`,
    spread: flow,
    word: old
      ? stripWords.outOfDate
      : !check
        ? stripWords.notChecked
        : check.inside === false
          ? stripWords.checkFailed
          : check.inside
            ? stripWords.checked
            : stripWords.notChecked,
    tone: old ? "warn" : !check ? "open" : check.tone,
  };
}

function recordSegment({ changes }: StripInput): StripSegment {
  return {
    room: "record",
    headline: stripWords.edits(changes),
    spread: "",
    word: stripWords.kept,
    tone: "good",
  };
}

import type { Analysis } from "../../curve/analyse-types.ts";
import type { StudyState } from "../schema/records.ts";
import { decisionChain } from "./decision.ts";
import { seriesChain } from "./jars.ts";
import { checkChain } from "./plant-check.ts";
import { tableChain } from "./plant-table.ts";
import { plantChain } from "./plant.ts";
import { sampleChain } from "./sample.ts";
import type { StripSegment } from "./strip-types.ts";

/** Number text in the study's own units and decimal mark. */
export interface StripWords {
  dose(kgPerT: number): string;
  doseUnit: string;
  percent(value: number): string;
  plain(value: number): string;
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
  word: "missing",
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
  if (!sampleId || !state.sample[sampleId]) return missing("sample", "no sample yet");
  const chain = sampleChain(state, sampleId);
  const { value, spread } = chain.totalSolids;
  if (value === null) return missing("sample", "total solids");
  const decimals = (number: number) => words.percent(number);
  return {
    room: "sample",
    headline: `TS ${decimals(value)} %`,
    spread: spread === null ? "one value, no spread" : `± ${words.percent(spread)} %`,
    word: chain.stage,
    tone: chain.tone,
  };
}

function benchSegment({ state, seriesId }: StripInput): StripSegment {
  if (!seriesId || !state.series[seriesId]) return missing("bench", "no series yet");
  const { jars } = seriesChain(state, seriesId);
  if (jars.length === 0) return missing("bench", "no jars yet");
  const out = jars.filter(({ jar }) => jar.leftOut !== null).length;
  const unread = jars.filter(
    ({ jar, responses }) => jar.leftOut === null && Object.keys(responses).length === 0,
  ).length;
  const undosed = jars.filter(({ doseA, doseB }) => doseA.value === null || doseB.value === null).length;
  return {
    room: "bench",
    headline: `${jars.length} ${jars.length === 1 ? "jar" : "jars"}`,
    spread: out > 0 ? `${out} left out` : undosed > 0 ? `${undosed} without a dose` : "none left out",
    word: unread > 0 ? `${unread} to read` : undosed > 0 ? "incomplete" : "all read",
    tone: unread > 0 || undosed > 0 ? "open" : "good",
  };
}

function curvesSegment({ analysis, running, words }: StripInput): StripSegment {
  if (running) return { room: "curves", headline: "", spread: "", word: "running", tone: "open" };
  if (!analysis || analysis.responses.length === 0) return missing("curves", "no readings yet");
  const found = analysis.responses.find(({ verdict }) => verdict.kind !== "none");
  if (!found) {
    const reason = analysis.responses[0]!.verdict.reason ?? "";
    return {
      room: "curves",
      headline: "no dose",
      spread: reason.replaceAll("-", " "),
      word: "refused",
      tone: "warn",
    };
  }
  const { verdict } = found;
  const one = (value: typeof verdict.dose) =>
    value === null
      ? "open"
      : typeof value === "number"
        ? words.dose(value)
        : `${words.dose(value.a)} + ${words.dose(value.b)}`;
  const tie = verdict.warnings.includes("tie") ? ", tie" : "";
  return {
    room: "curves",
    headline: `${one(verdict.dose)} ${words.doseUnit}`,
    spread: `${one(verdict.low)} to ${one(verdict.high)}${tie}`,
    word: verdict.warnings.some(
      (warning) => warning !== "tie" && warning !== "zero-dose" && warning !== "censored",
    )
      ? "look closer"
      : "fitted",
    tone: verdict.warnings.some(
      (warning) => warning !== "tie" && warning !== "zero-dose" && warning !== "censored",
    )
      ? "warn"
      : "good",
  };
}

function doseSegment({ state, seriesId, words }: StripInput): StripSegment {
  const chain = seriesId ? decisionChain(state, seriesId) : null;
  if (!chain) return missing("dose", "nothing picked");
  const { decision } = chain;
  const b = decision.doseBKgPerT;
  return {
    room: "dose",
    headline: `${words.dose(decision.doseAKgPerT)}${b === null ? "" : ` + ${words.dose(b)}`} ${words.doseUnit}`,
    spread: chain.moved ? "an input moved since" : decision.byName,
    word: chain.word,
    tone: chain.tone,
  };
}

function plantSegment({ state, seriesId, words }: StripInput): StripSegment {
  const picked = seriesId ? decisionChain(state, seriesId) : null;
  if (!seriesId || !picked) return missing("plant", "needs a dose");
  const chain = plantChain(state, seriesId, {
    a: picked.decision.doseAKgPerT,
    b: picked.decision.doseBKgPerT,
  });
  const usual = chain.cases.find(({ feedCase }) => feedCase.size === "usual") ?? chain.cases[0];
  if (!usual) return missing("plant", "no feed yet");
  if (!usual.rates.ok) return missing("plant", usual.rates.message);
  const first = usual.polymers[0];
  if (!first) return missing("plant", "no polymer");
  const stale = picked.moved !== null;
  const unit = first.polymer.pump?.pump.settingUnit ?? "%";
  const flow =
    first.pumpFlow === null
      ? `${words.flowLPerH(first.rates.solutionLPerH)} solution`
      : `${words.plain(first.pumpFlow)} ${first.polymer.pump?.pump.measuredIn === "g" ? "g" : "mL"}/min`;
  if (!first.setting)
    return {
      room: "plant",
      headline: flow,
      spread: "no pump line yet",
      word: stale ? "out of date" : "uncalibrated",
      tone: "warn",
    };
  if (first.setting.pct === null)
    return {
      room: "plant",
      headline: flow,
      spread: `${first.setting.status} the settings proven`,
      word: stale ? "out of date" : "refused",
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
    headline: `${words.plain(first.setting.pct)} ${unit}`,
    spread: flow,
    word: old
      ? "out of date"
      : !check
        ? "not checked"
        : check.inside === false
          ? "check failed"
          : check.inside
            ? "checked"
            : "not checked",
    tone: old ? "warn" : !check ? "open" : check.tone,
  };
}

function recordSegment({ changes }: StripInput): StripSegment {
  return {
    room: "record",
    headline: `${changes} ${changes === 1 ? "edit" : "edits"}`,
    spread: "",
    word: "kept",
    tone: "good",
  };
}

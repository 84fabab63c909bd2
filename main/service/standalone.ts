import type { Outcome } from "../../src/outcome.ts";
import { bad, good } from "../../src/outcome.ts";
import type { Command } from "../../src/study/commands.ts";
import type { PaperHistory } from "../../src/report/paper-input.ts";
import type { StudyState } from "../../src/study/schema/records.ts";
import { firstDifference } from "../storage/replay.ts";
import { openStudyFile, type StudyFile } from "../storage/study-file.ts";
import { writeNewStudy } from "./opening.ts";
import { serviceWords } from "../../src/words/service.ts";

/** Writes a new study file from a list of edits. */
export function writeDemo(path: string, commands: (at: string) => Command[], now: string): Outcome<null> {
  return writeNewStudy(path, commands(now), "", now);
}

export interface Summary {
  name: string;
  invented: boolean;
  format: string;
  samples: number;
  series: number;
  jars: number;
  readings: number;
  decisions: number;
  changes: number;
  integrity: string;
  history: "whole" | "broken";
  historyHead: string;
  /** the first record that is not what the history says, for example "jar jar-1-04"; null where all are */
  notAsHistory: string | null;
}

/** What a study file holds, with its integrity; the file is only read. */
export function summarise(path: string, now: string): Outcome<Summary> {
  const file = openStudyFile(path, now, { onlyRead: true });
  if (!file.ok) return file;
  try {
    const state = file.value.readState();
    if (!state.ok) return state;
    const { integrity, chain, chainHead, changes } = file.value.inspect();
    const count = (table: object) => Object.keys(table).length;
    return good({
      name: state.value.study["study"]?.name ?? "",
      invented: state.value.study["study"]?.invented ?? false,
      format: "flocwright",
      samples: count(state.value.sample),
      series: count(state.value.series),
      jars: count(state.value.jar),
      readings: count(state.value.reading),
      decisions: count(state.value.decision),
      changes,
      integrity,
      history: chain,
      historyHead: chainHead,
      notAsHistory: firstDifference(file.value.since(0), state.value),
    });
  } catch {
    return bad(serviceWords.badHistory);
  } finally {
    file.value.close();
  }
}

/** A study as a paper needs it: its records and where its history stands. The file is only read. */
export function readStudy(path: string, now: string): Outcome<{ state: StudyState; history: PaperHistory }> {
  const file = openStudyFile(path, now, { onlyRead: true });
  if (!file.ok) return file;
  try {
    const state = file.value.readState();
    if (!state.ok) return state;
    return good({ state: state.value, history: anchorOf(file.value) });
  } catch {
    return bad(serviceWords.badHistory);
  } finally {
    file.value.close();
  }
}

/** Where a file's history stands, its chain of hashes checked from the start. */
export function anchorOf(file: StudyFile): PaperHistory {
  const { chain, chainHead, changes } = file.inspect();
  return { changes, head: chainHead, whole: chain === "whole" };
}

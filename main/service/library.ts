import { existsSync, readdirSync } from "node:fs";
import { join } from "node:path";
import type { OutputOf } from "../../src/contract.ts";
import { bad, good, type Outcome } from "../../src/outcome.ts";
import {
  studySummarySchema,
  type LibraryRow,
  type LibrarySearch,
  type SeriesSummary,
} from "../../src/study/library/row.ts";
import { searchRows } from "../../src/study/library/search.ts";
import { summariseStudy } from "../../src/study/library/summary.ts";
import type { StudyState } from "../../src/study/schema/records.ts";
import { spokenLanguage } from "../../src/words/language.ts";
import { extension } from "../storage/format.ts";
import { readIndexFile, removeIndexFile, writeIndexFile, type IndexedFile } from "../storage/index-file.ts";
import { checkStudy, readResults, stampOf } from "../storage/read-only.ts";
import { openFault } from "../storage/probe.ts";
import type { Context } from "./context.ts";
import { refFor } from "./shelf.ts";
import { serviceWords } from "../../src/words/service.ts";

interface KnownStudy {
  stamp: string;
  trouble: string | null;
  rows: SeriesSummary[];
}

interface Job {
  waiting: string[];
  total: number;
  toRead: number;
  current: { fileName: string; stamp: string; work: Generator<undefined, Outcome<SeriesSummary[]>> } | null;
  /** studies read since the index was last written */
  unwritten: number;
}

/** The studies of one folder as they are compared. The index file is only this, kept for the next start. */
export interface Library {
  folder: string;
  known: Map<string, KnownStudy>;
  job: Job | null;
  /** whether the last writing of the index failed */
  notKept: boolean;
}

/** One call works no longer than this before it answers, so that edits are acknowledged in between. */
const sliceMs = 20;
/** A file changed so lately may change again within one tick of its clock, so it is looked at once more. */
const settledAfterMs = 2500;
const writeEvery = 50;
/** The most rows one answer holds; the sentence on the screen says how many there are. */
const mostRows = 2000;

const unsettled = "changed while it was read";

function libraryOf(context: Context): Library {
  const { folder } = context.support;
  if (context.library?.folder === folder) return context.library;
  const library: Library = { folder, known: new Map(), job: null, notKept: false };
  for (const entry of readIndexFile(folder)) {
    const rows = rowsFrom(entry.data);
    if (!rows) {
      // What does not read as an index is none: all of it is made anew from the studies.
      removeQuietly(folder);
      library.known.clear();
      break;
    }
    library.known.set(entry.fileName, { stamp: entry.stamp, trouble: entry.trouble, rows });
  }
  context.library = library;
  return library;
}

function removeQuietly(folder: string): void {
  try {
    removeIndexFile(folder);
  } catch {
    // A folder that may not be written keeps its damaged index; it is never read again in this session.
  }
}

function rowsFrom(data: string): SeriesSummary[] | null {
  try {
    const parsed = studySummarySchema.safeParse(JSON.parse(data));
    return parsed.success ? parsed.data : null;
  } catch {
    return null;
  }
}

function namesIn(folder: string): Outcome<string[]> {
  if (!existsSync(folder)) return good([]);
  try {
    return good(readdirSync(folder).filter((name) => name.endsWith(extension)));
  } catch (error) {
    return bad(openFault(error));
  }
}

/** Reads one study and works its series out, yielding between steps. A fault is its sentence, never an exception. */
function* readStudy(path: string): Generator<undefined, Outcome<SeriesSummary[]>> {
  const sound = checkStudy(path);
  if (!sound.ok) return sound;
  yield;
  const read = readResults(path, approvedSeries);
  if (!read.ok) return read;
  yield;
  try {
    return good(yield* summariseStudy(read.value.state, read.value.jarCounts));
  } catch {
    return bad(serviceWords.recordsApart);
  }
}

const approvedSeries = (state: StudyState): string[] => [
  ...new Set(
    Object.values(state.decision).flatMap(({ seriesId, withdrawn }) =>
      withdrawn === null ? [seriesId] : [],
    ),
  ),
];

/** What a summary rests on: the file as it looks from outside, and the language its sentences are in. */
function markOf(stamp: ReturnType<typeof stampOf>): string {
  return `${spokenLanguage()} ${stamp.ok ? stamp.value.text : stamp.message}`;
}

/** Lists the folder anew and puts what changed since in line to be read; what is gone is forgotten. */
function startJob(library: Library): Outcome<null> {
  const listed = namesIn(library.folder);
  if (!listed.ok) return listed;
  const names = listed.value;
  const present = new Set(names);
  const gone = [...library.known.keys()].filter((name) => !present.has(name));
  for (const name of gone) library.known.delete(name);
  const waiting = names.filter((name) => {
    const known = library.known.get(name);
    return known?.stamp !== markOf(stampOf(join(library.folder, name)));
  });
  library.job = {
    waiting,
    total: names.length,
    toRead: waiting.length,
    current: null,
    unwritten: gone.length,
  };
  return good(null);
}

function settle(library: Library, fileName: string, before: string, outcome: Outcome<SeriesSummary[]>): void {
  const stamp = stampOf(join(library.folder, fileName));
  const now = markOf(stamp);
  const fresh = stamp.ok && Date.now() - stamp.value.modifiedMs < settledAfterMs;
  library.known.set(fileName, {
    stamp: now === before && !fresh ? now : unsettled,
    trouble: outcome.ok ? null : outcome.message,
    rows: outcome.ok ? outcome.value : [],
  });
}

/** One step: a file begun, or some ten milliseconds of work on it. False where there was nothing to do. */
function step(library: Library, job: Job): boolean {
  if (!job.current) {
    const fileName = job.waiting.shift();
    if (fileName === undefined) return false;
    const path = join(library.folder, fileName);
    job.current = {
      fileName,
      stamp: markOf(stampOf(path)),
      work: readStudy(path),
    };
  }
  const { fileName, stamp, work } = job.current;
  const next = work.next();
  if (!next.done) return true;
  settle(library, fileName, stamp, next.value);
  job.current = null;
  job.unwritten += 1;
  if (job.unwritten >= writeEvery) keep(library, job);
  return true;
}

function keep(library: Library, job: Job): void {
  if (job.unwritten === 0 || !existsSync(library.folder)) return;
  const entries: IndexedFile[] = [...library.known].map(([fileName, { stamp, trouble, rows }]) => ({
    fileName,
    stamp,
    trouble,
    data: JSON.stringify(rows),
  }));
  library.notKept = !writeIndexFile(library.folder, entries);
  job.unwritten = 0;
}

/**
 * Brings the index up to date in slices: `start` lists the folder and begins, `go-on` works a slice further, `stop`
 * leaves off; what was read until then stays known. Studies are only looked at, never locked or changed.
 */
export function refreshLibrary(
  context: Context,
  how: "start" | "go-on" | "stop",
): Outcome<OutputOf<"library.refresh">> {
  const library = libraryOf(context);
  if (how === "start") {
    const started = startJob(library);
    if (!started.ok) return started;
  }
  const { job } = library;
  if (!job)
    return good({
      state: how === "stop" ? "stopped" : "done",
      done: 0,
      total: 0,
      toRead: 0,
      notKept: library.notKept,
    });
  let state: "running" | "done" | "stopped" = "running";
  if (how === "stop") state = "stopped";
  else {
    const start = performance.now();
    while (performance.now() - start < sliceMs)
      if (!step(library, job)) {
        state = "done";
        break;
      }
  }
  const left = job.waiting.length + (job.current ? 1 : 0);
  if (state !== "running") {
    keep(library, job);
    library.job = null;
  }
  return good({
    state,
    done: job.total - left,
    total: job.total,
    toRead: job.toRead,
    notKept: library.notKept,
  });
}

/** What the index knows now, filtered and in order, with what could not be read and what there is to filter by. */
export function searchLibrary(context: Context, search: LibrarySearch): OutputOf<"library.search"> {
  const library = libraryOf(context);
  const all: LibraryRow[] = [];
  const broken: OutputOf<"library.search">["broken"] = [];
  for (const [fileName, { trouble, rows }] of library.known) {
    const ref = refFor(context, join(library.folder, fileName));
    if (trouble !== null) broken.push({ ref, fileName, sentence: trouble });
    for (const row of rows) all.push({ ...row, ref, fileName });
  }
  const found = searchRows(all, search);
  const products = new Set(all.flatMap(({ productA, productB }) => [productA, productB]));
  return {
    folder: library.folder,
    studies: library.known.size - broken.length,
    found: found.length,
    rows: found.slice(0, mostRows),
    broken: broken.sort((a, b) => (a.fileName < b.fileName ? -1 : 1)),
    products: [...products].filter((product) => product !== null).sort(),
    sludgeClasses: [...new Set(all.flatMap(({ sludgeClass }) => sludgeClass ?? []))].sort(),
  };
}

import { existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from "node:fs";
import { basename, dirname } from "node:path";
import { z } from "zod";
import type { OutputOf } from "../../src/contract.ts";
import { instantSchema } from "../../src/study/schema/common.ts";
import { glanceAt, standingWords } from "../../src/study/library/glance.ts";
import { glanceWords } from "../../src/words/glance.ts";
import { takeName, throwAway } from "../storage/files.ts";
import type { Context } from "./context.ts";
import { refFor } from "./shelf.ts";

const countSchema = z.number().int().min(0);
const progressSchema = z.strictObject({
  jars: countSchema,
  series: countSchema,
  samples: countSchema,
  approvedBy: z.string().max(1000).nullable(),
});
const recentSchema = z.strictObject({
  path: z.string().min(1).max(4000),
  openedAt: instantSchema,
  name: z.string().max(1000),
  about: z.string().max(1000),
  // A list of an earlier version holds the line itself, in English; it goes with the study's next opening.
  standing: z.union([progressSchema, z.string().max(1000)]),
});
type Recent = z.infer<typeof recentSchema>;

/** The list's file in the folder of studies. */
export const recentFileName = "flocwright-recent.json";

const mostEntries = 10;
const mostBytes = 200_000;

/** The list as it is on disk. It is a convenience: whatever cannot be read is an empty list. */
function readList(context: Context): Recent[] {
  const file = context.support.recentFile;
  try {
    if (file === undefined || statSync(file).size > mostBytes) return [];
    const parsed = z.array(recentSchema).safeParse(JSON.parse(readFileSync(file, "utf8")));
    return parsed.success ? parsed.data : [];
  } catch {
    return [];
  }
}

function writeList(context: Context, list: Recent[]): void {
  const file = context.support.recentFile;
  if (file === undefined) return;
  const part = `${file}.part`;
  try {
    mkdirSync(dirname(file), { recursive: true });
    writeFileSync(part, JSON.stringify(list.slice(0, mostEntries), null, 1));
    takeName(part, file);
  } catch {
    // A list that cannot be kept costs a search, never a study.
    throwAway(part);
  }
}

/** Puts the study that was just opened at the head of the list. */
export function noteOpened(context: Context): void {
  const { open, support } = context;
  if (!open || support.recentFile === undefined) return;
  const { path } = open.file;
  const others = readList(context).filter((one) => one.path !== path);
  writeList(context, [{ path, openedAt: support.now(), ...glanceAt(open.state) }, ...others]);
}

/** Says of the study that is about to be closed how far it has come. */
export function noteClosing(context: Context): void {
  const { open } = context;
  if (!open || context.support.recentFile === undefined) return;
  const { path } = open.file;
  const list = readList(context);
  // Taken off the list while it was open: it stays off.
  if (list.some((one) => one.path === path))
    writeList(
      context,
      list.map((one) => (one.path === path ? { ...one, ...glanceAt(open.state) } : one)),
    );
}

/** The studies opened last, newest first; one whose file is gone says so. */
export function listRecent(context: Context): OutputOf<"recent.list"> {
  return {
    entries: readList(context).map(({ path, standing, ...shown }) => ({
      ...shown,
      standing: typeof standing === "string" ? standing : standingWords(standing),
      ref: refFor(context, path),
      fileName: basename(path),
      lost: existsSync(path) ? null : glanceWords.lost,
    })),
  };
}

/** Takes a study off the list; its file is not touched. */
export function forgetRecent(context: Context, ref: string): OutputOf<"recent.list"> {
  const path = context.refs.get(ref);
  writeList(
    context,
    readList(context).filter((one) => one.path !== path),
  );
  return listRecent(context);
}

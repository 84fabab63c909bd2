import { z } from "zod";
import { commandSchema, kindSchema, simpleSchema } from "./study/commands.ts";
import { toldChangeSchema } from "./study/history.ts";
import {
  byNameSchema,
  idSchema,
  instantSchema,
  labelSchema,
  noteSchema,
  textSchema,
} from "./study/schema/common.ts";
import { libraryRowSchema, librarySearchSchema, sludgeClassSchema } from "./study/library/row.ts";
import { languages } from "./words/language.ts";
import { kinds, type AnyRecord, type StudyState } from "./study/schema/records.ts";

/**
 * The whole study as it crosses the boundary. Storage validates each record by its kind's schema as it is read or
 * written, so here only the outer shape is looked at: a large study is not parsed twice on every opening.
 */
const studyStateSchema = z.custom<StudyState>(
  (value) => typeof value === "object" && value !== null && kinds.every((kind) => kind in value),
);

/** A study in the host's list. `ref` is the host's own token for it; a page never names a path. */
const shelfEntrySchema = z.strictObject({
  ref: z.string().max(200),
  fileName: z.string().max(300),
  folder: z.string().max(1000),
  modifiedAt: instantSchema.nullable(),
  /** null where the file opens; otherwise the sentence that says why it does not */
  trouble: z.string().nullable(),
});

/** A study opened before, as it was when it was last left. */
const recentSchema = z.strictObject({
  ref: z.string().max(200),
  fileName: z.string().max(300),
  name: z.string().max(1000),
  about: z.string().max(1000),
  standing: z.string().max(1000),
  openedAt: instantSchema,
  /** null where the file is there; otherwise the sentence that says it is not */
  lost: z.string().nullable(),
});
const recentListSchema = z.strictObject({ entries: z.array(recentSchema) });

const openedSchema = z.strictObject({
  /** the host's token for this opening: a window gives it with its calls, and another opening refuses them */
  opening: z.string().min(1).max(100),
  fileName: z.string(),
  /** null where edits are accepted; otherwise the sentence that says why the study is only shown */
  readOnlyBecause: z.string().nullable(),
  /** things worth saying once, for example that an older file was backed up and upgraded */
  notices: z.array(z.string()),
  state: studyStateSchema,
  /** the tables too large for this answer, empty in `state`: they are asked for in parts */
  later: z.array(kindSchema),
  seq: z.int().min(0),
  savedAt: instantSchema.nullable(),
  /** the entry that undo or redo would move next, null where there is none */
  undo: toldChangeSchema.nullable(),
  redo: toldChangeSchema.nullable(),
});

const backupsSchema = z.strictObject({
  entries: z.array(
    z.strictObject({
      ref: z.string().max(200),
      at: instantSchema,
      reason: z.enum(["auto", "by-hand", "before-restore", "before-upgrade", "damaged"]),
      bytes: z.int(),
      trouble: z.string().nullable(),
    }),
  ),
});

const acknowledgedSchema = z.strictObject({
  /** the entries now durable on disk, oldest first: usually one */
  changes: z.array(toldChangeSchema),
  seq: z.int().min(0),
  savedAt: instantSchema,
  undo: toldChangeSchema.nullable(),
  redo: toldChangeSchema.nullable(),
});

const draftSchema = z.strictObject({
  /** which cell the text belongs to, in the page's own words, for example "jar j-01 turbidity" */
  place: textSchema.min(1).max(200),
  text: textSchema.max(2000),
  reason: textSchema.max(1000).default(""),
});

/** Records as they stand in the file, which were validated there. */
const recordSchema = z.custom<AnyRecord>((value) => typeof value === "object" && value !== null);

const nothing = z.strictObject({});
const done = z.strictObject({ done: z.literal(true) });
const who = { by: byNameSchema };

/**
 * Every call between the screens and the service, with the schema of what goes in and of what comes out.
 * Both hosts expose exactly this table; what goes in and what comes out is parsed by the dispatcher.
 */
export const contract = {
  "host.about": {
    input: nothing,
    output: z.strictObject({
      host: z.enum(["electron", "loopback"]),
      version: z.string(),
      /** whether the host can show its own file dialogs; otherwise studies live in one folder */
      dialogs: z.boolean(),
      /** whether the host can write a PDF file itself; otherwise the browser's own printing does */
      savesPdf: z.boolean(),
      /** the language a person chose, null until somebody does */
      language: z.enum(languages).nullable(),
    }),
  },
  /** has the host's own sentences in the language that the window speaks; kept for the next start where a person chose it */
  "host.speak": {
    input: z.strictObject({ language: z.enum(languages), chosen: z.boolean() }),
    output: done,
  },
  "shelf.list": {
    input: nothing,
    output: z.strictObject({ folder: z.string(), entries: z.array(shelfEntrySchema) }),
  },
  /** the studies opened last on this machine, newest first */
  "recent.list": { input: nothing, output: recentListSchema },
  /** takes one off that list; the file is not touched */
  "recent.forget": { input: z.strictObject({ ref: z.string().max(200) }), output: recentListSchema },
  "study.create": { input: z.strictObject({ name: labelSchema, ...who }), output: openedSchema.nullable() },
  "study.createDemo": { input: nothing, output: openedSchema.nullable() },
  "study.open": { input: z.strictObject({ ref: z.string().max(200) }), output: openedSchema },
  /** shows the host's open dialog; null when it was cancelled; refused by a host without dialogs */
  "study.choose": { input: nothing, output: openedSchema.nullable() },
  "study.saveAs": { input: z.strictObject({ name: labelSchema }), output: openedSchema.nullable() },
  /** the study that is open already, or null: after a reload the page picks up where it was */
  "study.current": { input: nothing, output: openedSchema.nullable() },
  /** a large table in parts, as it stands at this entry of the history; "stale" where another came since */
  "study.records": {
    input: z.strictObject({ kind: kindSchema, seq: z.int().min(0), from: z.int().min(0) }),
    output: z.strictObject({ records: z.array(recordSchema), more: z.boolean() }),
  },
  "study.close": { input: nothing, output: done },
  "study.apply": {
    input: z.strictObject({
      command: commandSchema,
      /** the sequence number the page had seen; an older one is refused so that nothing is overwritten unseen */
      afterSeq: z.int().min(0),
      why: noteSchema.default(""),
      /** true where the page knows what it sent: the answer then does not hold it a second time */
      brief: z.boolean().default(false),
      ...who,
    }),
    output: acknowledgedSchema,
  },
  "study.undo": { input: z.strictObject(who), output: acknowledgedSchema },
  "study.redo": { input: z.strictObject(who), output: acknowledgedSchema },
  "study.history": {
    input: z.strictObject({
      beforeSeq: z.int().min(1).nullable(),
      limit: z.int().min(1).max(500),
    }),
    output: z.strictObject({ changes: z.array(toldChangeSchema) }),
  },
  /** entries made by another window since; empty when none */
  "study.since": {
    input: z.strictObject({ afterSeq: z.int().min(0) }),
    output: acknowledgedSchema.omit({ savedAt: true }),
  },
  /** the parts of an entry that was told in short */
  "study.changeParts": {
    input: z.strictObject({ seq: z.int().min(1), from: z.int().min(0) }),
    output: z.strictObject({ commands: z.array(simpleSchema), more: z.boolean() }),
  },
  /** entries that touched one record, newest first */
  "study.historyOf": {
    input: z.strictObject({
      kind: kindSchema,
      id: idSchema,
      limit: z.int().min(1).max(200),
    }),
    output: z.strictObject({ changes: z.array(toldChangeSchema) }),
  },
  "backup.list": { input: nothing, output: backupsSchema },
  "backup.make": { input: nothing, output: backupsSchema },
  /** puts a backup in the open study's place; what was there is backed up first, so that this too can be taken back */
  "backup.restore": { input: z.strictObject({ ref: z.string().max(200) }), output: openedSchema },
  /** the same for a study of the shelf that does not open */
  "shelf.backups": { input: z.strictObject({ ref: z.string().max(200) }), output: backupsSchema },
  "shelf.restore": {
    input: z.strictObject({ ref: z.string().max(200), backup: z.string().max(200) }),
    output: openedSchema,
  },
  /** writes whatever a damaged study still holds into a new one beside it, and opens that */
  "shelf.salvage": {
    input: z.strictObject({ ref: z.string().max(200) }),
    output: z.strictObject({
      opened: openedSchema,
      fromRecords: z.int(),
      fromHistory: z.int(),
      dropped: z.int(),
    }),
  },
  /** where the history stands, its chain of hashes checked: what ties a paper to the file */
  "study.anchor": {
    input: nothing,
    output: z.strictObject({
      changes: z.int().min(0),
      head: z.string().regex(/^[0-9a-f]{64}$/),
      whole: z.boolean(),
    }),
  },
  /** prints what this window shows into a PDF file that the host's own dialog names; refused by a host that cannot */
  "paper.savePdf": {
    input: z.strictObject({ name: z.string().trim().min(1).max(300), paperSize: z.enum(["A4", "Letter"]) }),
    output: z.strictObject({ saved: z.boolean() }),
  },
  /** brings the index of the folder's studies up to date, a slice a call: between two calls others are answered */
  "library.refresh": {
    input: z.strictObject({ step: z.enum(["start", "go-on", "stop"]) }),
    output: z.strictObject({
      state: z.enum(["running", "done", "stopped"]),
      /** studies up to date, of how many there are */
      done: z.int().min(0),
      total: z.int().min(0),
      /** studies that had to be read when this began: new ones and those changed since */
      toRead: z.int().min(0),
      /** true where the folder cannot keep the index, so that the next start reads all studies again */
      notKept: z.boolean(),
    }),
  },
  "library.search": {
    input: librarySearchSchema,
    output: z.strictObject({
      folder: z.string(),
      /** studies that could be read */
      studies: z.int().min(0),
      /** how many series answer the search; `rows` holds the first of them */
      found: z.int().min(0),
      rows: z.array(libraryRowSchema),
      /** files that could not be read, each with its sentence */
      broken: z.array(
        z.strictObject({ ref: z.string(), fileName: z.string().max(1000), sentence: z.string() }),
      ),
      products: z.array(z.string()),
      sludgeClasses: z.array(sludgeClassSchema),
    }),
  },
  "draft.list": { input: nothing, output: z.strictObject({ drafts: z.array(draftSchema) }) },
  "draft.keep": { input: draftSchema, output: done },
  "draft.drop": { input: z.strictObject({ place: textSchema.min(1).max(200) }), output: done },
} as const satisfies Record<string, { input: z.ZodType; output: z.ZodType }>;

export type Contract = typeof contract;
export type CallName = keyof Contract;
export type InputOf<N extends CallName> = z.input<Contract[N]["input"]>;
export type OutputOf<N extends CallName> = z.output<Contract[N]["output"]>;
export type Opened = z.output<typeof openedSchema>;
export type Acknowledged = z.output<typeof acknowledgedSchema>;

/** What every call answers: the value, or a code with one sentence for the person at the screen. */
export type Answer<T> =
  | { ok: true; value: T }
  | {
      ok: false;
      code: "bad-input" | "refused" | "stale" | "read-only" | "no-study" | "failed";
      message: string;
    };

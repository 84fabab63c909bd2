import { existsSync } from "node:fs";
import { join } from "node:path";
import type { Answer, Opened } from "../src/contract.ts";
import type { Outcome } from "../src/outcome.ts";
import { demoCommands } from "../src/study/demo.ts";
import { librarySearchSchema } from "../src/study/library/row.ts";
import type { Change, ToldChange } from "../src/study/history.ts";
import { extension } from "./storage/format.ts";
import {
  ok,
  refused,
  type Context,
  type Handlers,
  type HostSupport,
  type OpenStudy,
} from "./service/context.ts";
import {
  backUpByHand,
  backupsOfOpen,
  backupsOfShelf,
  restoreOnShelf,
  restoreOpen,
  salvageOnShelf,
} from "./service/backing-up.ts";
import { applyEdit, moveOnLine } from "./service/editing.ts";
import { closeOpen, openedOf, openPath, writeNewStudy } from "./service/opening.ts";
import { anchorOf } from "./service/standalone.ts";
import { recordsFrom } from "./service/in-parts.ts";
import { nextMoves } from "./service/next-moves.ts";
import { refreshLibrary, searchLibrary } from "./service/library.ts";
import { chosenLanguage, speakIn, usualMark } from "./service/speaking.ts";
import { forgetRecent, listRecent } from "./service/recent.ts";
import { listShelf, pathForName, refFor, studyOfRef } from "./service/shelf.ts";
import { changeParts, partsToFollow, partsToRead, toldChange } from "./service/told-change.ts";
import { demoWords } from "../src/words/demo.ts";
import { serviceWords } from "../src/words/service.ts";

export { inTurn, type Context, type HostSupport } from "./service/context.ts";
export { speakFirst } from "./service/speaking.ts";

/** The demo made in another language is another file. */
const demoFileName = () => `${demoWords.fileName}${extension}`;

function answerOpened(outcome: Outcome<OpenStudy>): Answer<Opened> {
  return outcome.ok ? ok(openedOf(outcome.value)) : refused(outcome.message);
}

async function newPath(context: Context, name: string): Promise<Outcome<string> | null> {
  const { dialogs } = context.support;
  if (!dialogs) return pathForName(context, name);
  const chosen = await dialogs.chooseSave(name);
  return chosen === null
    ? null
    : { ok: true, value: chosen.endsWith(extension) ? chosen : `${chosen}${extension}` };
}

/** Entries of the history, or the words for one among them that cannot be read. */
function entries(read: () => Change[]): Answer<{ changes: ToldChange[] }> {
  try {
    return ok({ changes: read().map((change) => toldChange(change, partsToRead)) });
  } catch {
    return refused(serviceWords.historyPart);
  }
}

/** One handler a call of the contract. Hosts reach storage only through here. */
export const handlers: Handlers = {
  "host.about": (context) => {
    const { support } = context;
    return ok({
      host: support.host,
      version: support.version,
      dialogs: support.dialogs !== null,
      savesPdf: support.savePdf !== undefined,
      language: chosenLanguage(context),
    });
  },
  "host.speak": async (context, { language, chosen }) => {
    await speakIn(context, language, chosen);
    return ok({ done: true });
  },
  "shelf.list": (context) => ok({ folder: context.support.folder, entries: listShelf(context) }),
  "recent.list": (context) => ok(listRecent(context)),
  "recent.forget": (context, { ref }) => ok(forgetRecent(context, ref)),
  "study.create": async (context, { name, by }) => {
    const path = await newPath(context, name);
    if (path === null) return ok(null);
    if (!path.ok) return refused(path.message);
    const written = writeNewStudy(
      path.value,
      [{ do: "add", kind: "study", record: { id: "study", name, decimalMark: usualMark() } }],
      by,
      context.support.now(),
    );
    if (!written.ok) return refused(written.message);
    return answerOpened(openPath(context, path.value));
  },
  "study.createDemo": (context) => {
    const path = join(context.support.folder, demoFileName());
    if (!existsSync(path)) {
      const folder = pathForName(context, "demo");
      if (!folder.ok) return refused(folder.message);
      const now = context.support.now();
      const written = writeNewStudy(path, demoCommands(now, usualMark()), "", now);
      if (!written.ok) return refused(written.message);
    }
    return answerOpened(openPath(context, path));
  },
  "study.open": (context, { ref }) => {
    const path = studyOfRef(context, ref);
    if (path === null) return refused(serviceWords.notInList);
    return answerOpened(openPath(context, path));
  },
  "study.choose": async (context) => {
    const { dialogs } = context.support;
    if (!dialogs) return refused(serviceWords.noDialog);
    const chosen = await dialogs.chooseOpen();
    return chosen === null ? ok(null) : answerOpened(openPath(context, chosen));
  },
  "study.saveAs": async (context, { name }) => {
    if (!context.open) return refused(serviceWords.noStudy, "no-study");
    const path = await newPath(context, name);
    if (path === null) return ok(null);
    if (!path.ok) return refused(path.message);
    const copied = await context.open.file.copyTo(path.value, context.support.now());
    if (!copied.ok) return refused(copied.message);
    refFor(context, path.value);
    return answerOpened(openPath(context, path.value));
  },
  "study.current": ({ open }) => ok(open ? openedOf(open) : null),
  "study.records": ({ open }, { kind, seq, from }) => {
    if (!open) return refused(serviceWords.noStudy, "no-study");
    return open.seq === seq ? ok(recordsFrom(open.state, kind, from)) : refused(serviceWords.stale, "stale");
  },
  "study.close": (context) => {
    closeOpen(context);
    return ok({ done: true });
  },
  "study.apply": (context, input) => applyEdit(context, input),
  "study.undo": (context, { by }) => moveOnLine(context, "undo", by),
  "study.redo": (context, { by }) => moveOnLine(context, "redo", by),
  "study.history": ({ open }, { beforeSeq, limit }) =>
    open ? entries(() => open.file.history(beforeSeq, limit)) : refused(serviceWords.noStudy, "no-study"),
  "study.since": ({ open }, { afterSeq }) =>
    open
      ? ok({
          changes:
            afterSeq >= open.seq
              ? []
              : open.file.since(afterSeq).map((change) => toldChange(change, partsToFollow)),
          seq: open.seq,
          ...nextMoves(open),
        })
      : refused(serviceWords.noStudy, "no-study"),
  "study.changeParts": ({ open }, { seq, from }) =>
    open ? changeParts(open, seq, from) : refused(serviceWords.noStudy, "no-study"),
  "study.historyOf": ({ open }, { kind, id, limit }) =>
    open ? entries(() => open.file.historyOf(kind, id, limit)) : refused(serviceWords.noStudy, "no-study"),
  "backup.list": (context) => backupsOfOpen(context),
  "backup.make": (context) => backUpByHand(context),
  "backup.restore": (context, { ref }) => restoreOpen(context, ref),
  "shelf.backups": (context, { ref }) => backupsOfShelf(context, ref),
  "shelf.restore": (context, { ref, backup }) => restoreOnShelf(context, ref, backup),
  "shelf.salvage": (context, { ref }) => salvageOnShelf(context, ref),
  "study.anchor": ({ open }) => (open ? ok(anchorOf(open.file)) : refused(serviceWords.noStudy, "no-study")),
  "paper.savePdf": async ({ support }, { name, paperSize }) => {
    if (!support.savePdf) return refused(serviceWords.noPdf);
    try {
      return ok({ saved: await support.savePdf(name, paperSize) });
    } catch {
      return refused(serviceWords.pdfNotWritten);
    }
  },
  "library.refresh": (context, { step }) => {
    const refreshed = refreshLibrary(context, step);
    return refreshed.ok ? ok(refreshed.value) : refused(refreshed.message);
  },
  "library.search": (context, search) => ok(searchLibrary(context, librarySearchSchema.parse(search))),
  "draft.list": ({ open }) => ok({ drafts: open?.file.drafts() ?? [] }),
  "draft.keep": (context, { place, text, reason }) => {
    if (!context.open) return refused(serviceWords.noStudy, "no-study");
    const kept = context.open.file.keepDraft({ place, text, reason: reason ?? "" }, context.support.now());
    return kept.ok ? ok({ done: true }) : refused(kept.message);
  },
  "draft.drop": (context, { place }) => {
    if (!context.open) return refused(serviceWords.noStudy, "no-study");
    const dropped = context.open.file.dropDraft(place);
    return dropped.ok ? ok({ done: true }) : refused(dropped.message);
  },
};

/** A service without a study open. */
export function createContext(support: HostSupport): Context {
  return { support, open: null, refs: new Map(), library: null, last: Promise.resolve() };
}

/** Opens a study by path at the host's own wish (a command line, a double click): never at a page's. */
export function openAtStart(context: Context, path: string): Answer<Opened> {
  return answerOpened(openPath(context, path));
}

/** Opens the invented demo at the first start, writing it where it is not there yet. */
export async function openDemoAtStart(context: Context): Promise<Answer<Opened | null>> {
  return handlers["study.createDemo"](context, {});
}

/** Closes the open study and gives its lock back. */
export function closeContext(context: Context): void {
  closeOpen(context);
}

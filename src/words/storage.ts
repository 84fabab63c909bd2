import { area } from "./language.ts";

/** What is said of study files, their locks and their backups. */
export const storageWords = area("storage", {
  folder: "This is a folder, not a study file.",
  notPlain: "This is not a plain file. It is left as it is.",
  empty: "This file is empty. It is left as it is.",
  notAStudy: "This is not a Flocwright study. It is left as it is.",
  cutShort: "This study file is cut short. It is left as it is: open a backup or another copy.",
  otherJournal:
    "This study was set to another way of writing by another program. It is left as it is: set its journal mode back to DELETE there, or open a backup.",
  otherDatabase: "This is a database of another program. It is left as it is.",
  newer: (version: number, known: number) =>
    `This study was written by a newer Flocwright (format ${version}, this one reads up to ${known}). It is left as it is: update first.`,
  neverFinished: "This study file was never finished. It is left as it is.",
  damaged: "This study file is damaged. It is left as it is: open a backup or another copy.",
  strange: (part: string) =>
    `This file holds something that is not part of a study (${part}). It is left as it is.`,
  noPart: (part: string) => `no ${part}`,
  beingSaved: "This study is being saved, or was left in the middle of a save: open it, then look again.",
  nameTaken: "There is already a file of this name. It is left as it is.",
  /** a sentence that goes on after a colon */
  within: (sentence: string) => `${sentence.charAt(0).toLowerCase()}${sentence.slice(1)}`,
  disk: {
    noFile: "There is no such file.",
    notAllowed: "This file or folder may not be used by you.",
    nameTooLong: "This name is too long for the disk.",
    readOnlyFolder: "This folder is read-only.",
    full: "The disk is full. Nothing of this change was saved: free some space, then try again.",
    notWritable: "The file or its folder cannot be written to.",
    held: "Another program holds the file. Nothing of this change was saved: close it there, then try again.",
    unreachable:
      "The disk could not be read or written. Nothing of this change was saved: see that it is connected, then try again.",
    damaged: "The file is damaged. It is left as it is: open a backup or another copy.",
    unusable: "The file could not be used.",
  },
  content: {
    badRecord: "This study holds a record that cannot be read. It is left as it is.",
    unknownKind: (kind: string) =>
      `This study holds a kind of record this Flocwright does not know (${kind}).`,
    wrongKind: (kind: string) =>
      `This study holds a ${kind} record that does not fit its kind. It is left as it is.`,
    lostReference: (from: string, to: string) =>
      `This study holds a ${from} that names a ${to} which is not in it. It is left as it is: open a backup, or save what can be read.`,
    badHistory:
      "The history in this file cannot be read. It is left as it is: open a backup or another copy.",
    nothingReadable: "Nothing in this file can be read any more. It is left as it is.",
  },
  open: {
    onlyLookedAt: "This study is only looked at here.",
    readOnly: (fault: string) => `This study is shown to read only: ${fault}`,
    elsewhere: (machine: string, since: string) =>
      `This study is open on the machine ${machine} since ${since}. It is shown here to read only. If nobody works there any more, remove the file ending in .lock beside the study.`,
    here: "This study is already open in another Flocwright on this machine. It is shown here to read only.",
    keepsTaking: "Another Flocwright keeps taking this study. It is shown here to read only.",
    notClosed:
      "The last session with this study ended without closing it. Everything that had been saved is here.",
    notUpgraded: (fault: string) => `This study is of an older format and was not upgraded. ${fault}`,
    upgraded: (from: number, to: number) =>
      `This study was written by an older Flocwright (format ${from}). It was upgraded to format ${to}; a copy from before is among its backups.`,
    vanished: (name: string) =>
      `The file ${name} was moved, deleted or replaced while it was open. Nothing of this change was saved: use Save as, or put the file back.`,
    changedUnder: (name: string) =>
      `The file ${name} was changed by another program while it was open. Nothing of this change was saved: close the study and open it again.`,
  },
  copy: {
    strange: "The copy holds something that is not part of a study.",
    damaged: "The copy came out damaged.",
    lacksChanges: "The copy lacks the last changes.",
    busy: "Another Flocwright is making a copy of this name: take another.",
    thrownAway: "The copy came out damaged and was thrown away; the study itself is as it was.",
    backupThrownAway: (fault: string) =>
      `${fault} The backup was thrown away; the study itself is as it was.`,
    noBackup: (fault: string) => `The backup could not be made: ${fault}`,
    noCopy: (fault: string) => `No copy could be kept: ${fault}`,
    cannotRestore: (fault: string) => `This backup cannot be restored: ${fault}`,
    studyAsItWas: (fault: string) => `${fault} The study is as it was.`,
    notRestored: (fault: string) => `The backup could not be restored: ${fault}`,
  },
});

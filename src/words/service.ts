import { area } from "./language.ts";

/** What the service answers where it refuses a call, and the names it gives. */
export const serviceWords = area("service", {
  noStudy: "No study is open.",
  notInList: "This study is no longer in the list: look again.",
  noDialog: "This window has no file dialog: put the study into the folder of studies.",
  historyPart:
    "Part of the history in this file cannot be read; what the study holds now is not touched by that.",
  badHistory: "The history in this file cannot be read. It is left as it is.",
  noPdf: "This window cannot write a PDF itself: print, and choose PDF as the printer.",
  pdfNotWritten: "The PDF could not be written there: choose another place.",
  noSuchCall: "There is no such call.",
  otherStudy:
    "Another window opened another study, or closed this one. What stands here is only shown: load this window anew to go on.",
  badAnswer: "Flocwright answered something it should not have; nothing was changed by that.",
  failed: "Something in Flocwright itself failed. What was saved before is safe.",
  stale: "Another window has changed the study since: look again before this edit.",
  stepGone: "This step is no longer in the history.",
  approvalStays:
    "The last step approved or withdrew a dose or a table of settings, and that is not undone: withdraw it with a reason, or approve anew.",
  stepOfAnother: (name: string) => `The last step was made by ${name}: only they undo it.`,
  noFolder: (fault: string) => `The folder for studies cannot be made: ${fault}`,
  tooManyOfName: "There are too many studies of this name: give it another.",
  studyNamed: (name: string) => `study ${name}`,
  backupGone: "This backup is no longer there: look again.",
  nothingRestored: (fault: string) => `Nothing was restored. ${fault}`,
  whatCouldBeRead: (name: string) => `what could be read of ${name}`,
  savedNotWritten: (fault: string) => `What was read could not be written: ${fault}`,
  savedCopy: (name: string, number: string) => `${name} (saved${number})`,
  tooManySaved: "There are too many saved copies beside this study: move some away.",
  recordsApart: "The records of this study do not fit together, so its results cannot be worked out.",
});

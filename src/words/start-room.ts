import { area } from "./language.ts";

/** The start: a new study, the invented demo, what was opened last, the folder, and a study that will not open. */
export const startRoomWords = area("startRoom", {
  what: "From a row of jars to pump settings, with how sure that is.",
  newStudy: "New study",
  newStudyWhat:
    "One study holds one sludge stream: its samples, jars, decision and pump settings. A guide leads from the first dish to the first dose; it can be hidden at any moment.",
  name: "Name of the study",
  begin: "Start a new study",
  nameFirst: "Give the new study a name first, for example the plant and the line.",
  lookAround: "Look around first",
  lookAroundWhat:
    "A complete study in which every number is invented, to look around in: dishes, jars, curves, an approved dose, pump settings and plant runs.",
  openDemo: "Open the invented demo",
  inFolder: "All studies in the folder",
  compare: "Search and compare studies",
  folderEmpty: "No study here yet. Start a new one above, or put a study's file into this folder.",
  openOther: "Open another file…",
  recent: {
    title: "Opened last",
    lost: (why: string, fileName: string) => `${why} It was called ${fileName}.`,
    opened: (when: string) => `opened ${when}`,
    takeOff: "Take off the list",
    takeOffNamed: (study: string) => `Take ${study} off the list`,
    isOff: (study: string) => `${study} is off the list. Its file is untouched.`,
  },
  broken: {
    whatToDo: (fileName: string) => `What can be done about ${fileName}`,
    looking: "Looking for backups…",
    noBackup: "There is no backup of this study.",
    putBackup: "Put a backup in its place (the file as it is now is set aside, not lost):",
    salvage: "Save what can still be read as a new study",
    salvaged: (fromRecords: number, fromHistory: number, dropped: number) =>
      `Read from the damaged file: ${fromRecords} records as they stood, ${fromHistory} from the history alone; ${dropped} could not be used. The damaged file itself is as it was.`,
  },
});

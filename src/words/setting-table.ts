import { area } from "./language.ts";

/** What an approved table of settings rests on, and why it does not survive a change of it. */
export const settingTableWords = area("settingTable", {
  ofPolymer: (letter: string, what: string) => `polymer ${letter}, ${what}`,
  names: {
    dose: "dose",
    lot: "lot",
    active: "active share",
    density: "density, neat",
    strength: "solution strength",
    "solution density": "density of the solution",
    pump: "pump",
    unit: "unit of the setting",
    range: "range of the panel",
    draws: "calibration",
  },
  whys: {
    dose: "every setting goes with the dose",
    lot: "another lot may be thicker or thinner, and the pump then slips by another amount",
    active: "the same flow now brings another amount of active polymer",
    density: "the same volume now weighs another amount",
    "solution density": "the same volume now weighs another amount",
    strength: "the same flow of solution now brings another amount of active polymer",
    pump: "each pump has its own line",
    draws: "settings are read off the line through these draw-downs",
    range: "settings are refused outside what the panel can do",
    unit: "the panel's number means something else",
  },
  restsOnIt: "the settings rest on it",
  changed: (what: string, before: string, now: string, why: string) =>
    `${what} was ${before} and is now ${now}: ${why}`,
  calibrationChanged: (what: string, why: string) => `${what} has been changed: ${why}`,
  nothing: "nothing",
  range: (low: string, high: string) => `${low} to ${high}`,
  open: "open",
  /** what a pump moves and how its draw-downs are measured, as they stand in an approval */
  codes: { neat: "neat", solution: "solution", ml: "ml", g: "g" },
  states: { none: "not approved", approved: "approved", stale: "out of date" },
});

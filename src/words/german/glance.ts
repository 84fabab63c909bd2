import type { glanceWords } from "../glance.ts";
import { counted } from "../language.ts";

export const glance: typeof glanceWords = {
  jarsInSeries: (jars, series) => `${jars} Becher in ${counted(series, "Reihe", "Reihen")}`,
  sampleOnly: "Probe eingetragen, noch keine Becher",
  nothing: "noch nichts eingetragen",
  approved: (done, name) => `${done}; Dosis freigegeben von ${name}`,
  lost: "Diese Datei ist nicht mehr da: Sie wurde verschoben, umbenannt oder gelöscht, oder ihr Laufwerk ist nicht verbunden.",
  notApproved: (done) => `${done}, noch keine Dosis freigegeben`,
};

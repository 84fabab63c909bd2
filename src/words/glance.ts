import { area, counted } from "./language.ts";

/** A study at a glance in a list: how far it has come, or that its file is gone. */
export const glanceWords = area("glance", {
  jarsInSeries: (jars: number, series: number) =>
    `${counted(jars, "jar", "jars")} in ${counted(series, "series", "series")}`,
  sampleOnly: "sample taken down, no jars yet",
  nothing: "nothing entered yet",
  approved: (done: string, name: string) => `${done}; dose approved by ${name}`,
  lost: "This file is not there any more: it was moved, renamed or deleted, or its drive is not connected.",
  notApproved: (done: string) => `${done}, no dose approved yet`,
});

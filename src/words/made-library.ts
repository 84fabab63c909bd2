import { area } from "./language.ts";

/** How the columns of the studies compared were made. */
export const madeLibraryWords = area("madeLibrary", {
  fitted:
    "mean of the study's own fitted curve (surface, with two polymers) at its approved dose; in brackets the one-sided 95 % bounds of that mean",
  cost: "dose x price / active share + capture / cake TS x disposal + (1 - capture) x return, at the approved dose with the study's own prices; parts without a price are left out",
  at: (dose: string, unit: string) => `at ${dose} ${unit}`,
  parts: (polymer: string, disposal: string, back: string) =>
    `polymer ${polymer} + disposal ${disposal} + return ${back}`,
  title: (column: string) => `${column} of the studies`,
});

import type { ResponseFileWords } from "../file-cells.ts";

export const responseFiles: ResponseFileWords = {
  disagrees: (stated, made) =>
    `die Datei sagt ${stated}, die Werte daneben ergeben aber ${made}: eines davon berichtigen oder diese Spalte weglassen.`,
  needed: (what) => `ist leer, wird aber gebraucht für: ${what}.`,
};

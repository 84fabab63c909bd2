import type { CaptureWords } from "../capture.ts";

export const responseCapture: CaptureWords = {
  label: "Abscheidegrad",
  head: "Abscheidegrad wie abgelesen, %",
  onScreen: (pct) => `Abscheidegrad ${pct} %`,
  slot: "Abscheidegrad",
  field: "Abscheidegrad, %",
};

import type { FlocGradeWords, flocWords } from "../floc-grade.ts";

export const responseFlocGrade: FlocGradeWords = {
  label: "Flockennote",
  column: "Flocke",
  unit: "1 bis 5",
  ask: "Die Flocke ansehen",
  standard: "unsere eigenen Worte, keine Norm",
  slot: "Flockennote",
  head: "Flo\u00adcke, 1 bis 5",
  onScreen: (grade, look) => `Flocke ${grade}: ${look}`,
  field: "Flockennote, 1 bis 5",
};

export const responseFlocLooks: typeof flocWords = {
  1: "keine Flocke, trüb",
  2: "stecknadelkopfgroße Flocke, noch trüb",
  3: "kleine Flocke, Wasser leicht trüb",
  4: "klares Wasser zwischen fester Flocke",
  5: "große feste Flocke, sofort klar",
};

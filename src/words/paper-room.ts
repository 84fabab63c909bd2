import { area } from "./language.ts";

/** What stands around a paper on the screen: its tools, and how far its making is. */
export const paperRoomWords = area("paperRoom", {
  paper: "Paper",
  sizes: { A4: "A4", Letter: "Letter" },
  savePdf: "Save as PDF",
  saveHtml: "Save as HTML",
  print: "Print",
  pdfSaved: "The PDF is saved.",
  backToPlant: "Back to the plant",
  forFeed: "For feed",
  feedOf: (label: string, size: string) => `${label} (${size})`,
  noSheet: "The setting sheet comes last",
  noSheetWhy:
    "It puts the pump settings of one series on a page for the panel: with an approved dose, the feed and a pump that was drawn down.",
  noReport: "The report has nothing to tell yet",
  noReportWhy:
    "It tells the whole trial with its inputs, from the sample to the pump settings, and fills as they are entered.",
  fittingOne: "Making the report: its curves are being fitted.",
  fitting: (number: number, total: number) =>
    `Making the report: series ${number} of ${total} is being fitted.`,
  cancelled: "The report was cancelled. Nothing was changed.",
  make: "Make the report",
  failed: "The report could not be made.",
});

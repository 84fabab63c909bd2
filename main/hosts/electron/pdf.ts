import { writeFile } from "node:fs/promises";
import { dialog, type BrowserWindow } from "electron";

/** 10 mm, as the papers' own page rule has it */
const marginInch = 10 / 25.4;
const margins = { top: marginInch, bottom: marginInch, left: marginInch, right: marginInch };

/** Prints what a window shows, under its print style, into the PDF file that somebody names; false where nobody does. */
export async function savePdf(
  window: BrowserWindow,
  suggestedName: string,
  pageSize: "A4" | "Letter",
): Promise<boolean> {
  const defaultPath = `${suggestedName.replace(/[\\/:*?"<>|\p{Cc}]/gu, " ").trim()}.pdf`;
  const chosen = await dialog.showSaveDialog(window, {
    filters: [{ name: "PDF", extensions: ["pdf"] }],
    defaultPath,
  });
  if (!chosen.filePath) return false;
  await writeFile(
    chosen.filePath,
    await window.webContents.printToPDF({ pageSize, margins, printBackground: true }),
  );
  return true;
}

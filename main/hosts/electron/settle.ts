import { ipcMain, type BrowserWindow } from "electron";
import { settleChannel, settledChannel } from "./names.ts";
import { isOwnPage } from "./sender.ts";

/** How long a page may take to write what is under way before the window closes without its answer, in ms. */
const settleBoundMs = 5000;

/**
 * Asks the page to write its drafts and edits. "saved": all is on disk; "unsaved": the page has something it cannot
 * write; "silent": no answer within the bound (a hung or crashed page; what was acknowledged is on disk anyway).
 */
export function settlePage(
  window: BrowserWindow,
  boundMs = settleBoundMs,
): Promise<"saved" | "unsaved" | "silent"> {
  return new Promise((resolve) => {
    const listen = (event: Electron.IpcMainEvent, saved: unknown) => {
      if (isOwnPage(event, window.webContents)) finish(saved === true ? "saved" : "unsaved");
    };
    const late = setTimeout(() => finish("silent"), boundMs);
    const finish = (how: "saved" | "unsaved" | "silent") => {
      clearTimeout(late);
      ipcMain.removeListener(settledChannel, listen);
      resolve(how);
    };
    ipcMain.on(settledChannel, listen);
    // A page that is not there, or not there yet, holds nothing that was typed.
    if (window.webContents.isCrashed() || window.webContents.isLoadingMainFrame()) finish("silent");
    else window.webContents.send(settleChannel);
  });
}

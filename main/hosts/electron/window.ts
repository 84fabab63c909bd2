import { BrowserWindow, dialog } from "electron";
import { home } from "./names.ts";
import { settlePage } from "./settle.ts";
import { hostWords } from "../../../src/words/hosts.ts";

const crashWindowMs = 60_000;
const crashesInARow = 3;

/** Makes the one window: isolated, sandboxed, without node, shown once it has something to show. */
export function openWindow(preload: string, packaged: boolean): BrowserWindow {
  const window = new BrowserWindow({
    width: 1280,
    height: 800,
    minWidth: 960,
    minHeight: 640,
    show: false,
    autoHideMenuBar: true,
    webPreferences: {
      preload,
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      nodeIntegrationInWorker: false,
      nodeIntegrationInSubFrames: false,
      webSecurity: true,
      allowRunningInsecureContent: false,
      webviewTag: false,
      navigateOnDragDrop: false,
      spellcheck: false,
      devTools: !packaged,
    },
  });
  window.once("ready-to-show", () => window.show());
  recoverFromCrashes(window);
  closeWhenSaved(window);
  return window;
}

/** Shows the screens. A load that another one overtakes is no fault. */
export function loadHome(window: BrowserWindow): Promise<void> {
  return window.loadURL(home).catch(() => undefined);
}

/** Loads a crashed page anew: everything acknowledged is on disk, and the page picks up where it was. */
function recoverFromCrashes(window: BrowserWindow): void {
  let crashes: number[] = [];
  window.webContents.on("render-process-gone", (_event, details) => {
    if (details.reason === "clean-exit") return;
    const now = Date.now();
    crashes = [...crashes.filter((at) => now - at < crashWindowMs), now];
    if (crashes.length < crashesInARow) void loadHome(window);
    else void askAfterCrashes(window).then((again) => (again ? (crashes = []) : null));
  });
}

async function askAfterCrashes(window: BrowserWindow): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: "warning",
    message: hostWords.crashed,
    detail: hostWords.savedIsThere,
    buttons: [hostWords.loadAgain, hostWords.close],
    cancelId: 1,
  });
  if (response !== 0) {
    window.destroy();
    return false;
  }
  void loadHome(window);
  return true;
}

/** Holds a closing window until its page has written what was under way, within a bound. */
function closeWhenSaved(window: BrowserWindow): void {
  let asked = false;
  window.on("close", (event) => {
    event.preventDefault();
    if (asked) return;
    asked = true;
    void settlePage(window).then(async (how) => {
      if (how !== "unsaved" || (await closeUnsaved(window))) window.destroy();
      else asked = false;
    });
  });
}

async function closeUnsaved(window: BrowserWindow): Promise<boolean> {
  const { response } = await dialog.showMessageBox(window, {
    type: "warning",
    message: hostWords.unsaved,
    detail: hostWords.unsavedLost,
    buttons: [hostWords.stay, hostWords.closeUnsaved],
    defaultId: 0,
    cancelId: 0,
  });
  return response === 1;
}

import { homedir } from "node:os";
import { join } from "node:path";
import { app, dialog, ipcMain, protocol, session, type BrowserWindow } from "electron";
// By name, so that the build takes in the version and not what stands beside it.
import { version } from "../../../package.json";
import { createDispatcher } from "../../dispatch.ts";
import { recentFileName } from "../../service/recent.ts";
import { closeContext, createContext, inTurn, openAtStart, speakFirst } from "../../service.ts";
import { loadPages } from "../loopback/pages.ts";
import { guardContents, guardSession } from "./guards.ts";
import { setMenu } from "./menu.ts";
import { appScheme, callChannel } from "./names.ts";
import { pageHandler } from "./pages.ts";
import { savePdf } from "./pdf.ts";
import { isOwnPage } from "./sender.ts";
import { settlePage } from "./settle.ts";
import { studyArgument } from "./study-argument.ts";
import { loadHome, openWindow } from "./window.ts";
import { hostWords } from "../../../src/words/hosts.ts";

const filters = () => [{ name: hostWords.study, extensions: ["flocwright"] }];
const here = import.meta.dirname;

protocol.registerSchemesAsPrivileged([
  { scheme: appScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);

let window: BrowserWindow | null = null;
/** a study the system asked for before there was a window */
let asked = studyArgument(process.argv, process.cwd());

const folder = process.env["FLOCWRIGHT_FOLDER"] ?? join(homedir(), "Flocwright");
const context = createContext({
  host: "electron",
  version,
  now: () => new Date().toISOString(),
  folder,
  recentFile: join(folder, recentFileName),
  dialogs: {
    chooseOpen: async () => {
      const chosen = await dialog.showOpenDialog({ filters: filters(), properties: ["openFile"] });
      return chosen.filePaths[0] ?? null;
    },
    chooseSave: async (name) => {
      const chosen = await dialog.showSaveDialog({ filters: filters(), defaultPath: `${name}.flocwright` });
      return chosen.filePath ?? null;
    },
  },
  savePdf: (name, pageSize) => (window ? savePdf(window, name, pageSize) : Promise.resolve(false)),
});
const dispatch = createDispatcher(context);

/** Opens a study that the system named; the page that is shown first writes what it has under way. */
async function openNamed(path: string): Promise<void> {
  if (window) {
    const how = await settlePage(window);
    if (how === "unsaved") {
      dialog.showErrorBox(hostWords.otherNotOpened, hostWords.unsavedHere);
      return;
    }
  }
  const shown = window;
  const opened = await inTurn(context, () => openAtStart(context, path));
  if (!opened.ok) dialog.showErrorBox(hostWords.notOpened, opened.message);
  // The window that comes with the start loads its screens itself.
  else if (shown && window) await loadHome(window);
}

/** Answers a page's call; the menu follows the language that a page chose. */
async function answer(name: string, input: unknown, opening: unknown): Promise<unknown> {
  const answered = await dispatch(name, input, opening);
  if (name === "host.speak") setMenu(process.platform);
  return answered;
}

async function start(): Promise<void> {
  await speakFirst(context, app.getLocale());
  guardSession(session.defaultSession);
  setMenu(process.platform);
  protocol.handle(appScheme, pageHandler(loadPages(join(here, "..", "renderer"))));
  ipcMain.handle(callChannel, (event, name: unknown, input: unknown, opening: unknown) =>
    isOwnPage(event, window?.webContents)
      ? answer(typeof name === "string" ? name : "", input, opening)
      : { ok: false, code: "refused", message: hostWords.pageMayNot },
  );
  if (asked) void openNamed(asked);
  window = openWindow(join(here, "..", "preload", "preload.cjs"), app.isPackaged);
  window.on("closed", () => (window = null));
  void loadHome(window);
}

if (app.requestSingleInstanceLock()) {
  app.on("web-contents-created", (_event, contents) => guardContents(contents));
  app.on("second-instance", (_event, words, workingFolder) => {
    if (window?.isMinimized()) window.restore();
    window?.focus();
    const named = studyArgument(words, workingFolder);
    if (named) void openNamed(named);
  });
  app.on("open-file", (event, path) => {
    event.preventDefault();
    if (app.isReady()) void openNamed(path);
    else asked = path;
  });
  app.on("window-all-closed", () => app.quit());
  app.on("will-quit", () => closeContext(context));
  void app.whenReady().then(start);
} else app.quit();

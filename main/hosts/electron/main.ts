import { homedir } from "node:os";
import { join } from "node:path";
import { app, BrowserWindow, dialog, ipcMain, protocol, session } from "electron";
import packageFile from "../../../package.json" with { type: "json" };
import { createDispatcher } from "../../dispatch.ts";
import { closeContext, createContext, openAtStart } from "../../service.ts";
import { loadPages } from "../loopback/pages.ts";
import { safeHeaders } from "../loopback/policy.ts";
import { savePdf } from "./pdf.ts";
import { appOrigin, appScheme, callChannel } from "./names.ts";

const filters = [{ name: "Flocwright study", extensions: ["flocwright"] }];
const here = import.meta.dirname;

protocol.registerSchemesAsPrivileged([
  { scheme: appScheme, privileges: { standard: true, secure: true, supportFetchAPI: true } },
]);

let window: BrowserWindow | null = null;

const context = createContext({
  host: "electron",
  version: packageFile.version,
  now: () => new Date().toISOString(),
  folder: process.env["FLOCWRIGHT_FOLDER"] ?? join(homedir(), "Flocwright"),
  dialogs: {
    chooseOpen: async () => {
      const chosen = await dialog.showOpenDialog({ filters, properties: ["openFile"] });
      return chosen.filePaths[0] ?? null;
    },
    chooseSave: async (name) => {
      const chosen = await dialog.showSaveDialog({ filters, defaultPath: `${name}.flocwright` });
      return chosen.filePath ?? null;
    },
  },
  savePdf: (name, pageSize) => (window ? savePdf(window, name, pageSize) : Promise.resolve(false)),
});
const dispatch = createDispatcher(context);

function servePages(): void {
  const pages = loadPages(join(here, "..", "renderer"));
  protocol.handle(appScheme, (request) => {
    const { host, pathname } = new URL(request.url);
    const page = host === "app" ? pages.get(decodeURIComponent(pathname)) : undefined;
    if (!page) return new Response("There is no such page.", { status: 404, headers: safeHeaders });
    return new Response(new Uint8Array(page.body), {
      headers: { ...safeHeaders, "content-type": page.type },
    });
  });
}

function createWindow(): void {
  window = new BrowserWindow({
    width: 1280,
    height: 800,
    minWidth: 960,
    minHeight: 640,
    show: false,
    webPreferences: {
      preload: join(here, "..", "preload", "preload.cjs"),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webviewTag: false,
    },
  });
  const { webContents } = window;
  webContents.setWindowOpenHandler(() => ({ action: "deny" }));
  webContents.on("will-navigate", (event, url) => {
    if (!url.startsWith(`${appOrigin}/`)) event.preventDefault();
  });
  webContents.on("will-redirect", (event, url) => {
    if (!url.startsWith(`${appOrigin}/`)) event.preventDefault();
  });
  webContents.on("will-attach-webview", (event) => event.preventDefault());
  // A crashed page is loaded anew: everything acknowledged is on disk and the page picks up where it was.
  webContents.on("render-process-gone", () => void window?.loadURL(`${appOrigin}/index.html`));
  window.once("ready-to-show", () => window?.show());
  window.on("closed", () => (window = null));
  void window.loadURL(`${appOrigin}/index.html`);
}

function start(): void {
  session.defaultSession.setPermissionRequestHandler((_contents, _permission, answer) => answer(false));
  session.defaultSession.setPermissionCheckHandler(() => false);
  servePages();
  ipcMain.handle(callChannel, (event, name: unknown, input: unknown) => {
    const sender = event.senderFrame;
    if (!sender || sender.parent !== null || !sender.url.startsWith(`${appOrigin}/`))
      return { ok: false, code: "refused", message: "This page may not call Flocwright." };
    return dispatch(String(name), input);
  });
  const study = process.argv.slice(1).find((argument) => argument.endsWith(".flocwright"));
  if (study) openAtStart(context, study);
  createWindow();
}

if (app.requestSingleInstanceLock()) {
  app.on("second-instance", () => {
    if (window?.isMinimized()) window.restore();
    window?.focus();
  });
  app.on("window-all-closed", () => app.quit());
  app.on("will-quit", () => closeContext(context));
  void app.whenReady().then(start);
} else app.quit();

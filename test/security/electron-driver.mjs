// Boots the built main entry and preload under the stand-in and prints what an outsider could and could not do.
import { createRequire, registerHooks } from "node:module";
import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const root = join(import.meta.dirname, "..", "..");
const standIn = pathToFileURL(join(import.meta.dirname, "electron-stand-in.mjs")).href;
registerHooks({
  resolve: (specifier, context, next) =>
    specifier === "electron" ? { url: standIn, shortCircuit: true } : next(specifier, context),
});
const { seen, app } = await import(standIn);
await import(pathToFileURL(join(root, "out", "main", "electron.js")).href);
await new Promise((resolve) => setTimeout(resolve, 50));

if (process.env.STAND_IN_SECOND === "yes") {
  console.log(JSON.stringify({ windows: seen.windows.length, quits: seen.quits }));
  process.exit(0);
}
const [window] = seen.windows;
const { webContents } = window;
const prevented = (event, ...rest) => {
  let stopped = false;
  const [details] = rest;
  const extra = typeof details === "object" ? details : {};
  webContents.emit(event, { preventDefault: () => (stopped = true), ...extra }, ...rest);
  return stopped;
};
const page = async (url) => {
  const response = await seen.handlers.flocwright(new Request(url));
  return {
    status: response.status,
    policy: response.headers.get("content-security-policy"),
    text: (await response.text()).slice(0, 40),
  };
};
const [channel] = Object.keys(seen.channels);
const call = (frame, name, input = {}) =>
  seen.channels[channel]({ sender: webContents, senderFrame: frame }, name, input);
const own = { url: "flocwright://app/index.html", parent: null };
const answers = {
  webPreferences: window.options.webPreferences,
  schemes: seen.schemes,
  loaded: [...seen.loaded],
  popup: webContents.openHandler({ url: "https://example.invalid" }),
  navigateAway: prevented("will-navigate", "https://example.invalid/"),
  navigateLookalike: prevented("will-navigate", "flocwright://app.example.invalid/"),
  navigateHome: prevented("will-navigate", "flocwright://app/index.html"),
  redirectAway: prevented("will-redirect", "file:///etc/hostname"),
  frameAway: prevented("will-frame-navigate", { url: "https://example.invalid/", isMainFrame: true }),
  frameInside: prevented("will-frame-navigate", { url: "flocwright://app/index.html", isMainFrame: false }),
  navigateRoom: prevented("will-navigate", "flocwright://app/index.html#/bench"),
  navigateFile: prevented("will-navigate", "flocwright://app/assets/index.js"),
  navigateScript: prevented("will-navigate", "javascript:alert(1)"),
  webview: prevented("will-attach-webview", {}, { src: "flocwright://app/index.html" }),
  requests: Object.fromEntries(
    [
      "flocwright://app/assets/index.js",
      "blob:flocwright://app/1",
      "data:image/png;base64,",
      "https://example.invalid/",
      "http://127.0.0.1:80/",
      "file:///etc/hostname",
      "ws://127.0.0.1/",
      "blob:https://example.invalid/1",
      "flocwright://elsewhere/index.html",
    ].map((url) => {
      let cancelled = null;
      seen.beforeRequest({ url }, ({ cancel }) => (cancelled = cancel));
      return [url, cancelled];
    }),
  ),
  downloads: Object.fromEntries(
    [
      "blob:flocwright://app/1",
      "data:image/png;base64,",
      "https://example.invalid/x",
      "data:text/html,x",
    ].map((url) => {
      let stopped = false;
      seen.fromPage["will-download"]({ preventDefault: () => (stopped = true) }, { getURL: () => url });
      return [url, stopped];
    }),
  ),
  device: seen.permissions.device({ deviceType: "usb", origin: "flocwright://app" }),
  spellChecker: seen.spellChecker,
  menus: seen.menus.flat().map((item) => item.role ?? item.label),
  permission: await new Promise((resolve) => seen.permissions.request(null, "camera", resolve)),
  permissionCheck: seen.permissions.check(null, "geolocation"),
  index: await page("flocwright://app/index.html"),
  traversal: await page("flocwright://app/../../package.json"),
  encodedTraversal: await page("flocwright://app/..%2f..%2fpackage.json"),
  otherHost: await page("flocwright://elsewhere/index.html"),
  backslashes: await page("flocwright://app/..\\..\\package.json"),
  doubled: await page("flocwright://app/%252e%252e/package.json"),
  brokenEncoding: await page("flocwright://app/%E0%A4%A"),
  nothing: await page("flocwright://app/%00"),
  absolute: await page("flocwright://app//etc/hostname"),
  listed: await page("flocwright://app/assets"),
  posted: (await seen.handlers.flocwright(new Request("flocwright://app/index.html", { method: "POST" })))
    .status,
  channels: Object.keys(seen.channels),
  about: await call(own, "host.about"),
  unknownCall: await call(own, "__proto__"),
  foreignFrame: await call({ url: "https://example.invalid/", parent: null }, "host.about"),
  childFrame: await call({ ...own, parent: own }, "host.about"),
  noFrame: await call(null, "host.about"),
  otherPageOfOurs: await call({ ...own, url: "flocwright://app/assets/x.html" }, "host.about"),
  otherContents: await seen.channels[channel]({ sender: {}, senderFrame: own }, "host.about", {}),
  pathFromPage: await call(own, "study.open", { ref: "/etc/hostname" }),
  pathAsName: await call(own, "study.open", { ref: "x", path: "/etc/hostname" }),
};
await call(own, "study.createDemo");
const lock = join(process.env.FLOCWRIGHT_FOLDER, "Demo (invented).flocwright.lock");
answers.lockedWhileOpen = existsSync(lock);
const pdf = (paperSize, name = "Setting sheet: a/b\\c") => call(own, "paper.savePdf", { name, paperSize });
answers.pdfCancelled = await pdf("A4");
seen.saveAs = join(process.env.FLOCWRIGHT_FOLDER, "sheet.pdf");
answers.pdfSaved = await pdf("Letter");
answers.pdfFile = readFileSync(seen.saveAs, "utf8");
seen.saveAs = join(process.env.FLOCWRIGHT_FOLDER, "nowhere", "sheet.pdf");
answers.pdfNowhere = await pdf("A4");
answers.pdfOddSize = await pdf("A0");
answers.pdfForeign = await call({ url: "https://example.invalid/", parent: null }, "paper.savePdf", {
  name: "x",
  paperSize: "A4",
});
Object.assign(answers, { saves: seen.saves, printed: seen.printed });
seen.loaded.length = 0;
webContents.emit("render-process-gone", {}, { reason: "crashed" });
answers.reloadedAfterCrash = [...seen.loaded];
answers.afterReload = (await call(own, "study.current")).ok;
app.emit("second-instance", {}, ["flocwright"], process.cwd());
answers.focusedBySecond = window.focused === true;
app.emit("window-all-closed");
answers.quits = seen.quits;
answers.lockedAfterQuit = existsSync(lock);

const require = createRequire(import.meta.url);
const Module = require("node:module");
const load = Module._load;
const standInModule = await import(standIn);
Module._load = (name, ...rest) => (name === "electron" ? standInModule : load(name, ...rest));
globalThis.window = new EventTarget();
require(join(root, "out", "preload", "preload.cjs"));
answers.exposed = Object.fromEntries(
  Object.entries(seen.exposed).map(([name, api]) => [name, Object.keys(api)]),
);
await seen.exposed.flocwright["host.about"]({ x: 1 }, "token");
answers.invoked = seen.invoked;
console.log(JSON.stringify(answers));
process.exit(0);

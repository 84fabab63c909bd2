// Finds a browser of the Chromium family on this machine.
import { existsSync } from "node:fs";
import { delimiter, join } from "node:path";

const names = [
  "chromium",
  "chromium-browser",
  "google-chrome",
  "google-chrome-stable",
  "microsoft-edge",
  "msedge",
];
const fixed = [
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
  "/Applications/Microsoft Edge.app/Contents/MacOS/Microsoft Edge",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe",
  "C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe",
  "C:\\Program Files\\Microsoft\\Edge\\Application\\msedge.exe",
];

/** The path of an installed browser, or null. FLOCWRIGHT_BROWSER names one outright. */
export function findBrowser() {
  const named = process.env.FLOCWRIGHT_BROWSER;
  if (named) return existsSync(named) ? named : null;
  for (const folder of (process.env.PATH ?? "").split(delimiter))
    for (const name of names) {
      const path = join(folder, name);
      if (folder && existsSync(path)) return path;
    }
  return fixed.find((path) => existsSync(path)) ?? null;
}

/** Flags that keep a browser from looking for the network, and let it run as root where that is who we are. */
export function quietFlags() {
  return [
    ...(process.getuid?.() === 0 ? ["--no-sandbox"] : []),
    "--disable-gpu",
    "--disable-quic",
    "--no-first-run",
    "--no-default-browser-check",
    "--disable-background-networking",
    "--disable-component-update",
    "--disable-sync",
  ];
}

import { defineConfig } from "@playwright/test";
import { findBrowser, quietFlags } from "./scripts/browser.mjs";

export default defineConfig({
  testDir: "test/e2e",
  workers: 2,
  timeout: 90_000,
  // A slow shared machine is given a second try; what needed it is named at the end and never passed over in silence.
  retries: process.env["CI"] ? 1 : 0,
  expect: { timeout: 15_000 },
  reporter: process.env["FLOCWRIGHT_REPORT"]
    ? [["json", { outputFile: process.env["FLOCWRIGHT_REPORT"] }], ["line"]]
    : "list",
  outputDir: "test-results",
  use: {
    viewport: { width: 1280, height: 800 },
    launchOptions: { executablePath: findBrowser() ?? undefined, args: quietFlags() },
    locale: "en-GB",
    trace: "off",
    actionTimeout: 8_000,
  },
});

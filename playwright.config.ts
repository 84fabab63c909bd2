import { defineConfig } from "@playwright/test";
import { findBrowser, quietFlags } from "./scripts/browser.mjs";

export default defineConfig({
  testDir: "test/e2e",
  workers: 1,
  timeout: 60_000,
  expect: { timeout: 10_000 },
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

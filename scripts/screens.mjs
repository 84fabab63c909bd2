// Takes a picture of every room in every look at the three zooms, full and empty, into screens/ (not committed).
// usage: npm run screens [-- a part of a picture's name, to take only those]
import { mkdtempSync, mkdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright";
import { ensureBuilt } from "../main/hosts/loopback/build.ts";
import { startLoopback } from "../main/hosts/loopback/server.ts";
import { loopbackSupport } from "../main/hosts/loopback/support.ts";
import { closeContext, createContext, openDemoAtStart } from "../main/service.ts";
import { createDispatcher } from "../main/dispatch.ts";
import { findBrowser, quietFlags } from "./browser.mjs";

const only = process.argv[2] ?? "";
const looks = {
  light: { colorScheme: "light" },
  dark: { colorScheme: "dark" },
  contrast: { colorScheme: "light", contrast: "more" },
};
// 1280 x 800 as it is, at 125 % and at 200 %
const sizes = [
  [1280, 800],
  [1024, 640],
  [640, 400],
];
const rooms = ["sample", "bench", "curves", "dose", "plant", "record", "exchange", "sheet", "report"];
const folder = join(import.meta.dirname, "..", "screens");
mkdirSync(folder, { recursive: true });
const built = await ensureBuilt();
if (!built.ok) throw new Error(built.message);
const shelf = mkdtempSync(join(tmpdir(), "flocwright-screens-"));
process.env.FLOCWRIGHT_FOLDER = shelf;
const context = createContext(loopbackSupport(null));
const host = await startLoopback(context, { port: 0, pagesFolder: built.value, once: false });
const browser = await chromium.launch({ executablePath: findBrowser() ?? undefined, args: quietFlags() });
const call = createDispatcher(context);
let taken = 0;

const tabs = {};
for (const [look, options] of Object.entries(looks)) {
  const page = await (await browser.newContext({ ...options, reducedMotion: "reduce" })).newPage();
  page.on("console", (message) => {
    if (message.type() === "error") console.log(`${look}: ${message.text()}`);
  });
  page.on("pageerror", (error) => console.log(`${look}: ${error.message}`));
  tabs[look] = page;
}

/** One place in all looks and sizes; `reach` brings the page there. */
async function shoot(name, reach) {
  for (const [look, page] of Object.entries(tabs)) {
    const wanted = sizes.filter(([width]) => `${name}-${look}-${width}`.includes(only));
    if (wanted.length === 0) continue;
    await page.setViewportSize({ width: 1280, height: 800 });
    await reach(page);
    await page.waitForTimeout(/curves|dose|report|sheet/.test(name) ? 900 : 250);
    for (const [width, height] of wanted) {
      await page.setViewportSize({ width, height });
      await page.waitForTimeout(120);
      await page.screenshot({ path: join(folder, `${name}-${look}-${width}.png`) });
      taken += 1;
    }
  }
}
const to = (room) => (page) => page.goto(`http://127.0.0.1:${host.port}/#/${room}`);

/** The study as it stands in the host, taken up anew. */
async function shootStudy(kind) {
  for (const page of Object.values(tabs)) {
    await page.goto(host.url);
    await page.reload();
  }
  for (const room of rooms) await shoot(`${kind}-${room}`, to(room));
}

await openDemoAtStart(context);
await shootStudy("demo");
await shoot("help", async (page) => {
  await to("sample")(page);
  await page.keyboard.press("F1");
  await page.getByRole("heading", { name: "Keys and words" }).waitFor();
});
await shoot("run", async (page) => {
  await page.keyboard.press("Escape");
  await to("bench")(page);
  await page.getByRole("button", { name: "Run the jars" }).click();
});
await call("study.create", { name: "Empty study", by: "" });
await shootStudy("empty");
await call("study.close", {});
await shoot("start", async (page) => {
  await page.goto(host.url);
  await page.reload();
});
await shoot("studies", async (page) => {
  await to("studies")(page);
  await page.getByText("Read again").waitFor();
});
await browser.close();
closeContext(context);
await host.close();
rmSync(shelf, { recursive: true, force: true });
console.log(`${taken} pictures in screens/`);

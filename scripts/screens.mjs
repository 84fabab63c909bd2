// Takes a picture of every room in both themes, on the demo and on an empty study, into screens/ (not committed).
// usage: node scripts/screens.mjs [width height]
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

const [width = 1280, height = 800] = process.argv.slice(2).map(Number);
const rooms = ["sample", "bench", "curves", "dose", "plant", "record", "sheet", "report"];
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

async function shoot(kind) {
  for (const theme of ["light", "dark"]) {
    const page = await (
      await browser.newContext({ viewport: { width, height }, colorScheme: theme })
    ).newPage();
    page.on("console", (message) => {
      if (message.type() === "error") console.log(`${kind} ${theme}: ${message.text()}`);
    });
    page.on("pageerror", (error) => console.log(`${kind} ${theme}: ${error.message}`));
    await page.goto(host.url);
    for (const room of rooms) {
      await page.goto(`http://127.0.0.1:${host.port}/#/${room}`);
      await page.waitForTimeout(["curves", "dose", "report"].includes(room) ? 1500 : 700);
      await page.screenshot({ path: join(folder, `${kind}-${room}-${theme}-${width}.png`) });
    }
    await page.context().close();
  }
}

await openDemoAtStart(context);
await shoot("demo");
await call("study.create", { name: "Empty study", by: "" });
await shoot("empty");
await call("study.close", {});
for (const theme of ["light", "dark"]) {
  const page = await browser.newPage({ viewport: { width, height }, colorScheme: theme });
  await page.goto(host.url);
  await page.waitForTimeout(500);
  await page.screenshot({ path: join(folder, `start-${theme}-${width}.png`) });
  await page.goto(`http://127.0.0.1:${host.port}/#/studies`);
  await page.getByText("Read again").waitFor();
  await page.screenshot({ path: join(folder, `studies-${theme}-${width}.png`) });
}
await browser.close();
closeContext(context);
await host.close();
rmSync(shelf, { recursive: true, force: true });

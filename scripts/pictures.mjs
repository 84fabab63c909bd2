// Takes the pictures of the guides from the running product on the invented demo, at one fixed moment, into docs/pictures.
// usage: npm run pictures
import { mkdtempSync, mkdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium } from "playwright";
import { createDispatcher } from "../main/dispatch.ts";
import { ensureBuilt } from "../main/hosts/loopback/build.ts";
import { startLoopback } from "../main/hosts/loopback/server.ts";
import { loopbackSupport } from "../main/hosts/loopback/support.ts";
import { closeContext, createContext, openDemoAtStart } from "../main/service.ts";
import { findBrowser, quietFlags } from "./browser.mjs";

const moment = "2026-06-17T13:40:00.000Z";
const folder = join(import.meta.dirname, "..", "docs", "pictures");
mkdirSync(folder, { recursive: true });
const built = await ensureBuilt();
if (!built.ok) throw new Error(built.message);
const shelf = mkdtempSync(join(tmpdir(), "flocwright-pictures-"));
process.env.FLOCWRIGHT_FOLDER = shelf;
const context = createContext({ ...loopbackSupport(null), now: () => moment });
const host = await startLoopback(context, { port: 0, pagesFolder: built.value, once: false });
const browser = await chromium.launch({ executablePath: findBrowser() ?? undefined, args: quietFlags() });
const page = await (
  await browser.newContext({
    viewport: { width: 1280, height: 800 },
    colorScheme: "light",
    locale: "en-GB",
    timezoneId: "UTC",
    reducedMotion: "reduce",
  })
).newPage();
await page.clock.setFixedTime(new Date(moment));
await page.goto(host.url);

/** Shows a room and waits until its numbers stand. */
async function show(room) {
  await page.goto(`http://127.0.0.1:${host.port}/#/${room}`);
  await page.waitForTimeout(1500);
}
/** Removes every reading of the first series' jar of that label. */
async function takeBackReadings(label) {
  const call = createDispatcher(context);
  const { state, seq } = (await call("study.current", {})).value;
  const jar = Object.values(state.jar).find((one) => one.label === label);
  const commands = Object.values(state.reading)
    .filter(({ jarId }) => jarId === jar.id)
    .map(({ id }) => ({ do: "remove", kind: "reading", id }));
  const command = { do: "together", label: "take readings back", commands };
  const answer = await call("study.apply", { command, afterSeq: seq, by: "" });
  if (!answer.ok) throw new Error(answer.message);
}

const take = (name) => page.screenshot({ path: join(folder, `${name}.png`) });

await page.getByRole("heading", { name: "Flocwright" }).waitFor();
await openDemoAtStart(context);
await page.goto("about:blank");
for (const room of ["sample", "bench", "curves", "dose", "plant", "report"]) {
  await show(room);
  await take(room);
}
await show("sheet");
await take("setting-sheet");
// A jar whose readings are still to be taken shows what running one looks like.
await takeBackReadings("7");
await show("bench");
await page.getByRole("button", { name: /Run the jars/ }).click();
await page.waitForTimeout(600);
await take("run");

await browser.close();
closeContext(context);
await host.close();
rmSync(shelf, { recursive: true, force: true });

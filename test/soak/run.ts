// npm run soak [-- minutes]: edits, undo, every room, run mode and imports in a real browser on the loopback host, over
// and over. Prints what is in use each minute as a JSON line, then a verdict; ends with 1 where something keeps growing.
import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { chromium, type Page } from "playwright";
import { writeDemo } from "../../main/service/standalone.ts";
import { findBrowser, quietFlags } from "../../scripts/browser.mjs";
import { demoCommands } from "../../src/study/demo.ts";
import { slopes, type Sample } from "./verdict.ts";

const minutes = Number(process.argv[2] ?? 10);
if (!(minutes > 0)) throw new Error("usage: npm run soak -- [minutes]");
const root = join(import.meta.dirname, "..", "..");
const folder = mkdtempSync(join(tmpdir(), "flocwright-soak-"));
const path = join(folder, "soak.flocwright");
const rooms = ["sample", "curves", "dose", "plant", "record", "bench"];

// The host tidies its memory and says what it has in use when it is asked by this signal.
const teller = `process.on("SIGUSR2",()=>{gc();gc();process.stderr.write("memory "+JSON.stringify(process.memoryUsage())+"\\n")})`;

function startHost() {
  const written = writeDemo(path, demoCommands, new Date().toISOString());
  if (!written.ok) throw new Error(written.message);
  const script = join(root, "main", "headless.ts");
  const child = spawn(
    process.execPath,
    [
      "--expose-gc",
      "--import",
      `data:text/javascript,${encodeURIComponent(teller)}`,
      script,
      "host",
      "--study",
      path,
      "--port",
      "0",
      "--no-window",
    ],
    { cwd: root, stdio: ["ignore", "pipe", "pipe"] },
  );
  const url = new Promise<string>((resolve, reject) => {
    child.stdout.once("data", (chunk) => resolve((JSON.parse(String(chunk)) as { url: string }).url));
    child.once("exit", (code) => reject(new Error(`the host ended with ${code}`)));
  });
  const memory = () =>
    new Promise<{ rss: number; heapUsed: number }>((resolve) => {
      const listen = (chunk: Buffer) => {
        const told = /memory (\{.*\})/.exec(String(chunk))?.[1];
        if (told === undefined) return;
        child.stderr.off("data", listen);
        resolve(JSON.parse(told) as { rss: number; heapUsed: number });
      };
      child.stderr.on("data", listen);
      child.kill("SIGUSR2");
    });
  return { child, url, memory };
}

let edits = 0;
const done = { edits: 0, undone: 0, rooms: 0, runs: 0, imports: 0 };

const enterRoom = async (page: Page, room: string) => {
  await page.locator(`[data-room="${room}"]`).click();
  await page.locator(`[data-room="${room}"].here`).waitFor();
  done.rooms += 1;
};

async function editJars(page: Page, round: number): Promise<void> {
  await enterRoom(page, "bench");
  const cells = page.locator("[data-row] [data-column='syringeA'] input");
  await cells.first().waitFor();
  const count = Math.min(10, await cells.count());
  for (let i = 0; i < count; i++) {
    await cells.nth(i).fill(String(15 + ((round * 7 + i * 3) % 50) / 10));
    await cells.nth(i).blur();
    edits += 1;
    done.edits += 1;
  }
}

async function undoSome(page: Page): Promise<void> {
  for (let i = 0; i < 3; i++) {
    await page.getByRole("button", { name: "Undo" }).click();
    edits += 1;
    done.undone += 1;
  }
}

async function runJars(page: Page): Promise<void> {
  await enterRoom(page, "bench");
  await page.getByRole("button", { name: "Run the jars" }).click();
  await page.getByRole("button", { name: "To the grid" }).first().click();
  done.runs += 1;
}

/** An import that is taken back again, so that the study itself does not grow. */
async function importAndUndo(page: Page): Promise<void> {
  await enterRoom(page, "record");
  await page.getByRole("button", { name: "Import or export" }).click();
  const lines = Array.from(
    { length: 200 },
    (_, i) => `soak ${i},${10 + (i % 40) / 2},${20 + (i % 60)},${200 + (i % 50)}`,
  );
  // Chosen within the page: the browser driver's own way keeps the input, and with it the whole room, for ever.
  await page.locator("input[type=file]").evaluate(
    (element, text) => {
      const input = element as HTMLInputElement;
      const chosen = new DataTransfer();
      chosen.items.add(new File([text], "soak.csv", { type: "text/csv" }));
      input.files = chosen.files;
      input.dispatchEvent(new Event("change", { bubbles: true }));
    },
    ["jar,syringe_a_ml,turbidity_ntu,filtrate_tss_mg_per_l", ...lines].join("\n"),
  );
  await page.getByLabel("Stock solution of polymer A").selectOption({ index: 1 });
  const add = page.getByRole("button", { name: /^Add 200 jars/ });
  await add.click();
  await page
    .getByText(/Added 200 jars/)
    .waitFor()
    .catch(async (error: unknown) => {
      console.log(JSON.stringify({ stuck: await page.locator("body").innerText() }));
      throw error;
    });
  const series = page.getByLabel("Series").first().getByRole("option");
  const before = await series.count();
  await page.getByRole("button", { name: "Undo" }).click();
  // Taken back whole before anything else is done: the imported series is gone again.
  await page.waitForFunction(
    (count) => document.querySelectorAll("header.bar select")[0]!.querySelectorAll("option").length < count,
    before,
  );
  edits += 2;
  done.imports += 1;
}

const host = startHost();
const browser = await chromium.launch({ executablePath: findBrowser() ?? undefined, args: quietFlags() });
const faults: string[] = [];
const samples: Sample[] = [];
try {
  const page = await browser.newPage({ viewport: { width: 1280, height: 800 } });
  page.setDefaultTimeout(60_000);
  page.on("pageerror", (error) => faults.push(error.message));
  await page.goto(await host.url);
  await page.locator('[data-room="sample"]').getByText("TS 2.48").waitFor();
  const devtools = await page.context().newCDPSession(page);
  await devtools.send("HeapProfiler.enable");
  const start = performance.now();
  const sample = async () => {
    await enterRoom(page, "sample");
    await page.waitForTimeout(1500);
    await devtools.send("HeapProfiler.collectGarbage");
    await devtools.send("HeapProfiler.collectGarbage");
    const { usedSize } = await devtools.send("Runtime.getHeapUsage");
    const { nodes, jsEventListeners } = await devtools.send("Memory.getDOMCounters");
    const { rss, heapUsed } = await host.memory();
    const one: Sample = {
      minute: Number(((performance.now() - start) / 60_000).toFixed(1)),
      edits,
      pageHeap: usedSize,
      nodes,
      listeners: jsEventListeners,
      hostRss: rss,
      hostHeap: heapUsed,
    };
    samples.push(one);
    console.log(JSON.stringify(one));
  };
  const every = Math.min(60_000, (minutes * 60_000) / 10);
  let next = every;
  await sample();
  for (let round = 0; performance.now() - start < minutes * 60_000; round++) {
    await editJars(page, round);
    await undoSome(page);
    if (round % 2 === 0) for (const room of rooms) await enterRoom(page, room);
    if (round % 3 === 0) await runJars(page);
    if (round % 4 === 2) await importAndUndo(page);
    if (performance.now() - start > next) {
      await sample();
      next += every;
    }
  }
  await sample();
} finally {
  await browser.close();
  host.child.kill("SIGTERM");
}
const found = slopes(samples);
for (const slope of found) console.log(JSON.stringify(slope));
const steady = found.every((slope) => slope.steady) && faults.length === 0;
console.log(JSON.stringify({ verdict: steady ? "steady" : "NOT STEADY", ...done, faults }));
rmSync(folder, { recursive: true, force: true });
process.exit(steady ? 0 : 1);

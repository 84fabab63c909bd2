import { readFileSync } from "node:fs";
import { join } from "node:path";
import AxeBuilder from "@axe-core/playwright";
import type { Page } from "@playwright/test";
import { writeNewStudy } from "../../main/service/opening.ts";
import type { Command } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { demo, now, twoPolymerCommands } from "../unit/report/studies.ts";
import { expect, runVerb, test } from "./app.ts";
import { filtrationTest } from "../filtration-test.ts";
import { pdfPages } from "./pdf-text.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });
const sizes = ["A4", "Letter"] as const;
const points = (size: number) => (size * 96) / 72;

async function openSheet(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await room(page, "Plant").click();
  await page.getByRole("button", { name: "Setting sheet" }).click();
  await expect(page.getByRole("heading", { name: "Setting sheet" })).toBeVisible();
}

async function axeFaults(page: Page): Promise<string[]> {
  const found = await new AxeBuilder({ page })
    .withTags(["wcag2a", "wcag2aa", "wcag21a", "wcag21aa", "wcag22aa"])
    .analyze();
  return found.violations.flatMap(({ id, nodes }) => nodes.map((node) => `${id}: ${node.target.join(" ")}`));
}

/** Everything on the paper that sticks out of it or is cut off, and the smallest letters there. */
function measure(page: Page): Promise<{ faults: string[]; smallest: number; setting: number }> {
  return page.evaluate(() => {
    const shadow = [...document.querySelectorAll("*")].find((element) => element.shadowRoot)?.shadowRoot;
    const paper = (shadow ?? document).querySelector(".paper")!;
    const edge = paper.getBoundingClientRect();
    const faults: string[] = [];
    let smallest = Infinity;
    for (const element of paper.querySelectorAll<HTMLElement>("*")) {
      const own = [...element.childNodes].some(
        (node) => node.nodeType === 3 && node.textContent!.trim() !== "",
      );
      const box = element.getBoundingClientRect();
      if (box.width === 0) continue;
      if (own) smallest = Math.min(smallest, parseFloat(getComputedStyle(element).fontSize));
      const frame = element.closest("svg")?.getBoundingClientRect() ?? edge;
      if (box.right > frame.right + 1 || box.left < frame.left - 1)
        faults.push(`out: ${element.textContent}`);
      if (element instanceof SVGElement && (box.top < frame.top - 1 || box.bottom > frame.bottom + 1))
        faults.push(`out: ${element.textContent}`);
      if (
        element instanceof HTMLElement &&
        element.scrollWidth > element.clientWidth + 1 &&
        element.clientWidth > 0
      )
        faults.push(`cut: ${element.textContent}`);
    }
    const setting = paper.querySelector(".setting");
    return { faults, smallest, setting: setting ? parseFloat(getComputedStyle(setting).fontSize) : 0 };
  });
}

test("the setting sheet prints from the screen as one page of A4 and of Letter, and reads back", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("sheet.flocwright", true);
  await openSheet(page, host.url);
  const { faults, smallest, setting } = await measure(page);
  expect(faults).toEqual([]);
  expect(smallest).toBeGreaterThanOrEqual(points(11) - 0.01);
  expect(setting).toBeGreaterThanOrEqual(points(28));
  for (const format of sizes) {
    const pages = await pdfPages(await page.pdf({ format }));
    expect(pages, format).toHaveLength(1);
    const [text] = pages;
    for (const words of [
      "Neat pump P1",
      "94.9 %",
      "Expect 4.79 L/h (1.26 gal/h)",
      "79.8 mL in 60 s in the cylinder (good from 78.5 to 81.1 mL)",
      "5.2 kg/t (10.4 lb/short ton) active",
      "0.2 % active, 0.476 % as supplied",
      "Dose approved by Jon R.",
      "Valid until: ",
      "extremely slippery",
      "history entry 12, hash begins",
    ])
      expect(text, format).toContain(words);
    // Nothing of the window around the paper is printed.
    for (const words of ["Save as HTML", "Undo", "Back to the plant"]) expect(text).not.toContain(words);
  }
});

test("another feed case, a moved input and a withdrawn decision change the sheet at once", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("moved.flocwright", true);
  await openSheet(page, host.url);
  const sheet = page.locator(".page");
  await page.getByLabel("For feed").selectOption({ label: "Night (least)" });
  await expect(sheet.getByText("72.2 %", { exact: true })).toBeVisible();
  await page.getByLabel("For feed").selectOption({ label: "Monday (most)" });
  await expect(sheet.getByText(/needs more than the highest setting proven/)).toBeVisible();

  await room(page, "Sample").click();
  const cell = page.getByLabel(/dish 1, dried/);
  await cell.fill("47.7");
  await cell.press("Tab");
  await room(page, "Plant").click();
  await page.getByRole("button", { name: "Setting sheet" }).click();
  await expect(sheet.getByText("OUT OF DATE: set no pump by this")).toBeVisible();
  await expect(sheet.getByText(/history entry 13,/)).toBeVisible();
  const [text] = await pdfPages(await page.pdf({ format: "A4" }));
  expect(text).toContain("OUT OF DATE: set no pump by this");
  expect(text).toMatch(/was 47\.5336 g and is now 47\.7 g/);

  await page.getByRole("button", { name: "Undo" }).click();
  await expect(sheet.getByText("OUT OF DATE: set no pump by this")).toHaveCount(0);
  await room(page, "Dose").click();
  await page.getByRole("button", { name: "Withdraw this decision" }).click();
  await page.getByLabel("Reason").fill("wrong lot");
  await page.getByLabel("Name", { exact: true }).fill("Jon R.");
  await page.getByRole("button", { name: "Withdraw with this reason" }).click();
  await room(page, "Plant").click();
  await page.getByRole("button", { name: "Setting sheet" }).click();
  await expect(sheet.getByText("NOT APPROVED: for discussion only")).toBeVisible();
  await expect(sheet.getByText("Dose approved by: nobody.")).toBeVisible();
});

test("the factor that the plant's runs found goes into the next sheet, and out of date follows", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("factor.flocwright", true);
  await page.goto(host.url);
  await page.getByLabel("You are").selectOption({ label: "Ilse K." });
  await room(page, "Plant").click();
  await page.getByRole("button", { name: "Approve these settings anew" }).click();
  await page.getByRole("button", { name: "Setting sheet" }).click();
  const sheet = page.locator(".page");
  await expect(sheet.getByText(/Settings approved by Ilse K\./)).toBeVisible();
  await expect(sheet.getByText("94.9 %", { exact: true })).toBeVisible();

  await room(page, "Plant").click();
  await page.getByText("Plant runs and the bench-to-plant factor").click();
  await page.getByRole("button", { name: "Use this factor for the settings" }).click();
  await page.getByRole("button", { name: "Setting sheet" }).click();
  await expect(sheet.getByText("OUT OF DATE: set no pump by this")).toBeVisible();
  const [stale] = await pdfPages(await page.pdf({ format: "A4" }));
  expect(stale).toMatch(/Polymer A, dose was 5\.2 and is now 4\.79\d*: every setting goes with the dose/);

  await room(page, "Plant").click();
  await page.getByRole("button", { name: "Approve these settings anew" }).click();
  await page.getByRole("button", { name: "Setting sheet" }).click();
  await expect(sheet.getByText("87.8 %", { exact: true })).toBeVisible();
  for (const format of sizes) {
    const pages = await pdfPages(await page.pdf({ format }));
    expect(pages).toHaveLength(1);
    expect(pages[0]).not.toContain("OUT OF DATE");
    expect(pages[0]).toContain("(bench 5.2 (10.4) × plant factor 0.922 of 3 runs)");
    expect(pages[0]).toContain("87.8 %");
  }
});

test("two polymers with long names stay on one page, whole and readable", async ({ app, watched: page }) => {
  for (const length of [48, 118]) {
    const name = `two-${length}.flocwright`;
    const commands = [...demoCommands(now), ...twoPolymerCommands(length)];
    expect(writeNewStudy(join(app.folder, name), commands, "", now).ok).toBe(true);
    const host = await app.host(name, false);
    await page.goto(host.url);
    await page.getByLabel("Series").first().selectOption({ index: 1 });
    await room(page, "Plant").click();
    await page.getByRole("button", { name: "Setting sheet" }).click();
    await expect(page.locator(".page h2 .letter")).toHaveText(["A", "B"]);
    const { faults, smallest, setting } = await measure(page);
    expect(faults).toEqual([]);
    expect(smallest).toBeGreaterThanOrEqual(points(11) - 0.01);
    expect(setting).toBeGreaterThanOrEqual(points(28));
    for (const format of sizes) {
      const pages = await pdfPages(await page.pdf({ format }));
      if (length === 48) expect(pages, format).toHaveLength(1);
      for (const words of ["OUT OF DATE", "65.8 %", "56.5 %", "Dose approved by Somebody"])
        expect(pages.join(" "), format).toContain(words);
    }
    await host.kill();
  }
});

test("the German setting sheet stays on one page of A4 and of Letter, whole and readable", async ({
  app,
  page,
}) => {
  const moved: Command = { do: "set", kind: "dish", id: "dish-1", fields: { dryG: 47.534 } };
  const studies: [string, string, Command[], string][] = [
    ["one", "E-42 alone", [], "94.9 %"],
    ["moved", "E-42 alone", [moved], "ÜBERHOLT: hiernach keine Pumpe einstellen"],
    ["two", "", twoPolymerCommands(48), "65.8 %"],
  ];
  for (const [name, series, more, words] of studies) {
    const study = join(app.folder, `german-${name}.flocwright`);
    const path = join(app.folder, `german-${name}.html`);
    expect(writeNewStudy(study, [...demoCommands(now), ...more], "", now).ok).toBe(true);
    const options = ["--out", path, "--language", "german", ...(series ? ["--series", series] : [])];
    expect((await runVerb(["sheet", study, ...options])).code).toBe(0);
    await page.goto(`file://${path}`);
    expect(await axeFaults(page)).toEqual([]);
    const { faults, smallest, setting } = await measure(page);
    expect(faults, name).toEqual([]);
    expect(smallest).toBeGreaterThanOrEqual(points(11) - 0.01);
    expect(setting).toBeGreaterThanOrEqual(points(28));
    for (const format of sizes) {
      const pages = await pdfPages(await page.pdf({ format }));
      expect(pages, `${name} on ${format}`).toHaveLength(1);
      for (const found of [words, "Dosis freigegeben von", "Verlaufseintrag"])
        expect(pages[0]).toContain(found);
    }
  }
});

/** Each chart's smallest letters in points as printed, and which may be split by the end of a page or fill more than one. */
function chartsOnPaper(page: Page): Promise<{ charts: number; smallest: number; split: string[] }> {
  return page.evaluate(() => {
    const charts = [...document.querySelectorAll<SVGSVGElement>(".paper figure > svg")];
    const letters = charts.flatMap((svg) => {
      const scale = svg.getBoundingClientRect().width / svg.viewBox.baseVal.width;
      return [...svg.querySelectorAll("text")].map(
        (text) => parseFloat(getComputedStyle(text).fontSize) * scale * 0.75,
      );
    });
    const split = charts.flatMap((svg) => {
      const figure = svg.parentElement!;
      const whole = getComputedStyle(figure).breakInside === "avoid";
      return whole && figure.offsetHeight < 500 ? [] : [svg.getAttribute("aria-label")!];
    });
    return { charts: charts.length, smallest: Math.min(...letters), split };
  });
}

/** The demo with drainage over time, a filtration test and both polymers decided on: every chart the report has. */
function everyChart(): Command[] {
  const reading = (id: string, jarId: string, result: unknown): Command => ({
    do: "add",
    kind: "reading",
    record: { id, jarId, result },
  });
  const jars = Object.values(demo.jar).filter(({ seriesId }) => seriesId === "series-1");
  return [
    ...demoCommands(now),
    ...twoPolymerCommands(24),
    ...jars.flatMap(({ id }, i) =>
      [30, 60, 120].map((atS) =>
        reading(`drained-${id}-${atS}`, id, { kind: "drained", ml: 60 + i * 9 + Math.sqrt(atS) * 11, atS }),
      ),
    ),
    ...jars.slice(3, 6).map(({ id }) => reading(`filtration-${id}`, id, filtrationTest(2))),
  ];
}

for (const language of ["english", "german"])
  test(`every chart of the report is whole, readable and on one page, ${language}`, async ({ app, page }) => {
    const study = join(app.folder, "charts.flocwright");
    const path = join(app.folder, `charts-${language}.html`);
    expect(writeNewStudy(study, everyChart(), "", now).ok).toBe(true);
    expect((await runVerb(["report", study, "--out", path, "--language", language])).code).toBe(0);
    // the width between the margins of A4
    await page.setViewportSize({ width: 718, height: 1000 });
    await page.goto(`file://${path}`);
    await page.emulateMedia({ media: "print" });
    expect((await measure(page)).faults).toEqual([]);
    expect(await axeFaults(page)).toEqual([]);
    const { charts, smallest, split } = await chartsOnPaper(page);
    // dose curves with the filtration's own, surfaces, slices, residuals, limits, cost, pumps, drift, drainage, filtration
    expect(charts).toBe(6 + 2 + 4 + 5 + 1 + 1 + 2 + 2 + 1 + 3);
    expect(smallest).toBeGreaterThanOrEqual(11);
    expect(split).toEqual([]);
  });

test("nothing on the German report sticks out of it or is cut off", async ({ app, page }) => {
  const study = join(app.folder, "german-report.flocwright");
  const path = join(app.folder, "german-report.html");
  expect(writeNewStudy(study, demoCommands(now), "", now).ok).toBe(true);
  expect((await runVerb(["report", study, "--out", path, "--language", "german"])).code).toBe(0);
  await page.goto(`file://${path}`);
  await page.emulateMedia({ media: "print" });
  expect((await measure(page)).faults).toEqual([]);
  expect(await axeFaults(page)).toEqual([]);
});

test("the report shows the whole trial, prints it, and is saved as one file that needs nothing else", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("report.flocwright", true);
  await page.goto(host.url);
  await room(page, "Record").click();
  await page.getByRole("button", { name: "Report", exact: true }).click();
  await expect(page.getByRole("heading", { name: /^Trial report/ })).toBeVisible({ timeout: 20_000 });
  await expect(page.getByRole("img", { name: /^Turbidity against dose/ })).toBeVisible();
  expect((await measure(page)).faults).toEqual([]);
  for (const format of sizes) {
    const pages = await pdfPages(await page.pdf({ format }));
    expect(pages.length).toBeGreaterThan(5);
    const text = pages.join(" ");
    for (const words of [
      "Dishes, in g",
      "Every jar with every reading",
      "Working window: 4.12 to 7.05 kg/t",
      "Bench-to-plant factor of Press 2",
      "common practice, no source",
    ])
      expect(text, format).toContain(words);
  }
  const waiting = page.waitForEvent("download");
  await page.getByRole("button", { name: "Save as HTML" }).click();
  const download = await waiting;
  expect(download.suggestedFilename()).toMatch(/^Trial report.*\.html$/);
  const saved = readFileSync(await download.path(), "utf8");
  // The screen's report and the terminal's are one, but for the moment at which they were made.
  const path = join(app.folder, "copy.html");
  await host.kill();
  expect((await runVerb(["report", join(app.folder, "report.flocwright"), "--out", path])).code).toBe(0);
  const plain = (html: string) =>
    html.replace(/\d{4}-\d\d-\d\d \d\d:\d\d \S+/g, "").replace(/\d+ (?:h|min) before/g, "");
  expect(plain(saved)).toBe(plain(readFileSync(path, "utf8")));
});

for (const theme of ["light", "dark"] as const)
  test(`no paper breaks WCAG 2.2 AA as far as axe can see, ${theme}`, async ({ app, watched: page }) => {
    await page.emulateMedia({ colorScheme: theme });
    const host = await app.host("axe.flocwright", true);
    await openSheet(page, host.url);
    expect(await axeFaults(page)).toEqual([]);
    await page.goto(`${new URL(host.url).origin}/#/report`);
    await expect(page.getByRole("heading", { name: /^Trial report/ })).toBeVisible({ timeout: 20_000 });
    expect(await axeFaults(page)).toEqual([]);
  });

test("the files that the verbs write stand alone: no request, no fault, one page", async ({ app, page }) => {
  const study = join(app.folder, "alone.flocwright");
  await runVerb(["demo", study]);
  const asked: string[] = [];
  page.on("request", (request) => asked.push(request.url()));
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(message.text()));
  for (const verb of ["sheet", "report"]) {
    const path = join(app.folder, `${verb}.html`);
    expect((await runVerb([verb, study, "--out", path])).code).toBe(0);
    await page.goto(`file://${path}`);
    expect(await axeFaults(page)).toEqual([]);
    expect((await measure(page)).faults).toEqual([]);
    const pages = await pdfPages(await page.pdf({ format: "Letter" }));
    if (verb === "sheet") expect(pages).toHaveLength(1);
  }
  expect(asked.filter((url) => !url.startsWith("file:"))).toEqual([]);
  expect(complaints).toEqual([]);
});

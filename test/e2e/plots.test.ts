import { readFileSync } from "node:fs";
import type { Locator, Page } from "@playwright/test";
import { expect, test } from "./app.ts";
import { filtrationTest } from "../filtration-test.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });
const figure = (page: Page, heading: RegExp) =>
  page
    .getByRole("figure")
    .filter({ has: page.getByRole("heading", { name: heading }) })
    .first();

/** Adds, over the host's own calls, what the demo has none of: drainage over time and a filtration test of jar 1. */
async function addReadings(page: Page, study: Record<string, string>): Promise<void> {
  const refused = await page.evaluate(
    async ([fields, filtration]) => {
      const call = async (name: string, input: unknown, opening = "") => {
        const response = await fetch(`/call/${name}`, {
          method: "POST",
          headers: {
            "content-type": "application/json",
            ...(opening && { "x-flocwright-opening": opening }),
          },
          body: JSON.stringify(input),
        });
        return (await response.json()) as { ok: boolean; message?: string; value: Opened };
      };
      interface Opened {
        opening: string;
        seq: number;
        state: { jar: Record<string, { id: string; seriesId: string; label: string }> };
      }
      const { opening, seq, state } = (await call("study.current", {})).value;
      const jar = Object.values(state.jar).find((one) => one.seriesId === "series-1" && one.label === "1")!;
      const add = (id: string, result: unknown) => ({
        do: "add",
        kind: "reading",
        record: { id, jarId: jar.id, result },
      });
      const commands = [
        { do: "set", kind: "study", id: "study", fields },
        add("drained-20", { kind: "drained", ml: 188.5, atS: 20 }),
        add("drained-60", { kind: "drained", ml: 249, atS: 60 }),
        add("filtration-1", filtration),
      ];
      const command = { do: "together", label: "plots", commands };
      const answer = await call("study.apply", { command, afterSeq: seq, by: "" }, opening);
      return answer.ok ? "" : answer.message;
    },
    [study, filtrationTest(1)] as const,
  );
  expect(refused).toBe("");
  await page.reload();
}

async function saved(page: Page, frame: Locator, button = "Save this chart"): Promise<Buffer> {
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    frame.getByRole("button", { name: button }).click(),
  ]);
  return readFileSync(await file.path());
}

/** Saves a chart and looks for what its picture has to say, with where it comes from. */
async function holds(page: Page, frame: Locator, said: (string | RegExp)[]): Promise<string> {
  const text = (await saved(page, frame)).toString("utf8");
  for (const one of [...said, /study Demo: .*; saved \d{4}-\d\d-\d\d \d\d:\d\d UTC; history entry \d+/s])
    if (typeof one === "string") expect(text).toContain(one);
    else expect(text).toMatch(one);
  // what is written on the screen's drawing is written in the file's
  const heading = await frame.getByRole("heading").first().innerText();
  expect(text).toContain(`<title id="title">${heading}</title>`);
  expect(text).toContain('fill="#fff"');
  return text;
}

async function openJar(page: Page): Promise<void> {
  await room(page, "Bench").click();
  await page.getByRole("button", { name: "Details of jar 1", exact: true }).click();
}

async function openPlant(page: Page): Promise<void> {
  await room(page, "Plant").click();
  for (const title of ["Pumps and draw-downs", "Plant runs and the bench-to-plant factor"]) {
    const fold = page.locator("details.fold").filter({ hasText: title });
    if ((await fold.getAttribute("open")) === null) await fold.locator("summary").first().click();
  }
}

test("every plot is saved with its axes, units and numbers, as SVG and as PNG", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("plots.flocwright", true);
  await page.goto(host.url);
  await expect(room(page, "Bench")).toBeVisible();
  await addReadings(page, { unitSystem: "metric" });

  await openJar(page);
  const drainage = figure(page, /^Drainage of jar 1$/);
  await holds(page, drainage, [">time, s<", ">drained, mL<", ">188.5<", ">200<", "series E-42 alone"]);
  await holds(page, figure(page, /^Filtration of jar 1$/), [
    ">filtrate V, mL<",
    ">t/V, s/mL<",
    ">straight part<",
    "point 4: V 80 mL, t/V 1.8 s/mL",
  ]);
  const png = await saved(page, drainage, "Save PNG");
  expect(png.subarray(1, 4).toString()).toBe("PNG");
  // twice the drawing's 536 units
  expect(png.readUInt32BE(16)).toBe(1072);

  await room(page, "Curves").click();
  await expect(page.getByText("Models compared").first()).toBeVisible();
  await page.getByText("Residuals", { exact: true }).first().click();
  await holds(page, figure(page, /^Residuals of Turbidity, .* against dose$/), [
    ">standard deviations<",
    ">dose A, kg/t active<",
    ">+2 sd<",
    /jar \d+ at [\d.]+: -?[\d.]+ standard deviations/,
  ]);

  await room(page, "Dose").click();
  await holds(page, figure(page, /^Cost against dose$/), [
    ">cost, EUR/t dry solids<",
    ">dose A, kg/t active<",
    ">disposal<",
    ">polymer<",
    ">total<",
    ">5.2 kg/t<",
  ]);

  await openPlant(page);
  const pump = await holds(page, figure(page, /^Pump line of /), [
    ">flow, mL/min<",
    ">setting, %<",
    ">95 % band<",
    ">not tested<",
    /setting 100 %: 8\d(\.\d+)? mL\/min/,
  ]);
  expect(pump).not.toContain("series E-42");
  await holds(page, figure(page, /^Drift of the cake TS$/), [
    ">cake TS, %<",
    /upper limit [\d.]+</,
    /lower limit [\d.]+</,
    ">Day 1<",
    ">routine runs in order of time<",
  ]);
});

test("a plot is read out by the pointer and by the keys, and told as a table", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("plot-keys.flocwright", true);
  await page.goto(host.url);
  await expect(room(page, "Bench")).toBeVisible();
  await addReadings(page, { unitSystem: "metric" });
  await openJar(page);
  const drainage = figure(page, /^Drainage of jar 1$/);
  const reader = drainage.getByRole("slider", { name: "Read out: Drainage of jar 1" });
  await reader.focus();
  await reader.press("End");
  await expect(reader).toHaveAttribute("aria-valuetext", "249 mL at 60 s");
  await expect(drainage.getByText("249 mL at 60 s", { exact: true })).toBeVisible();
  await reader.press("ArrowLeft");
  await expect(reader).toHaveAttribute("aria-valuetext", "188.5 mL at 20 s");

  const box = (await reader.boundingBox())!;
  await page.mouse.move(box.x + 2, box.y + box.height - 4);
  await expect(drainage.getByText("18 mL at 10 s", { exact: true })).toBeVisible();

  await drainage.getByRole("button", { name: "Table" }).click();
  await expect(drainage.getByRole("row", { name: "60 249" })).toBeVisible();

  // a press on a point of the filtration moves the nearer end of its straight part
  const filtration = figure(page, /^Filtration of jar 1$/);
  const points = filtration.locator("path.point");
  await points.last().scrollIntoViewIfNeeded();
  const point = (await points.nth(1).boundingBox())!;
  await page.mouse.click(point.x + point.width / 2, point.y + point.height / 2);
  await expect(page.getByLabel("Straight part from point")).toHaveValue("2");
});

test("the cost plot stands under the bars of the limits, dose upon dose", async ({ app, watched: page }) => {
  const host = await app.host("plot-place.flocwright", true);
  await page.goto(host.url);
  await room(page, "Dose").click();
  const bar = page.getByRole("img", { name: /^Working window/ });
  const plate = page.getByRole("slider", { name: "Read out: Cost against dose" });
  for (const width of [1280, 900]) {
    await page.setViewportSize({ width, height: 800 });
    await expect(async () => {
      const [above, below] = [(await bar.boundingBox())!, (await plate.boundingBox())!];
      expect(Math.abs(above.x - below.x)).toBeLessThan(3);
      expect(Math.abs(above.x + above.width - below.x - below.width)).toBeLessThan(3);
    }).toPass({ timeout: 5000 });
  }
});

test("the bars of the limits have their table and a file as the report draws them", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("plot-limits.flocwright", true);
  await page.goto(host.url);
  await room(page, "Dose").click();
  const bars = figure(page, /^Where the limits hold$/);
  await holds(page, bars, [">turbidity at most 80 NTU<", ">Working window<", ">5.2 kg/t<", ">today 6.4<"]);
  await bars.getByRole("button", { name: "Table" }).click();
  await expect(bars.getByRole("row", { name: /^turbidity at most 80 NTU/ })).toContainText("3.64 to 7.05");
  await expect(bars.getByRole("row", { name: /^Working window/ })).toContainText("4.12 to 7.05");
});

test("plots follow the study's units and decimal mark", async ({ app, watched: page }) => {
  const host = await app.host("plot-units.flocwright", true);
  await page.goto(host.url);
  await expect(room(page, "Bench")).toBeVisible();
  await addReadings(page, { unitSystem: "us", decimalMark: "," });
  await openJar(page);
  await holds(page, figure(page, /^Drainage of jar 1$/), [">188,5<"]);
  await room(page, "Dose").click();
  await holds(page, figure(page, /^Cost against dose$/), [
    ">dose A, lb/short ton active<",
    ">10,4 lb/short ton<",
  ]);
  await openPlant(page);
  await holds(page, figure(page, /^Drift of the cake TS$/), [/upper limit \d+,\d</, ">19,5<"]);
});

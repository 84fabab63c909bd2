import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });

test("the curves say the dose, what would sharpen it, and export themselves", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("curves.flocwright", true);
  await page.goto(host.url);
  await room(page, "Curves").click();
  await expect(page.getByText(/kg\/t, .* to .*; .*jar \d+ moves it most/).first()).toBeVisible();
  await expect(
    page.getByText(/Next jars at .* would shrink the interval by about \d+/).first(),
  ).toBeVisible();
  await page.getByText("Residuals").first().click();
  await expect(page.getByRole("img", { name: /Residuals of .* against dose/ }).first()).toBeVisible();
  await page.getByText("Models compared").first().click();
  await expect(page.getByRole("row", { name: /suggested/ }).first()).toBeVisible();

  const [csv] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save CSV" }).first().click(),
  ]);
  const text = readFileSync(await csv.path(), "utf8");
  expect(text).toContain('"jar";"dose, kg/t";"Turbidity, NTU"');
  expect(text.trim().split("\n")).toHaveLength(14);
  const [png] = await Promise.all([
    page.waitForEvent("download"),
    page.getByRole("button", { name: "Save PNG" }).first().click(),
  ]);
  expect(
    readFileSync(await png.path())
      .subarray(1, 4)
      .toString(),
  ).toBe("PNG");
});

test("a room that is worked out before it is shown says at once that the press was taken", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("going.flocwright", true);
  await page.goto(host.url);
  await room(page, "Bench").click();
  await expect(
    page.getByText(/4 clear water between firm floc; 5 large firm floc, clear at once\.$/),
  ).toBeVisible();
  const seen = page.evaluate(
    () =>
      new Promise<{ busy: string | undefined; shown: string | undefined }>((resolve) => {
        const strip = document.querySelector("nav.strip")!;
        const watcher = new MutationObserver(() => {
          const busy = strip.querySelector<HTMLElement>("[aria-busy=true]");
          if (!busy) return;
          watcher.disconnect();
          resolve({
            busy: busy.dataset["room"],
            shown: strip.querySelector<HTMLElement>(".here")?.dataset["room"],
          });
        });
        watcher.observe(strip, { subtree: true, attributes: true, attributeFilter: ["aria-busy"] });
      }),
  );
  await room(page, "Dose").click();
  expect(await seen).toEqual({ busy: "dose", shown: "bench" });
  await expect(page.getByText("The rules side by side")).toBeVisible();
  await expect(page.locator("nav [aria-busy=true]")).toHaveCount(0);
});

test("leaving a jar out, with its reason, moves the curve and hollows the jar; undo brings it back", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("out.flocwright", true);
  await page.goto(host.url);
  await room(page, "Bench").click();
  await page.getByLabel("leave out jar 4").selectOption("1 spilled");
  await expect(room(page, "Bench")).toContainText("1 left out");
  await expect(room(page, "Dose")).toContainText("out of date");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(room(page, "Bench")).toContainText("none left out");
  await expect(room(page, "Dose")).toContainText("approved");
});

test("rules side by side, against today, and series compared at equal limits", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("rules.flocwright", true);
  await page.goto(host.url);
  await room(page, "Dose").click();
  const row = page.getByRole("row", { name: /cheapest dose within all limits/ });
  await expect(row).toContainText(/real with \d/);
  await expect(row).toContainText("EUR a year");
  await page.getByRole("button", { name: "Compare at these limits" }).click();
  const table = page.getByRole("table").filter({ hasText: "chance that it is the cheapest" });
  await expect(table.getByRole("row")).toHaveCount(3);

  // Limits that shut each other out: both are named, neither is relaxed.
  await page.getByLabel(/Filtrate turbidity at most/).fill("47");
  await page.getByLabel(/Filtrate turbidity at most/).press("Tab");
  await page.getByLabel(/Cake TS at least/).fill("20");
  await page.getByLabel(/Cake TS at least/).press("Tab");
  await expect(page.getByText(/Neither was relaxed|is not met with confidence/).first()).toBeVisible();
});

test("two polymers: contour with slices on its own edges, moved by pointer", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("slices.flocwright", true);
  await page.goto(host.url);
  await page.getByLabel("Series").first().selectOption({ label: "C-40 then E-42" });
  await room(page, "Curves").click();
  await expect(page.getByRole("img", { name: /along dose A, B held at/ })).toBeVisible();
  const before = await page.getByText(/^At A /).textContent();
  const box = (await page.getByRole("img", { name: /Contours over both doses/ }).boundingBox())!;
  await page.mouse.click(box.x + box.width * 0.3, box.y + box.height * 0.3);
  await expect(page.getByText(/^At A /)).not.toHaveText(before!);
});

test("every room of the choice stands a change of series, with a formula open and back at once", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("changing.flocwright", true);
  await page.goto(host.url);
  const series = page.getByLabel("Series").first();
  for (const name of ["Curves", "Dose", "Plant", "Bench"]) {
    await room(page, name).click();
    await expect(page.getByRole("button", { name: /^How/ }).first()).toBeVisible();
    await page.getByRole("button", { name: /^How/ }).first().click();
    for (const label of ["C-40 then E-42", "E-42 alone", "C-40 then E-42", "E-42 alone"])
      await series.selectOption({ label });
  }
  await room(page, "Dose").click();
  await expect(page.getByRole("heading", { name: "The rules side by side" })).toBeVisible();
  await series.selectOption({ label: "C-40 then E-42" });
  await expect(page.getByRole("heading", { name: "The rules side by side" })).toHaveCount(0);
});

test("the cylinder check tells a pump inside its band from one outside", async ({ app, watched: page }) => {
  const host = await app.host("cylinder.flocwright", true);
  await page.goto(host.url);
  await room(page, "Plant").click();
  const check = async (amount: string) => {
    await page.getByRole("textbox", { name: "Caught mL" }).fill(amount);
    const seconds = page.getByRole("textbox", { name: "in s", exact: true });
    await seconds.fill("60");
    await seconds.press("Tab");
    await page.getByRole("button", { name: "Check", exact: true }).click();
  };
  await check("70");
  await expect(page.getByText("pump outside its band")).toBeVisible();
  await check("79.6");
  await expect(page.getByText("pump within its band")).toBeVisible();
  await expect(room(page, "Plant")).toContainText("checked");
});

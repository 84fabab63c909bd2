import { readFileSync } from "node:fs";
import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });
const turbidityLine = (page: Page) => page.getByRole("slider", { name: /^Target line, turbidity/ }).first();
const turbidityCell = (page: Page) => page.getByLabel(/Filtrate turbidity at most/);

test("a target line is moved by keys: what it means follows, Esc takes back, Enter keeps, one undo", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("target-keys.flocwright", true);
  await page.goto(host.url);
  await room(page, "Dose").click();
  const line = turbidityLine(page);
  await expect(line).toHaveAttribute("aria-valuetext", "turbidity at most 80 NTU");
  await line.focus();
  await line.press("PageUp");
  await expect(line).toHaveAttribute("aria-valuetext", /^turbidity at most 8\d(\.\d+)? NTU$/);
  await expect(
    page.getByRole("status").filter({ hasText: /held from .* kg\/t.*Enter keeps it/ }),
  ).toBeVisible();
  await expect(turbidityCell(page)).toHaveValue("80");
  await line.press("Escape");
  await expect(line).toHaveAttribute("aria-valuetext", "turbidity at most 80 NTU");

  await line.press("ArrowDown");
  await line.press("ArrowDown");
  await line.press("Enter");
  await expect(turbidityCell(page)).toHaveValue("79");
  await expect(page.getByText("turbidity at most 79 NTU").first()).toBeVisible();
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(turbidityCell(page)).toHaveValue("80");
});

test("a target line is dragged by the pointer and kept on letting go", async ({ app, watched: page }) => {
  const host = await app.host("target-drag.flocwright", true);
  await page.goto(host.url);
  await room(page, "Dose").click();
  const line = turbidityLine(page);
  await expect(page.getByText(/missed (under 1|[\d.]+) %/).first()).toBeVisible();
  await line.scrollIntoViewIfNeeded();
  const box = (await line.boundingBox())!;
  await page.mouse.move(box.x + box.width * 0.4, box.y + box.height / 2);
  await page.mouse.down();
  await page.mouse.move(box.x + box.width * 0.4, box.y + box.height / 2 - 12, { steps: 4 });
  await expect(turbidityCell(page)).toHaveValue("80");
  const meant = await line.getAttribute("aria-valuetext");
  await page.mouse.up();
  await expect(turbidityCell(page)).not.toHaveValue("80");
  const kept = Number(await turbidityCell(page).inputValue());
  expect(kept).toBeGreaterThan(80);
  // what was shown while dragging is what was kept, up to the digits of the words
  expect(Number(/[\d.]+/.exec(meant!)![0])).toBeCloseTo(Number(kept.toPrecision(3)), 6);
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(turbidityCell(page)).toHaveValue("80");
});

test("arrow keys move along the dose axis and every curve is told with its band", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("read-out.flocwright", true);
  await page.goto(host.url);
  await room(page, "Curves").click();
  const dose = page.getByRole("slider", { name: /^Dose looked at/ });
  await dose.focus();
  const before = await dose.getAttribute("aria-valuetext");
  await dose.press("ArrowRight");
  await dose.press("PageUp");
  await expect(dose).not.toHaveAttribute("aria-valuetext", before!);
  await expect(dose).toHaveAttribute(
    "aria-valuetext",
    /^[\d.]+ kg\/t: Turbidity [\d.]+ NTU \([\d.]+ to [\d.]+\); .*Cake TS [\d.]+ % \(/,
  );
});

test("a chart is saved as it stands in the report, with its source", async ({ app, watched: page }) => {
  const host = await app.host("save-chart.flocwright", true);
  await page.goto(host.url);
  await room(page, "Curves").click();
  // A chart can be saved before its fit has come, too; this one is to have its curve.
  await expect(page.getByText("Models compared").first()).toBeVisible();
  const saved = async (button: number) => {
    const [file] = await Promise.all([
      page.waitForEvent("download"),
      page.getByRole("button", { name: "Save this chart" }).nth(button).click(),
    ]);
    return readFileSync(await file.path(), "utf8");
  };
  await expect(page.locator('[data-room="curves"]')).toContainText("fitted");
  const curve = await saved(0);
  for (const said of [
    "<title",
    "<desc",
    "mean, A",
    "95 % band",
    "turbidity at most 80 NTU",
    "not tested",
    "plant today 6.4",
  ])
    expect(curve).toContain(said);
  expect(curve).toMatch(/study Demo: .*series E-42 alone; saved \d{4}-.*history entry \d+, hash begins/s);

  await page.getByLabel("Series").first().selectOption({ label: "C-40 then E-42" });
  await expect(page.getByRole("img", { name: /Contours over both doses/ })).toBeVisible();
  const pairs = await saved(0);
  for (const said of ["dose A, kg/t active", "tested within", "looked at", "jar "])
    expect(pairs).toContain(said);
});

import { join } from "node:path";
import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";
import { draftsIn } from "./in-file.ts";

/** Types into a cell by its label and leaves it, as a technician does. */
async function enter(page: Page, label: string | RegExp, text: string): Promise<void> {
  const cell = page.getByLabel(label).first();
  await cell.fill(text);
  await cell.press("Tab");
}

const room = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });

test("one person does the whole job on an empty study, from dishes to pump settings", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(120_000);
  const demo = await app.host("own.flocwright", true);
  await page.goto(demo.url);
  await expect(room(page, "Sample")).toContainText("TS 2.48");

  // A study of one's own: close the demo and start anew.
  await room(page, "Record").click();
  await page.getByRole("button", { name: "Close and open another" }).click();
  await page.getByLabel("Name of the study").fill("Own numbers");
  await page.getByRole("button", { name: "Start a new study" }).click();
  await expect(page.getByRole("heading", { name: "Start with the sample" })).toBeVisible();

  await page.getByRole("button", { name: "Add the first sample" }).click();
  for (const [dish, masses] of [
    ["1", ["50.1", "80.3", "51.0", "50.34"]],
    ["2", ["49.2", "79.1", "50.1", "49.44"]],
  ] as const)
    for (const [i, name] of ["empty dish", "with wet sludge", "dried at 105 °C", "ashed at 550 °C"].entries())
      await enter(page, new RegExp(`dish ${dish}, ${name}`), masses[i]!);
  await expect(room(page, "Sample")).toContainText("TS 3.00 %");
  await expect(room(page, "Sample")).toContainText("final");

  // Refused text stays with its reason.
  const swapped = page.getByLabel(/dish 1, dried/);
  await swapped.fill("5.1.0");
  await swapped.press("Tab");
  await expect(page.getByText(/has more than one mark/)).toBeVisible();
  await expect(swapped).toHaveValue("5.1.0");
  await swapped.press("Escape");
  await expect(swapped).toHaveValue("51");

  await page.getByRole("button", { name: "Add a product" }).click();
  await enter(page, /Active share of the neat product/, "40");
  await enter(page, /Density, neat/, "1.05");
  await enter(page, /Price of the neat product/, "3");
  await page.getByRole("button", { name: "Add a stock solution" }).click();
  await enter(page, /Neat product weighed in/, "2.5");
  await enter(page, /Whole solution/, "500");
  await expect(page.getByText("which is, as supplied")).toBeVisible();

  await room(page, "Bench").click();
  await page.getByRole("button", { name: "Start the first series" }).click();
  // DS 500 mL x about 1.006 x 3.00 %: dose in kg/t is close to 1000 x V x 0.002 / 15.1
  const jars: [string, string, string][] = [
    ["15", "390", "16.1"],
    ["22.6", "150", "18.2"],
    ["30.2", "64", "19.6"],
    ["37.7", "46", "20.6"],
    ["45.3", "56", "21.2"],
    ["60.4", "131", "21.4"],
  ];
  for (const [index, [syringe, ntu, cake]] of [...jars, ...jars].entries()) {
    await page.getByRole("button", { name: "Add a jar" }).click();
    const jar = index + 1;
    await enter(page, new RegExp(`^jar ${jar}, syringe A`), syringe);
    await enter(page, new RegExp(`^jar ${jar}, turbidity`), String(Number(ntu) * (index < 6 ? 1 : 1.06)));
    await enter(page, new RegExp(`^jar ${jar}, cake TS`), String(Number(cake) + (index < 6 ? 0 : 0.2)));
  }
  await expect(room(page, "Bench")).toContainText("12 jars");
  await expect(room(page, "Curves")).toContainText(/fitted|look closer/);

  await room(page, "Curves").click();
  await expect(page.getByRole("img", { name: /Turbidity against dose/ })).toBeVisible();
  await page.getByRole("button", { name: "Table" }).first().click();
  await expect(page.getByRole("region", { name: /Turbidity, as a table/ })).toBeVisible();

  await room(page, "Dose").click();
  await enter(page, /Filtrate turbidity at most/, "80");
  await enter(page, /Cake TS at least/, "19");
  await expect(page.getByText("Working window", { exact: true })).toBeVisible();
  await page.getByRole("button", { name: /Look at cheapest dose/ }).click();
  await page.getByRole("button", { name: "Approve this dose" }).click();
  await expect(page.getByText(/Say why this dose/)).toBeVisible();
  await page.getByLabel("Reason").fill("cheapest inside both limits");
  await page.getByLabel("Name", { exact: true }).fill("A. Tester");
  await page.getByRole("button", { name: "Approve this dose" }).click();
  await expect(room(page, "Dose")).toContainText("approved");

  await room(page, "Plant").click();
  await expect(page.getByText("Before setting a pump")).toBeVisible();
  await page.getByRole("button", { name: "Add usual feed" }).click();
  await enter(page, /^Flow/, "12");
  await page.getByRole("button", { name: /Say how Product 1 is made down/ }).click();
  await enter(page, /Solution strength, active/, "0.2");
  await page.getByRole("button", { name: "Add a pump" }).click();
  for (const [i, [setting, amount]] of [
    ["20", "30"],
    ["50", "84"],
    ["90", "157"],
  ].entries()) {
    await page.getByRole("button", { name: "Add a draw-down" }).click();
    // Draw-downs are listed by setting; a new one starts as a copy of the last, so it is the last in the list.
    await enter(page, new RegExp(`^draw-down ${i + 1}, amount`), amount!);
    await enter(page, new RegExp(`^draw-down ${i + 1}, setting`), setting!);
  }
  await expect(room(page, "Plant")).toContainText("mL/min");
  await expect(room(page, "Plant")).toContainText("not checked");

  // An edit upstream: everything to its right is out of date at once, and undo brings it back.
  await room(page, "Sample").click();
  await enter(page, /dish 1, dried/, "51.1");
  await expect(room(page, "Dose")).toContainText("out of date");
  await expect(room(page, "Plant")).toContainText("out of date");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(room(page, "Dose")).toContainText("approved");
});

// The page rightly complains while its host is dead, so its complaints are not watched here.
test("an edit is on disk before it says saved, and a killed host loses nothing", async ({ app, page }) => {
  const first = await app.host("kill.flocwright", true);
  await page.goto(first.url);
  await room(page, "Bench").click();
  await enter(page, /^jar 4, turbidity/, "144");
  await expect(page.getByRole("status").filter({ hasText: /^saved/ })).toBeVisible();
  await first.kill("SIGKILL");

  const second = await app.host("kill.flocwright", false);
  await page.goto(second.url);
  await expect(page.getByText(/ended without closing it/)).toBeVisible();
  await room(page, "Bench").click();
  await expect(page.getByLabel(/^jar 4, turbidity/)).toHaveValue("144");
  await page.getByRole("button", { name: "Undo" }).click();
  await expect(page.getByLabel(/^jar 4, turbidity/)).toHaveValue("146");
  await page.getByRole("button", { name: "Redo" }).click();
  await expect(page.getByLabel(/^jar 4, turbidity/)).toHaveValue("144");
});

test("refused text is offered again after a reload", async ({ app, watched: page }) => {
  const host = await app.host("draft.flocwright", true);
  await page.goto(host.url);
  await room(page, "Bench").click();
  const cell = page.getByLabel(/^jar 5, turbidity/);
  await cell.fill("12 abc");
  await cell.press("Tab");
  await expect(page.getByText(/is more than a number/)).toBeVisible();
  await expect.poll(() => draftsIn(join(app.folder, "draft.flocwright"))).toContain("12 abc");
  await page.reload();
  await room(page, "Bench").click();
  await expect(page.getByLabel(/^jar 5, turbidity/)).toHaveValue("12 abc");
  await expect(page.getByText(/is more than a number/)).toBeVisible();
});

test("decimal commas and US units change every number shown and none that is stored", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("units.flocwright", true);
  await page.goto(host.url);
  await room(page, "Record").click();
  await page.getByLabel("Decimal mark").selectOption(",");
  await expect(room(page, "Sample")).toContainText("TS 2,48");
  await page.getByLabel("Units shown").selectOption("us");
  await expect(room(page, "Dose")).toContainText("10,4 lb/short ton");
  await room(page, "Bench").click();
  await enter(page, /^jar 6, cake TS/, "18,9");
  await expect(page.getByLabel(/^jar 6, cake TS/)).toHaveValue("18,9");
  const cell = page.getByLabel(/^jar 7, cake TS/);
  await cell.fill("18.9");
  await cell.press("Tab");
  await expect(page.getByText(/the decimal mark here is a comma/)).toBeVisible();
});

test("two polymers: a contour, the cheapest pair, and both letters at the plant", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("pair.flocwright", true);
  await page.goto(host.url);
  await page.getByLabel("Series").first().selectOption({ label: "C-40 then E-42" });
  await room(page, "Curves").click();
  await expect(page.getByRole("img", { name: /Contours over both doses/ })).toBeVisible();
  await room(page, "Dose").click();
  await expect(page.getByText(/Cheapest within all limits/)).toBeVisible();
  await page.getByRole("button", { name: "Look at it" }).first().click();
  await page.getByLabel("Reason").fill("cheapest pair");
  await page.getByLabel("Name", { exact: true }).fill("A. Tester");
  await page.getByRole("button", { name: "Approve this dose" }).click();
  await room(page, "Plant").click();
  await expect(page.getByText("Coagulant C-40 (invented)").first()).toBeVisible();
  await expect(page.getByText("Flocculant E-42 (invented)").first()).toBeVisible();
});

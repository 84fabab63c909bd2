import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";
import { pressButton, tabTo, type } from "./keyboard.ts";

const strip = (page: Page, name: string) =>
  page.getByRole("navigation").getByRole("link", { name: new RegExp(`^${name}`) });

test("the whole job by keyboard alone, from a new study to the setting sheet", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(180_000);
  const host = await app.host("keys.flocwright", true);
  await page.goto(host.url);
  await expect(strip(page, "Sample")).toContainText("TS 2.48");

  // a study of one's own
  await page.keyboard.press("Control+6");
  await pressButton(page, "Close and open another");
  await type(page, "Name of the study", "By keys alone");
  await pressButton(page, "Start a new study");
  await expect(page.getByRole("heading", { name: "Start with the sample" })).toBeVisible();

  // sample dishes: Tab goes from mass to mass
  await pressButton(page, "Add the first sample");
  await tabTo(page, page.getByLabel(/dish 1, empty dish/));
  for (const [dish, masses] of [
    [1, ["50.1", "80.3", "51.0", "50.34"]],
    [2, ["49.2", "79.1", "50.1", "49.44"]],
  ] as const)
    for (const [i, name] of ["empty dish", "with wet sludge", "dried at 105 °C", "ashed at 550 °C"].entries())
      await type(page, new RegExp(`dish ${dish}, ${name}`), masses[i]!);
  await expect(strip(page, "Sample")).toContainText("TS 3.00 %");
  await expect(strip(page, "Sample")).toContainText("final");

  // refused text stays where the focus comes back to, Escape takes it away
  await tabTo(page, page.getByLabel(/dish 1, dried/), "Shift+Tab");
  await page.keyboard.press("ControlOrMeta+A");
  await page.keyboard.type("5.1.0");
  await page.keyboard.press("Enter");
  await expect(page.getByRole("alert").filter({ hasText: /has more than one mark/ })).toBeVisible();
  await expect(page.getByLabel(/dish 1, dried/)).toBeFocused();
  await page.keyboard.press("Escape");
  await expect(page.getByLabel(/dish 1, dried/)).toHaveValue("51");

  // product and stock
  await pressButton(page, "Add a product");
  await type(page, /Active share of the neat product/, "40");
  await type(page, /Density, neat/, "1.05");
  await type(page, /Price of the neat product/, "3");
  await pressButton(page, "Add a stock solution");
  await type(page, /Neat product weighed in/, "2.5");
  await type(page, /Whole solution/, "500");
  await expect(page.getByText("which is, as supplied")).toBeVisible();

  // a series, its jars with their readings
  await page.keyboard.press("Control+2");
  await pressButton(page, "Start the first series");
  const jars: [string, string, string][] = [
    ["15", "390", "16.1"],
    ["22.6", "150", "18.2"],
    ["30.2", "64", "19.6"],
    ["37.7", "46", "20.6"],
    ["45.3", "56", "21.2"],
    ["60.4", "131", "21.4"],
  ];
  for (const [index, [syringe, ntu, cake]] of [...jars, ...jars].entries()) {
    await pressButton(page, "Add a jar");
    const jar = index + 1;
    await type(page, new RegExp(`^jar ${jar}, syringe A`), syringe);
    await type(page, new RegExp(`^jar ${jar}, turbidity`), String(Number(ntu) * (index < 6 ? 1 : 1.06)));
    await type(page, new RegExp(`^jar ${jar}, cake TS`), String(Number(cake) + (index < 6 ? 0 : 0.2)));
  }
  await expect(strip(page, "Bench")).toContainText("12 jars");
  await expect(strip(page, "Curves")).toContainText(/fitted|look closer/);

  // the curves, their dose line and their table
  await page.keyboard.press("Control+3");
  await expect(page.getByRole("img", { name: /Turbidity against dose/ })).toBeVisible();
  const slider = page.getByRole("slider", { name: /^Dose looked at/ });
  await tabTo(page, slider);
  const before = await slider.getAttribute("aria-valuetext");
  for (let i = 0; i < 20; i++) await page.keyboard.press("ArrowRight");
  await expect(slider).not.toHaveAttribute("aria-valuetext", before!);
  await pressButton(page, "Table");
  const table = page.getByRole("region", { name: /Turbidity, as a table/ });
  await tabTo(page, table);
  await expect(table).toBeFocused();

  // the dose: limits, a rule's dose, a reason and a name
  await page.keyboard.press("Control+4");
  await type(page, /Filtrate turbidity at most/, "80");
  await type(page, /Cake TS at least/, "19");
  await expect(page.getByText("Working window", { exact: true })).toBeVisible();
  await pressButton(page, /Look at cheapest dose/);
  await pressButton(page, "Approve this dose");
  await expect(page.getByRole("alert").filter({ hasText: "Say why this dose" })).toBeVisible();
  await tabTo(page, page.getByLabel("Reason"), "Shift+Tab");
  await page.keyboard.type("cheapest inside both limits");
  await tabTo(page, page.getByLabel("Name", { exact: true }));
  await page.keyboard.type("A. Tester");
  await pressButton(page, "Approve this dose");
  await expect(strip(page, "Dose")).toContainText("approved");

  // the plant: feed, make-down, a pump with its draw-downs
  await page.keyboard.press("Control+5");
  await pressButton(page, "Add usual feed");
  await type(page, /^Flow/, "12");
  await pressButton(page, /Say how Product 1 is made down/);
  await type(page, /Solution strength, active/, "0.2");
  await pressButton(page, "Add a pump");
  for (const [i, [setting, amount]] of [
    ["20", "30"],
    ["50", "84"],
    ["90", "157"],
  ].entries()) {
    await pressButton(page, "Add a draw-down");
    await type(page, new RegExp(`^draw-down ${i + 1}, amount`), amount!);
    await type(page, new RegExp(`^draw-down ${i + 1}, setting`), setting!);
  }
  await expect(strip(page, "Plant")).toContainText("mL/min");

  // the settings table asks for a person; one is put down and chosen, still without a hand on the mouse
  await pressButton(page, "Approve these settings");
  await expect(page.getByRole("alert").filter({ hasText: "Say who you are first" })).toBeVisible();
  await page.keyboard.press("Control+6");
  await pressButton(page, "Add a person");
  await type(page, "Name of Person 1", "A. Tester");
  const me = page.getByRole("combobox", { name: "You are" });
  await tabTo(page, me, "Shift+Tab");
  await page.keyboard.press("ArrowDown");
  await expect(me).toHaveValue("A. Tester");
  await page.keyboard.press("Control+5");
  await pressButton(page, "Approve these settings");
  await expect(page.getByRole("button", { name: "Approve these settings anew" })).toBeVisible();
  await pressButton(page, "Setting sheet");
  await expect(page.getByText("Setting sheet", { exact: true }).first()).toBeVisible();
  await expect(page.getByText(/By keys alone/).first()).toBeVisible();
});

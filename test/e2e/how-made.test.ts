import type { Page } from "@playwright/test";
import { expect, test } from "./app.ts";
import { axeFaults } from "./axe.ts";

const how = (page: Page, title: RegExp) =>
  page.getByRole("button", { name: new RegExp(`^How was this made: ${title.source}`) });

test("rows of numbers say how they were made: formula, inputs with units, source", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("made.flocwright", true);
  await page.goto(host.url);
  await page.locator('[data-room="dose"]').click();
  for (const title of [
    /cheapest dose within all limits/,
    /cost of a tonne of dry solids/,
    /range of the quoted dose/,
  ])
    await expect(how(page, title)).toBeVisible();
  // by keys alone
  await how(page, /cost of a tonne of dry solids/).focus();
  await page.keyboard.press("Enter");
  const told = page.getByRole("dialog");
  await expect(told).toContainText("dose x price / active share");
  await expect(told).toContainText(/disposal of wet cake.*EUR\/t/s);
  await expect(told).toContainText("Source: mass balance");
  await page.keyboard.press("Escape");
  await expect(told).toBeHidden();

  await page.locator('[data-room="plant"]').click();
  await expect(page.locator('[data-room="plant"].here')).toBeVisible();
  await page.evaluate(() => {
    for (const one of document.querySelectorAll("main details")) (one as HTMLDetailsElement).open = true;
  });
  await expect(how(page, /settings at .* % TS/)).toHaveCount(5);
  await expect(how(page, /flow of draw-down/).first()).toBeAttached();
  await expect(how(page, /limits of the drift watch/)).toBeAttached();
  await page.getByRole("button", { name: "Open Trial 1, settled" }).click();
  for (const way of [
    /dose by draw-down/,
    /dose by container's loss of mass/,
    /dose by pump line at the setting/,
  ])
    await expect(how(page, way)).toBeVisible();
  await how(page, /dose by draw-down/).click();
  await expect(page.getByRole("dialog")).toContainText(/caught in the run.*\d+ mL/s);
  await expect(page.getByRole("dialog")).not.toContainText("active by pump line");
});

interface Told {
  title: RegExp;
  formula: string;
  /** an input by its name and its value with the unit */
  input: RegExp;
  source: string;
}

/** Opens what stands behind each number of a room, reads it, and closes it again by the keyboard. */
async function readAll(page: Page, told: Told[]): Promise<void> {
  const unfold = () =>
    page.evaluate(() => {
      for (const one of document.querySelectorAll("main details")) (one as HTMLDetailsElement).open = true;
    });
  const dialog = page.getByRole("dialog");
  for (const { title, formula, input, source } of told) {
    // what stands beside a room's main thing comes a moment after it
    await expect(async () => {
      await unfold();
      await expect(how(page, title).first()).toBeVisible({ timeout: 500 });
    }).toPass();
    await how(page, title).first().click();
    await expect(dialog).toHaveCount(1);
    await expect(dialog).toContainText(formula);
    await expect(dialog.locator("dl")).toHaveText(input);
    await expect(dialog).toContainText(`Source: ${source}`);
    await page.keyboard.press("Escape");
    await expect(dialog).toBeHidden();
    await expect(how(page, title).first()).toBeFocused();
  }
}

const bounds = "standard statistics, recomputed independently for a straight line";
const ranking = "Hurvich and Tsai 1989";

const behind: Record<string, Told[]> = {
  sample: [
    {
      title: /recipe of E-42 at 0\.2 %/,
      formula: "neat = wanted strength x whole solution / active share",
      input: /wanted strength\s*0\.2 %.*whole solution\s*500 g/s,
      source: "mass balance",
    },
    {
      title: /times of E-42 at 0\.2 %/,
      formula: "mixing started + ageing",
      input: /ageing\s*30 min.*life\s*8 h/s,
      source: "common practice, no source",
    },
  ],
  bench: [
    {
      title: /how well a dose is known/,
      formula: "twice (k = 2) the square root",
      input: /syringe good to ±\s*0\.5 mL/,
      source: "JCGM 100:2008",
    },
    {
      title: /doses of the plan/,
      formula: "lowest x (highest / lowest)^((i - 1) / (steps - 1))",
      input: /lowest dose\s*1 kg\/t.*highest dose\s*10 kg\/t/s,
      source: "usual designs, from memory",
    },
    {
      title: /syringe volumes of A in the plan/,
      formula: "dose x sample volume x sludge density x total solids",
      input: /sample volume\s*500 mL.*strength of solution A\s*0\.2 %/s,
      source: "mass balance, recomputed independently",
    },
    {
      title: /blank water of the plan/,
      formula: "most that is added to any jar",
      input: /most that is added\s*62\.\d+ mL/,
      source: "usual designs, from memory",
    },
    {
      title: /the flag "over range"/,
      formula: "re-reads apart by more than 10 %",
      input: /A reading of jar 1 is over the instrument's range/,
      source: "common practice, no source",
    },
    {
      title: /next jars of Turbidity/,
      formula: "shrink the variance of the best dose most",
      input: /best dose of the model\s*5\.2\d* kg\/t/,
      source: "standard theory of designs",
    },
    {
      title: /best dose of Drained/,
      formula: "dose that reaches this share of the gain",
      input: /share of the gain\s*95 %/,
      source: "algebra of the models",
    },
  ],
  curves: [
    {
      title: /what the curves say at the dose looked at/,
      formula: "each response from its own curve",
      input: /dose x, active\s*5\.2 kg\/t.*Turbidity\s*ln = b0 \+ b1 ln x/s,
      source: bounds,
    },
    {
      title: /Turbidity at the dose looked at/,
      formula: "ln fitted = b0 + b1 ln x + b2 (ln x)^2 + b3 (ln x)^3",
      input: /dose x, active\s*5\.2 kg\/t.*Student's t, one-sided 95 %\s*1\.86.*upper bound\s*47\.4 NTU/s,
      source: bounds,
    },
    {
      title: /best dose of Turbidity/,
      formula: "F(1, n - p) / (n - p)",
      input: /its own interval\s*5\.08 to 5\.32\d* kg\/t|its own interval\s*5\.0.* kg\/t/,
      source: "Fieller 1954",
    },
    {
      title: /the jar that moves Turbidity most/,
      formula: "refitted without each jar",
      input: /best dose without that jar\s*5\.1\d* kg\/t/,
      source: "standard statistics; Beaton and Tukey",
    },
    {
      title: /residuals of Turbidity/,
      formula: "(ln read - ln fitted) / s",
      input: /jars\s*12 jars.*sum of squares of the residuals\s*0\.04494/s,
      source: bounds,
    },
    {
      title: /AICc of the models of Turbidity/,
      formula: "n ln(rss / n) + 2K",
      input: /cubic log\s*n 12, K 5, rss 0\.04494/,
      source: ranking,
    },
    {
      title: /lack of fit of the models of Turbidity/,
      formula: "F = ((rss - repeats) / (cells - p))",
      input: /its degrees of freedom\s*6.*cubic log\s*rss 0\.04494, F 0\.\d+ on 2 and 6/s,
      source: ranking,
    },
    {
      title: /best doses of the models of Turbidity/,
      formula: "profile of its sum of squares",
      input: /cubic log\s*5\.2\d* kg\/t/,
      source: "Fieller 1954",
    },
  ],
  dose: [
    {
      title: /where turbidity at most 80 NTU holds/,
      formula: "one-sided 95 % bound of the mean curve meets it",
      input: /dose x, active\s*5\.2 kg\/t.*one-sided 95 % bound there\s*47\.4 NTU/s,
      source: "standard statistics; the guard band",
    },
    {
      title: /working window/,
      formula: "overlap of the doses",
      input: /cake TS at least 18\.5 %\s*4\.12 to 7\.99 kg\/t/,
      source: "standard statistics; the guard band",
    },
    {
      title: /best dose of Cake TS/,
      formula: "a dose is named only where",
      input: /90 % of the gain reached at\s*5\.9\d* kg\/t/,
      source: "Fieller 1954",
    },
    {
      title: /cost against dose/,
      formula: "dose x price / active share",
      input: /dose, active\s*5\.2 kg\/t.*price of the neat product\s*3\.2 EUR\/kg/s,
      source: "mass balance, recomputed independently",
    },
    {
      title: /filtrate, NTU at the doses of the rules/,
      formula: "ln fitted",
      input: /upper bound\s*[\d.]+ NTU/,
      source: bounds,
    },
    {
      title: /capture, % at the doses of the rules/,
      formula: "R = C (F - (1 + d) E) / (F (C - E))",
      input: /TSS of the feed\s*2\.38 %.*filtrate TSS, fitted\s*[\d.]+ mg\/L/s,
      source: "three-stream mass balance",
    },
    {
      title: /distance to the failing edge/,
      formula: "nearest end of the doses at which a limit holds",
      input: /turbidity at most 80 NTU\s*3\.64 to 7\.05 kg\/t/,
      source: "standard statistics; the guard band",
    },
    {
      title: /chance to miss/,
      formula: "share of simulated jars",
      input: /drift of the feed's solids \(1 sd\)\s*6 %.*draws, from seed\s*1000, 1/s,
      source: "simulation from a fixed seed",
    },
    {
      title: /change against today/,
      formula: "cost at today's dose",
      input: /today's dose, active\s*6\.4 kg\/t/,
      source: "simulation from a fixed seed",
    },
    {
      title: /range of the quoted dose/,
      formula: "in quadrature (k = 2)",
      input: /half of the fit's interval\s*none for this dose/,
      source: "JCGM 100 for the sum",
    },
  ],
  plant: [
    {
      title: /disposal a year/,
      formula: "wet cake x hours a day x days a year",
      input: /disposal of wet cake\s*90 EUR\/t/,
      source: "mass balance",
    },
    {
      title: /dose while the solids drift/,
      formula: "dose now = dose set",
      input: /total solids it was set at\s*2\.48\d* %/,
      source: "mass and volume balance",
    },
    {
      title: /lack of fit of the pump line/,
      formula: "squares between repeats",
      input: /mL\/min/,
      source: "standard statistics; stroke times speed",
    },
    {
      title: /Loading/,
      formula: "dry-solids load / effective width",
      input: /highest allowed\s*50 kg\/h·m/,
      source: "limits as entered",
    },
  ],
};

test("every number of curves, limits, plans and recipes opens its formula, inputs with units, and source", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(120_000);
  const host = await app.host("behind.flocwright", true);
  await page.goto(host.url);
  for (const [room, told] of Object.entries(behind)) {
    await page.locator(`[data-room="${room}"]`).click();
    await expect(page.locator(`[data-room="${room}"].here`)).toBeVisible();
    await readAll(page, told);
  }
  await page.evaluate(() => (location.hash = "#/studies"));
  await readAll(page, [
    {
      title: /Filtrate of the studies/,
      formula: "mean of the study's own fitted curve",
      input: /E-42 alone, at 5\.2 kg\/t\s*44\.4 NTU/,
      source: bounds,
    },
    {
      title: /Cost of the studies/,
      formula: "at the approved dose with the study's own prices",
      input: /polymer [\d.]+ \+ disposal [\d.]+ \+ return [\d.]+ EUR/,
      source: "mass balance",
    },
  ]);
});

test("two polymers and US customary units", async ({ app, watched: page }) => {
  const host = await app.host("pair-made.flocwright", true);
  await page.goto(host.url);
  await page.locator('[data-room="record"]').click();
  await page.getByLabel("Units").selectOption("us");
  await page.getByLabel("Series").first().selectOption({ label: "C-40 then E-42" });
  await page.locator('[data-room="dose"]').click();
  await readAll(page, [
    {
      title: /cheapest pair within all limits/,
      formula: "grid of 121 by 121 pairs",
      input:
        /dose A, active\s*6\.943 kg\/t \(13\.89 lb\/short ton\).*turbidity at most 80 NTU\s*one-sided 95 % bound there: \d/s,
      source: "standard statistics; the guard band",
    },
    {
      title: /best dose of Turbidity/,
      formula: "slope is 0 in both doses",
      input: /stationary point\s*minimum.*dose B, active\s*3\.3\d* kg\/t \(6\.6\d* lb\/short ton\)/s,
      source: "Box and Draper",
    },
    {
      title: /Cake TS at the pair looked at/,
      formula: "b0 + b1 u + b2 v",
      input: /b12\s*0\.1725.*lower bound\s*20\.65 %/s,
      source: bounds,
    },
    {
      title: /cost at the pair looked at/,
      formula: "dose A x price A / active share A",
      input: /price of B, neat\s*3\.2 EUR\/kg/,
      source: "mass balance",
    },
  ]);
  await page.locator('[data-room="curves"]').click();
  await readAll(page, [
    {
      title: /Turbidity at the pair looked at/,
      formula: "ln fitted = b0 + b1 u",
      input: /u, dose A coded\s*0\.3167/,
      source: bounds,
    },
  ]);
});

test("tables of models and limits with their buttons, and what opens, break no rule axe can see", async ({
  app,
  watched: page,
}) => {
  test.setTimeout(90_000);
  const host = await app.host("axe-made.flocwright", true);
  await page.goto(host.url);
  await page.locator('[data-room="curves"]').click();
  await expect(how(page, /best dose of Turbidity/)).toBeVisible();
  await page.locator("summary", { hasText: "Models compared" }).first().click();
  await page.locator("summary", { hasText: "Residuals" }).first().click();
  await how(page, /AICc of the models of Turbidity/).press("Enter");
  await expect(page.getByRole("dialog")).toBeVisible();
  expect(await axeFaults(page, "models", "all")).toEqual([]);
  await page.locator('[data-room="dose"]').click();
  await how(page, /where turbidity/).press("Enter");
  await expect(page.getByRole("dialog")).toBeVisible();
  expect(await axeFaults(page, "limits", "all")).toEqual([]);
});

import { rmSync } from "node:fs";
import { join } from "node:path";
import type { Page } from "@playwright/test";
import { german } from "../../src/words/german/all.ts";
import { flatTexts, wholeEnglish } from "../unit/words/catalogue.ts";
import { expect, test } from "./app.ts";

test.use({ locale: "de-DE" });

/** What a page says, to the eye and to a screen reader. */
function everythingSaid(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    for (const fold of document.querySelectorAll("details")) fold.open = true;
    const named = [...document.querySelectorAll("[aria-label], [title], [placeholder], [aria-valuetext]")];
    return [
      ...(document.querySelector("#app") as HTMLElement).innerText.split("\n"),
      ...named.flatMap((element) =>
        ["aria-label", "title", "placeholder", "aria-valuetext"].map(
          (name) => element.getAttribute(name) ?? "",
        ),
      ),
    ];
  });
}

/** Small words that English sentences cannot do without and German does not have. */
const englishWords =
  /(?<![\p{L}-])(the|and|of|with|without|from|not|is|are|were|has|have|by|at|to|for|it|its|this|that|no|or|on|jars?|missing|dose|sludge|settings?|pump)(?![\p{L}-])/iu;

async function english(page: Page): Promise<string[]> {
  const whole = flatTexts(await wholeEnglish());
  const table = flatTexts(german);
  const translated = new Set(
    [...whole].filter(([path, text]) => table.get(path) !== text && text.length > 3).map(([, text]) => text),
  );
  const germanTexts = new Set(table.values());
  return [...new Set(await everythingSaid(page))].filter(
    (line) =>
      line.trim() !== "" &&
      !germanTexts.has(line.trim()) &&
      (translated.has(line.trim()) || englishWords.test(line.replace(/\(Standard Methods[^)]*\)/g, ""))),
  );
}

test("the whole demo speaks German in every room, with a decimal comma", async ({ app, watched: page }) => {
  test.setTimeout(120_000);
  const host = await app.host("leer.flocwright", true);
  await page.goto(host.url);
  await page.goto(`${new URL(host.url).origin}/#/record`);
  await page.getByRole("button", { name: "Schließen und andere öffnen" }).click();
  // The study that the host began with was written by the terminal, in English: its own words are no part of this.
  await page.getByRole("button", { name: /aus der Liste nehmen$/ }).click();
  rmSync(join(app.folder, "leer.flocwright"));
  expect(await english(page)).toEqual([]);
  await page.getByRole("button", { name: "Erfundenes Beispiel öffnen" }).click();
  const strip = page.getByRole("navigation");
  await expect(strip.getByRole("link", { name: /^Probe/ })).toContainText("TR 2,483 %");
  await expect(strip.getByRole("link", { name: /^Dosis/ })).toContainText("5,2 kg/t");
  expect(await page.evaluate(() => document.documentElement.lang)).toBe("de");
  const origin = new URL(page.url()).origin;
  const said: string[] = [];
  for (const [room, sign] of [
    ["sample", "Schalen"],
    ["bench", "Becher hinzufügen"],
    ["curves", "Tabelle"],
    ["dose", "Arbeitsfenster"],
    ["plant", "Messzylinder"],
    ["record", "Verlauf"],
    ["exchange", "Import"],
    ["studies", "Studien im Vergleich"],
    ["sheet", "Einstellblatt"],
    ["report", "Versuchsbericht"],
  ] as const) {
    await page.goto(`${origin}/#/${room}`);
    await expect(page.getByText(sign).first()).toBeVisible();
    for (const line of await english(page)) said.push(`${room}: ${line}`);
  }
  expect(said).toEqual([]);
});

test("the bar over the rooms is one row at 1280, in German and with a long name", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("bar.flocwright", true);
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto(host.url);
  await page.locator('[data-room="record"]').click();
  const name = page.getByRole("textbox", { name: "Name", exact: true }).first();
  await name.fill("Versuchsreihe mit einem Namen von 48 Buchstaben!");
  await name.press("Tab");
  await expect(page.getByRole("button", { name: /^Versuchsreihe/ })).toBeVisible();
  // One row of buttons, and none of them cut off at the right.
  const row = await page.getByRole("button", { name: "Rückgängig", exact: true }).boundingBox();
  const bar = await page.getByRole("banner").boundingBox();
  expect(bar!.height).toBeLessThan(2 * row!.height);
  const look = await page.getByRole("combobox", { name: "Darstellung" }).boundingBox();
  expect(look!.x + look!.width).toBeLessThanOrEqual(1280);
});

test("a study begun in German takes and shows decimal commas, and refuses in German", async ({
  app,
  watched: page,
}) => {
  const host = await app.host("leer.flocwright", true);
  await page.goto(host.url);
  await page.goto(`${new URL(host.url).origin}/#/record`);
  await page.getByRole("button", { name: "Schließen und andere öffnen" }).click();
  await page.getByLabel("Name der Studie").fill("Eigene Zahlen");
  await page.getByRole("button", { name: "Neue Studie beginnen" }).click();
  await page.getByRole("button", { name: "Alle Schritte" }).click();
  await expect(page.getByText("Pumpeneinstellungen ablesen")).toBeVisible();
  expect(await english(page)).toEqual([]);
  // No word of the bar stands on two lines, though German words are long.
  const lines = await page.locator("header.bar .pick > span, header.bar button").evaluateAll((parts) =>
    parts.map((part) => {
      const text = document.createRange();
      text.selectNodeContents(part);
      return new Set([...text.getClientRects()].map(({ top }) => Math.round(top))).size;
    }),
  );
  expect(lines.length).toBeGreaterThan(4);
  expect(lines.filter((count) => count !== 1)).toEqual([]);
  await page.keyboard.press("F1");
  await expect(page.getByRole("heading", { name: "Tasten und Wörter" })).toBeVisible();
  expect(await english(page)).toEqual([]);
  await page.keyboard.press("Escape");
  await page.getByRole("button", { name: "Erste Probe hinzufügen" }).click();
  for (const [what, mass] of [
    ["leere Schale", "50,1"],
    ["mit nassem Schlamm", "80,3"],
    ["getrocknet bei 105 °C", "51,0"],
  ] as const) {
    const cell = page.getByLabel(new RegExp(`Schale 1, ${what}`)).first();
    await cell.fill(mass);
    await cell.press("Tab");
  }
  await expect(page.getByRole("navigation").getByRole("link", { name: /^Probe/ })).toContainText("TR 2,98 %");
  const tare = page.getByLabel(/Schale 1, leere/).first();
  await tare.fill("viel");
  await tare.press("Tab");
  const why = page.getByRole("alert").filter({ hasText: /\S/ }).first();
  await expect(why).toBeVisible();
  expect((await why.innerText()).match(englishWords)).toBeNull();
  await expect(tare).toHaveValue("viel");
});

test("the language is chosen in the window, is kept, and comes back in the next one", async ({
  app,
  watched: page,
  browser,
}) => {
  const host = await app.host("leer.flocwright", true);
  await page.goto(host.url);
  await page.getByRole("button", { name: "Tasten und Wörter" }).click();
  await page.getByLabel("Sprache").selectOption("English");
  await expect(page.getByRole("button", { name: "Keys and words" })).toBeVisible();
  expect(await page.evaluate(() => document.documentElement.lang)).toBe("en");
  const other = await (await browser.newContext({ locale: "de-DE" })).newPage();
  await other.goto(`${new URL(host.url).origin}/#/record`);
  await expect(other.getByText(/Keys and words|Flocwright/).first()).toBeVisible();
  await other.context().close();
});

import { existsSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "./app.ts";
import { difference, smallPicture, type SmallPicture } from "./pictures.ts";

// The pictures to compare with lie beside this file as rows of numbers: small, and a change of them can be read.
// A wanted change of a room: FLOCWRIGHT_RENEW_PICTURES=1 npx playwright test test/e2e/pictures.test.ts, look at the
// rooms (npm run screens), and commit the new numbers.
const folder = join(import.meta.dirname, "pictures");
const renew = process.env["FLOCWRIGHT_RENEW_PICTURES"] === "1";
/** the share of cells that may differ: fonts and browsers differ by less, a lost panel by more */
const tolerated = 0.02;

function stored(name: string): SmallPicture | null {
  const path = join(folder, `${name}.json`);
  if (!existsSync(path)) return null;
  const { rows } = JSON.parse(readFileSync(path, "utf8")) as { rows: string[] };
  const numbers = rows.map((row) => row.split(" ").map(Number));
  return { columns: numbers[0]!.length, rows: numbers.length, cells: numbers.flat() };
}

function keep(name: string, picture: SmallPicture): void {
  const rows = Array.from({ length: picture.rows }, (_, row) =>
    picture.cells.slice(row * picture.columns, (row + 1) * picture.columns).join(" "),
  );
  mkdirSync(folder, { recursive: true });
  writeFileSync(join(folder, `${name}.json`), `${JSON.stringify({ rows }, null, 2)}\n`);
}

for (const [room, theme] of [
  ["sample", "light"],
  ["curves", "light"],
  ["plant", "light"],
  ["plant", "dark"],
] as const)
  test(`the ${room} room looks as it did, ${theme}`, async ({ app, watched: page }) => {
    await page.emulateMedia({ colorScheme: theme, reducedMotion: "reduce" });
    const host = await app.host("picture.flocwright", true);
    await page.goto(host.url);
    await page.locator(`[data-room="${room}"]`).click();
    await expect(page.locator('[data-room="curves"]')).toContainText("fitted");
    await page.evaluate(() => document.fonts.ready);
    // The demo is laid out from the present moment, so ages are the same words each day; clock times differ by a digit,
    // which the blur takes in.
    await page.waitForTimeout(room === "curves" ? 1500 : 500);
    const picture = await smallPicture(page);
    const name = `${room}-${theme}`;
    if (renew) keep(name, picture);
    const before = stored(name);
    expect(before, "no picture to compare with: see the head of this file").not.toBeNull();
    expect(difference(before!, picture)).toBeLessThanOrEqual(tolerated);

    // The comparison itself can fail: a panel taken away is seen.
    await page.evaluate(() =>
      document
        .querySelectorAll<HTMLElement>("main .card > *")
        .forEach((one) => one.style.setProperty("visibility", "hidden")),
    );
    expect(difference(before!, await smallPicture(page))).toBeGreaterThan(3 * tolerated);
  });

import { join } from "node:path";
import type { z } from "zod";
import { writeDemo } from "../../main/service/standalone.ts";
import type { Command, SimpleCommand } from "../../src/study/commands.ts";
import { demoCommands } from "../../src/study/demo.ts";
import { recordSchemas } from "../../src/study/schema/records.ts";
import { expect, test } from "./app.ts";

const rooms = ["sample", "bench", "curves", "dose", "plant", "record"];
const markup = "<img src=x onerror=alert(1)>";
let count = 0;
const marked = new Set<string>();

/** Every text of a record that takes any text at all becomes markup; ids, choices and moments stay. */
function spoil(command: SimpleCommand): SimpleCommand {
  if (command.do !== "add") return command;
  const shape = recordSchemas[command.kind].shape as Record<string, z.ZodType>;
  const record = { ...command.record };
  for (const [field, schema] of Object.entries(shape)) {
    if (field === "id" || field.endsWith("Id")) continue;
    const text = [`${markup}${count++}`, "<i>$</i>"].find((one) => schema.safeParse(one).success);
    if (text === undefined) continue;
    record[field] = text;
    marked.add(`${command.kind}.${field}`);
  }
  if (Array.isArray(record["snapshot"]))
    record["snapshot"] = record["snapshot"].map((value: object) => ({
      ...value,
      name: `${markup}${count++}`,
    }));
  return { ...command, record };
}

function spoilAll(command: Command): Command {
  return command.do === "together"
    ? { ...command, label: `${markup} ${command.label}`, commands: command.commands.map(spoil) }
    : spoil(command);
}

test("text that looks like HTML shows as text in every room", async ({ app, watched: page }) => {
  test.setTimeout(120_000);
  const fileName = `${markup}.flocwright`;
  const written = writeDemo(
    join(app.folder, fileName),
    (at) => demoCommands(at).map(spoilAll),
    new Date().toISOString(),
  );
  expect(written).toEqual({ ok: true, value: null });
  // names, notes, places, lots, reasons, blocks, settings: many fields of many kinds
  expect(marked.size).toBeGreaterThan(40);

  const dialogs: string[] = [];
  page.on("dialog", (dialog) => {
    dialogs.push(dialog.message());
    void dialog.dismiss();
  });
  const host = await app.host(fileName, false);
  await page.goto(host.url);

  const look = async (where: string) => {
    const found = await page.evaluate((text) => {
      const shown = [
        ...document.querySelectorAll("input, textarea, select, [aria-label], [title], option"),
      ].some((element) =>
        [
          (element as HTMLInputElement).value,
          element.getAttribute("aria-label"),
          element.getAttribute("title"),
        ].some((value) => value?.includes(text)),
      );
      return {
        made: document.querySelectorAll("[onerror], img[src='x'], i:not([class])").length,
        shown: shown || document.body.innerText.includes(text),
      };
    }, markup);
    expect(found, where).toEqual({ made: 0, shown: true });
  };

  for (const room of rooms) {
    await page.locator(`[data-room="${room}"]`).click();
    await expect(page.locator(`[data-room="${room}"].here`)).toBeVisible();
    await page.waitForTimeout(room === "curves" || room === "dose" ? 1200 : 300);
    // what folds open is opened: notes and details are mostly in there
    await page.evaluate(() => {
      for (const fold of document.querySelectorAll("details")) fold.open = true;
    });
    await page.waitForTimeout(200);
    await look(room);
  }
  await page.locator('[data-room="bench"]').click();
  await page
    .getByRole("button", { name: /^Details of jar/ })
    .first()
    .click();
  await look("a jar in detail");
  expect(dialogs).toEqual([]);
});

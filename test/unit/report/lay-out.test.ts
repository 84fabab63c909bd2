// @vitest-environment jsdom
import { expect, test } from "vitest";
import { layOut } from "../../../renderer/report/lay-out.ts";

const rows = (count: number) =>
  Array.from(
    { length: count },
    (_, row) => `<tr class="r${row}"><td>${row}</td><td>a &amp; b</td></tr>`,
  ).join("");
const article = `<article class="paper"><header>Head <b>bold</b> text</header><section id="one"><h2>Jars</h2><table class="plain"><thead><tr><th>jar</th></tr></thead><tbody>${rows(300)}</tbody></table></section><figure><svg>${"<g></g>".repeat(200)}</svg></figure>end</article>`;
const parsed = () => new DOMParser().parseFromString(article, "text/html").body;

test("a paper laid out in pieces is the very paper", async () => {
  const sheet = document.createElement("div");
  expect(await layOut(parsed(), sheet, () => true)).toBe(true);
  expect(sheet.innerHTML).toBe(parsed().innerHTML);
});

test("it is laid out in more than one piece, a drawing in one, and left off when asked to", async () => {
  const sheet = document.createElement("div");
  const seen: number[] = [];
  const done = await layOut(parsed(), sheet, () => {
    seen.push(sheet.querySelectorAll("tr").length);
    return seen.length < 3;
  });
  expect(done).toBe(false);
  expect(seen).toHaveLength(3);
  expect(seen[0]).toBeGreaterThan(0);
  expect(seen[2]).toBeLessThan(301);
  expect(sheet.querySelector("svg")).toBeNull();
});

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { glossary } from "../../renderer/help/glossary.ts";

const renderer = join(import.meta.dirname, "..", "..", "renderer");
const screens = readdirSync(renderer, { recursive: true, encoding: "utf8" })
  .filter((name) => name.endsWith(".vue"))
  .map((name) => readFileSync(join(renderer, name), "utf8"));
const terms = glossary.map(({ term }) => term as string);

test("every word that a screen explains stands in the glossary", () => {
  const used = screens.flatMap((text) => [
    ...[...text.matchAll(/<Term\b[^>]*?\sname="([^"]+)"/g)].map((found) => found[1]!),
    ...[...text.matchAll(/\sterm="([^"]+)"/g)].map((found) => found[1]!),
  ]);
  expect(used.length).toBeGreaterThan(20);
  expect(used.filter((name) => !terms.includes(name))).toEqual([]);
});

test("the glossary names each word once, in the order of the alphabet, and says what it means in a sentence", () => {
  expect(new Set(terms).size).toBe(terms.length);
  expect(terms).toEqual([...terms].sort((a, b) => (a.toLowerCase() < b.toLowerCase() ? -1 : 1)));
  for (const { term, means } of glossary) {
    expect(means, term).toMatch(/^[A-Z].*\.$/);
    expect(means.length, term).toBeLessThan(140);
  }
});

test("the trade's main words are all there", () => {
  for (const word of [
    "dose",
    "neat",
    "TS, VS, TSS",
    "stock solution",
    "make-down",
    "turndown",
    "filtrate turbidity",
    "capture",
    "cake",
    "CST",
    "SRF",
    "plateau",
    "knee",
    "interval",
    "working window",
    "draw-down",
    "bench-to-plant factor",
  ])
    expect(terms).toContain(word);
});

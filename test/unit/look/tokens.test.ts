import { readFileSync, readdirSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";

const renderer = join(import.meta.dirname, "..", "..", "..", "renderer");
const tokens = readFileSync(join(renderer, "styles", "tokens.css"), "utf8");
const files = readdirSync(renderer, { recursive: true, encoding: "utf8" })
  .filter((name) => /\.(vue|css|ts)$/.test(name) && !name.endsWith("tokens.css"))
  .map((name) => ({ name, text: readFileSync(join(renderer, name), "utf8") }));

/** The style of a component or a sheet; a component's script may speak of colours in words. */
const styleOf = ({ name, text }: { name: string; text: string }) =>
  name.endsWith(".css")
    ? text
    : [...text.matchAll(/<style[^>]*>([\s\S]*?)<\/style>/g)].map((one) => one[1]).join("\n");

const literal =
  /#[0-9a-f]{3,8}\b|\b(?:rgb|rgba|hsl|hsla|hwb|lab|lch|oklab|oklch)\(|:[^;{]*\b(?:black|white|red|green|blue|gr[ae]y|orange|yellow|purple|brown|navy|teal)\b/i;

test("no colour stands outside the tokens", () => {
  const found = files.flatMap((file) => {
    const lines = styleOf(file)
      .split("\n")
      .filter((line) => literal.test(line));
    const drawn = file.name.endsWith(".css")
      ? []
      : (file.text.match(/["'`]#[0-9a-f]{3,8}["'`]|["'`]rgba?\(/gi) ?? []);
    return [...lines, ...drawn].map((line) => `${file.name}: ${line.trim()}`);
  });
  expect(found).toEqual([]);
  expect(
    literal.test("color: #fff;") && literal.test("background: rgb(0 0 0)") && literal.test("color: red;"),
  ).toBe(true);
});

test("letters take their size from the scale; only what is printed counts in points", () => {
  const found = files.flatMap((file) =>
    [...styleOf(file).matchAll(/font-size:\s*([^;]+);/g)]
      .filter(([, size]) => !/^var\(--text(-[a-z]+)*\)$|^inherit$|^[\d.]+pt$/.test(size!))
      .map(([line]) => `${file.name}: ${line}`),
  );
  expect(found).toEqual([]);
});

test("every token that is used is there, and every token is used", () => {
  const known = new Set([...tokens.matchAll(/^\s+(--[a-z0-9-]+):/gm)].map((one) => one[1]!));
  const used = new Set(
    [...files.map(({ text }) => text), tokens].flatMap((text) =>
      [
        ...text.matchAll(
          /var\((--[a-z0-9-]+)|color\("(--[a-z0-9-]+)"\)|getPropertyValue\("(--[a-z0-9-]+)"\)/g,
        ),
      ].map((one) => one[1] ?? one[2] ?? one[3]!),
    ),
  );
  const foreign = [...used].filter((name) => !known.has(name) && !name.startsWith("--reka-"));
  expect(foreign).toEqual([]);
  expect([...known].filter((name) => !used.has(name))).toEqual([]);
});

/** The tokens of one look as they fall over each other, in the order of the sheet. */
function look(...blocks: string[]): (name: string) => string {
  const all = new Map<string, string>();
  for (const block of blocks) {
    const start = tokens.indexOf(`${block} {`);
    expect(start).toBeGreaterThanOrEqual(0);
    for (const [, name, value] of tokens
      .slice(start, tokens.indexOf("}", start))
      .matchAll(/(--[a-z-]+):\s*([^;]+);/g))
      all.set(name!, value!);
  }
  return (name) => all.get(name)!;
}

function lightness(hex: string): number {
  const [r, g, b] = [1, 3, 5].map((at) => {
    const share = parseInt(hex.slice(at, at + 2), 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r! + 0.7152 * g! + 0.0722 * b!;
}
// WCAG 2.2, contrast ratio: (L1 + 0.05) / (L2 + 0.05)
const contrast = (a: string, b: string) => {
  const [low, high] = [lightness(a), lightness(b)].sort((x, y) => x - y);
  return (high! + 0.05) / (low! + 0.05);
};

const light = ":root";
const dark = ':root[data-theme="dark"]';
const more = ':root[data-contrast="more"]';
const darkMore = ':root[data-theme="dark"][data-contrast="more"]';
describe.each([
  { name: "light", least: 4.5, frame: 3, of: look(light) },
  { name: "dark", least: 4.5, frame: 3, of: look(light, dark) },
  { name: "high contrast, light", least: 7, frame: 7, of: look(light, more) },
  { name: "high contrast, dark", least: 7, frame: 7, of: look(light, dark, more, darkMore) },
])("$name", ({ least, frame, of }) => {
  const pairs = [
    ...["--ink", "--ink-soft", "--accent", "--good", "--warn", "--bad", "--polymer-a", "--polymer-b"].flatMap(
      (ink) => ["--paper", "--sheet"].map((ground) => [ink, ground] as const),
    ),
    ["--ink", "--computed"],
    ["--ink-soft", "--computed"],
    ["--ink", "--accent-tint"],
    ["--accent-ink", "--accent"],
    ["--warn", "--warn-tint"],
    ["--bad", "--bad-tint"],
  ] as const;
  test.each(pairs)("%s on %s can be read", (ink, ground) => {
    expect(contrast(of(ink), of(ground))).toBeGreaterThanOrEqual(least);
  });
  test.each(["--paper", "--sheet"])("the frame of an entry stands out from %s", (ground) => {
    expect(contrast(of("--rule-strong"), of(ground))).toBeGreaterThanOrEqual(frame);
  });
});

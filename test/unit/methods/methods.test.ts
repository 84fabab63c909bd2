import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { format, resolveConfig } from "prettier";
import { expect, test } from "vitest";
import { methods } from "../../../src/methods/methods.ts";
import { methodsPage } from "../../../src/methods/page.ts";

const root = join(import.meta.dirname, "..", "..", "..");
const page = join(root, "docs", "methods.md");

// Domain code without a formula of its own: ways of reckoning that a method above rests on, or plain data.
const noFormula = [
  /^src\/curve\/(types|analyse-types|analyse-verdict|analyse-surface|analyse|blank-report|bands|problem)\.ts$/,
  /^src\/curve\/(deviance|distributions|estimate-result|fast-refit|fit|householder|least-squares)\.ts$/,
  /^src\/curve\/(minimise|plateau-fit|polynomial-fit|preview|random|surface-bootstrap)\.ts$/,
  /^src\/curve\/models\//,
  // round steps of a handle are no formula of the trade
  /^src\/choice\/target-steps\.ts$/,
  /^src\/bench\/run-steps\.ts$/,
  // the dose now running, read back from a pump's flow, is the rates turned round
  /^src\/plant\/present-dose\.ts$/,
];

test("the page is what the list makes of it", async () => {
  const wanted = await format(methodsPage(), { ...(await resolveConfig(page)), filepath: page });
  expect(readFileSync(page, "utf8"), "run npm run docs:methods").toBe(wanted);
});

test("every file that a method names is there, and the test files hold tests", () => {
  expect(new Set(methods.map(({ id }) => id)).size).toBe(methods.length);
  for (const { what, source, code, checks } of methods) {
    expect(source, what).not.toBe("");
    expect(checks.length, what).toBeGreaterThan(0);
    for (const path of code) expect(existsSync(join(root, path)), `${what}: ${path}`).toBe(true);
    for (const { file } of checks) {
      expect(existsSync(join(root, file)), `${what}: ${file}`).toBe(true);
      if (file.endsWith(".test.ts")) expect(readFileSync(join(root, file), "utf8")).toMatch(/\btest\(/);
    }
  }
});

test("every file of the domain that reckons is named by a method", () => {
  const files = (folder: string): string[] =>
    readdirSync(join(root, folder)).flatMap((name) =>
      statSync(join(root, folder, name)).isDirectory() ? files(`${folder}/${name}`) : [`${folder}/${name}`],
    );
  const named = new Set(methods.flatMap(({ code }) => code));
  const missing = ["sample", "product", "bench", "curve", "choice", "plant"]
    .flatMap((folder) => files(`src/${folder}`))
    .filter((path) => !named.has(path) && !noFormula.some((pattern) => pattern.test(path)));
  expect(missing).toEqual([]);
});

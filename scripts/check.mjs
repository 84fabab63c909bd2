// npm test: every check of the project, one after another; goes on past a failure and ends with a count.
import { spawn, spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { join } from "node:path";
import { findBrowser } from "./browser.mjs";

const root = join(import.meta.dirname, "..");
const reports = join(root, "test-results", "reports");
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });
const bin = (name) => join(root, "node_modules", ".bin", name);
const counts = { passed: 0, failed: 0, skipped: 0 };
const failures = [];
const skips = [];

function run(name, command, args, env = {}) {
  console.log(`\n== ${name}`);
  const started = Date.now();
  const result = spawnSync(command, args, { cwd: root, stdio: "inherit", env: { ...process.env, ...env } });
  const ok = result.status === 0;
  console.log(`${ok ? "ok" : "FAILED"}: ${name}, ${((Date.now() - started) / 1000).toFixed(1)} s`);
  return ok;
}

function settle(name, ok) {
  if (ok) counts.passed += 1;
  else {
    counts.failed += 1;
    failures.push(name);
  }
}

const check = (name, command, args) => settle(name, run(name, command, args));

/** Checks that do not wait for each other, side by side; each is printed whole once it has ended. */
async function checkTogether(checks) {
  await Promise.all(
    checks.map(
      ([name, command, args]) =>
        new Promise((done) => {
          const started = Date.now();
          const child = spawn(command, args, { cwd: root });
          let said = "";
          child.stdout.on("data", (chunk) => (said += chunk));
          child.stderr.on("data", (chunk) => (said += chunk));
          child.on("error", (error) => (said += error.message));
          child.on("close", (code) => {
            const seconds = ((Date.now() - started) / 1000).toFixed(1);
            console.log(`\n== ${name}\n${said}${code === 0 ? "ok" : "FAILED"}: ${name}, ${seconds} s`);
            settle(name, code === 0);
            done();
          });
        }),
    ),
  );
}

function browserOrInstall() {
  const found = findBrowser();
  if (found) return found;
  if (process.platform === "linux" && process.getuid?.() === 0 && existsSync("/usr/bin/apt-get")) {
    run("refresh the list of packages", "apt-get", ["update", "-q"]);
    run(
      "install a browser",
      "apt-get",
      ["install", "-y", "-q", "--no-install-recommends", "chromium", "poppler-utils", "fonts-dejavu-core"],
      {
        DEBIAN_FRONTEND: "noninteractive",
      },
    );
  }
  return findBrowser();
}

/** Every browser test of a report with how it ended. */
function ended({ suites = [], specs = [] }) {
  return [
    ...specs.map(({ title, tests }) => ({ title, status: tests[0]?.status })),
    ...suites.flatMap((suite) => ended(suite)),
  ];
}

function read(file) {
  return existsSync(file) ? JSON.parse(readFileSync(file, "utf8")) : null;
}

await checkTogether([
  ["types", bin("vue-tsc"), ["--noEmit", "-p", "tsconfig.json"]],
  ["lint", bin("eslint"), [".", "--max-warnings", "0"]],
  ["format", bin("prettier"), ["--check", ".", "--log-level", "warn"]],
  ["import rules", process.execPath, ["scripts/import-rules.mjs"]],
  ["no dead exports", process.execPath, ["scripts/dead-exports.mjs"]],
]);
check("build", bin("electron-vite"), ["build", "--logLevel", "warn"]);
check("what the first room loads", process.execPath, ["scripts/first-load.mjs"]);

const unitReport = join(reports, "unit.json");
const unitOk = run("unit, property, reference, contract, storage and security tests", bin("vitest"), [
  "run",
  "--reporter=default",
  "--reporter=json",
  `--outputFile.json=${unitReport}`,
]);
const unit = read(unitReport);
if (unit) {
  counts.passed += unit.numPassedTests;
  counts.failed += unit.numFailedTests;
  counts.skipped += unit.numPendingTests + unit.numTodoTests;
  for (const file of unit.testResults)
    for (const test of file.assertionResults) {
      if (test.status === "failed") failures.push(test.fullName);
      if (test.status === "pending" || test.status === "skipped") skips.push(test.fullName);
    }
}
if (!unitOk && (!unit || unit.numFailedTests === 0)) {
  counts.failed += 1;
  failures.push("the unit tests did not run to their end");
}

const browser = browserOrInstall();
if (browser) {
  const report = join(reports, "e2e.json");
  const ok = run("end-to-end tests in a browser", bin("playwright"), ["test"], { FLOCWRIGHT_REPORT: report });
  const stats = read(report)?.stats;
  if (stats) {
    counts.passed += stats.expected + stats.flaky;
    counts.failed += stats.unexpected;
    counts.skipped += stats.skipped;
    for (const { title, status } of ended(read(report))) {
      if (status === "unexpected") failures.push(`end to end: ${title}`);
      if (status === "flaky") skips.push(`nothing, but it passed only at the second try: ${title}`);
    }
    if (process.env.CI && stats.skipped > 0) {
      counts.failed += stats.skipped;
      failures.push("an end-to-end test was skipped");
    }
  }
  if (!ok && (!stats || stats.unexpected === 0)) {
    counts.failed += 1;
    failures.push("the end-to-end tests did not run to their end");
  }
} else {
  counts.skipped += 1;
  skips.push(
    "all end-to-end tests: no browser of the Chromium family was found, and none could be installed",
  );
  if (process.env.CI) {
    counts.failed += 1;
    failures.push("the end-to-end tests were skipped");
  }
}

for (const name of skips) console.log(`skipped: ${name}`);
for (const name of failures) console.log(`failed: ${name}`);
console.log(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`);
process.exit(counts.failed === 0 ? 0 : 1);

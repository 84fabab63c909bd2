import { spawnSync } from "node:child_process";
import { existsSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";

const entry = join(import.meta.dirname, "..", "..", "main", "headless.ts");
let folder = "";

function verb(...args: string[]): { code: number | null; out: string; error: string } {
  const result = spawnSync(process.execPath, [entry, ...args], { cwd: folder, encoding: "utf8" });
  return { code: result.status, out: result.stdout, error: result.stderr };
}

beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-paper-"));
  verb("demo", "d.flocwright");
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** A file that needs nothing else: no script, and no address of any kind. */
function expectSelfContained(written: string): void {
  // A picture stands in the page itself: what is no JPEG by its data address, to its last letter, stays and is found.
  const page = written.replaceAll(/<img src="data:image\/jpeg;base64,[A-Za-z0-9+/]+=*"/g, "<img");
  expect(page).not.toMatch(/<script|javascript:|\son\w+=/i);
  expect(page).not.toMatch(/\b(?:src|href|action|data|poster|srcset)=|url\(|@import|https?:|\/\/\w/i);
  expect(page).toContain("default-src &#39;none&#39;;");
}

describe("sheet", () => {
  test("writes one self-contained page, says what it set, and leaves the study as it was", () => {
    const before = readFileSync(join(folder, "d.flocwright"));
    const { code, out, error } = verb("sheet", "d.flocwright", "--out", "s.html");
    expect({ code, error }).toEqual({ code: 0, error: "" });
    expect(JSON.parse(out)).toEqual({
      file: "s.html",
      series: "E-42 alone",
      feed: "Day",
      status: "approved",
      missing: null,
      settings: [{ polymer: "a", pump: "Neat pump P1", setting: "94.9 %", words: null }],
    });
    const page = readFileSync(join(folder, "s.html"), "utf8");
    expectSelfContained(page);
    expect(page).toContain("94.9 %");
    expect(page).toContain("Dose approved by Jon R.");
    expect(readFileSync(join(folder, "d.flocwright")).equals(before)).toBe(true);
    expect(readdirSync(folder).sort()).toEqual(["d.flocwright", "s.html"]);
  });
  test("its history entry is the one that inspect names", () => {
    const { historyHead, changes } = JSON.parse(verb("inspect", "d.flocwright").out) as {
      historyHead: string;
      changes: number;
    };
    const page = readFileSync(join(folder, "s.html"), "utf8");
    expect(page).toContain(
      `history entry ${changes}, hash begins ${historyHead.slice(0, 8)} ${historyHead.slice(8, 16)}.`,
    );
  });
  test("another series and feed case can be named; what has no setting says why", () => {
    const { code, out } = verb(
      "sheet",
      "d.flocwright",
      "--out",
      "t.html",
      "--series",
      "C-40 then E-42",
      "--feed",
      "Night",
    );
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({
      status: "not approved",
      feed: "Night",
      missing: expect.stringMatching(/approve a dose/) as string,
    });
    expect(readFileSync(join(folder, "t.html"), "utf8")).toContain("NOT APPROVED: for discussion only");
  });
});

describe("report", () => {
  test("writes the whole trial as one self-contained page and leaves the study as it was", () => {
    const before = readFileSync(join(folder, "d.flocwright"));
    const { code, out, error } = verb("report", "d.flocwright", "--out", "r.html");
    expect({ code, error }).toEqual({ code: 0, error: "" });
    expect(JSON.parse(out)).toMatchObject({
      file: "r.html",
      samples: 1,
      decisions: 1,
      series: [{ label: "E-42 alone" }, { label: "C-40 then E-42" }],
    });
    const page = readFileSync(join(folder, "r.html"), "utf8");
    expectSelfContained(page);
    expect(page.match(/<img /g)).toHaveLength(1);
    expect(page).toContain("invented drawing, not a photograph");
    // seven responses with five residuals and four slices, limits, cost, the pump and the drift of cake and filtrate
    expect(page.match(/<svg /g)).toHaveLength(21);
    const { historyHead } = JSON.parse(verb("inspect", "d.flocwright").out) as { historyHead: string };
    expect(page).toContain(historyHead.replace(/(.{8})(?=.)/g, "$1 "));
    expect(readFileSync(join(folder, "d.flocwright")).equals(before)).toBe(true);
  });
});

describe("--language german", () => {
  test("writes both papers in German, while the terminal goes on in English", () => {
    const asSaid = verb("sheet", "d.flocwright", "--out", "de-s.html", "--language", "german");
    expect({ code: asSaid.code, error: asSaid.error }).toEqual({ code: 0, error: "" });
    expect(JSON.parse(asSaid.out)).toMatchObject({
      status: "approved",
      settings: [{ pump: "Neat pump P1", setting: "94.9 %" }],
    });
    const other = ["--series", "C-40 then E-42"];
    const gap = verb("sheet", "d.flocwright", "--out", "de-t.html", "--language", "german", ...other);
    expect(JSON.parse(gap.out)).toMatchObject({
      status: "not approved",
      missing: expect.stringMatching(/approve a dose/) as string,
    });
    expect(verb("report", "d.flocwright", "--out", "de-r.html", "--language", "german").code).toBe(0);
    const [sheet, gaps, report] = ["de-s.html", "de-t.html", "de-r.html"].map((name) =>
      readFileSync(join(folder, name), "utf8"),
    );
    for (const page of [sheet!, gaps!, report!]) {
      expectSelfContained(page);
      expect(page).toContain('<html lang="de">');
    }
    expect(sheet).toMatch(/Dosis freigegeben von Jon R\., \d\d\.\d\d\.\d{4} \d\d:\d\d UTC/);
    expect(gaps).toContain("NICHT FREIGEGEBEN: nur zur Besprechung");
    expect(report).toContain("Versuchsbericht: ");
  });
  test("English can be named too; another language is refused and nothing is written", () => {
    expect(verb("sheet", "d.flocwright", "--out", "en-s.html", "--language", "english").code).toBe(0);
    expect(readFileSync(join(folder, "en-s.html"), "utf8")).toContain('<html lang="en">');
    for (const name of ["sheet", "report"]) {
      const { code, out, error } = verb(name, "d.flocwright", "--out", "x.html", "--language", "latin");
      expect({ code, out }).toEqual({ code: 2, out: "" });
      expect(error.trim()).toBe('--language takes english or german, not "latin".');
      expect(existsSync(join(folder, "x.html"))).toBe(false);
    }
  });
});

describe("bad input: one sentence, exit 2, nothing written", () => {
  const refused: [string, string[], RegExp][] = [
    ["no study named", ["--out", "x.html"], /^Name one study/],
    ["no --out", ["d.flocwright"], /^--out is missing/],
    ["another ending", ["d.flocwright", "--out", "x.pdf"], /^x\.pdf: a paper's file name ends in \.html/],
    ["a file that is there", ["d.flocwright", "--out", "here.html"], /^here\.html: there is already a file/],
    ["a folder that is not", ["d.flocwright", "--out", "no/x.html"], /its folder does not exist/],
    ["a study that is not", ["n.flocwright", "--out", "x.html"], /^n\.flocwright: /],
    ["a file that is no study", ["here.html", "--out", "x.html"], /not a Flocwright study/],
    ["an unknown option", ["d.flocwright", "--out", "x.html", "--sideways"], /Unknown option/],
  ];
  for (const name of ["sheet", "report"])
    for (const [what, args, words] of refused)
      test(`${name}: ${what}`, () => {
        writeFileSync(join(folder, "here.html"), "mine");
        const { code, out, error } = verb(name, ...args);
        expect({ code, out }).toEqual({ code: 2, out: "" });
        expect(error).toMatch(words);
        expect(error.trim().split("\n")).toHaveLength(1);
        expect(existsSync(join(folder, "x.html"))).toBe(false);
        expect(readFileSync(join(folder, "here.html"), "utf8")).toBe("mine");
      });
  test("sheet: a series or feed case that is not there", () => {
    const ask = (...args: string[]) => verb("sheet", "d.flocwright", "--out", "x.html", ...args).error;
    expect(ask("--series", "Nine")).toMatch(/^d\.flocwright: there is no series called "Nine"\./);
    expect(ask("--feed", "Noon")).toMatch(/^d\.flocwright: there is no feed case called "Noon"\./);
    expect(existsSync(join(folder, "x.html"))).toBe(false);
  });
});

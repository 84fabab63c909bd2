// Enforces the dependency rules of DEVELOPERS.md: prints every offending import and fails on the first run that has one.
import { readdirSync, readFileSync, statSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";

const root = process.argv[2] ? resolve(process.argv[2]) : resolve(import.meta.dirname, "..");
const importPattern = /(?:from\s+|import\s*\(\s*|import\s+)["']([^"']+)["']/g;
const forbiddenGlobals =
  /(?<![.\w])(document|globalThis|localStorage|sessionStorage|navigator|process|setTimeout|setInterval)\b|(?<![.\w])window\.(addEventListener|document|location|matchMedia|crypto)|\b(Date\.now|Math\.random|performance\.now|crypto\.\w+)\b|new Date\(\)/;
const srcPackages =
  /^(zod|ml-matrix|papaparse|regression|d3-contour|@stdlib\/.+|read-excel-file(\/.+)?|write-excel-file(\/.+)?)$/;
// Which sibling folders each domain folder may use: curve knows numbers, choice knows curves, plant knows quantities.
const domainAllowed = {
  units: [],
  curve: [], // number text comes in as functions
  sample: ["units"],
  product: ["units"],
  bench: ["units", "sample", "product"],
  choice: ["units", "curve"],
  plant: ["units", "product"],
  words: [], // every folder may use the texts, and they rest on nothing
  responses: ["units", "sample", "bench", "curve"], // of curve only what a response has to say of its fit
  exchange: ["units", "responses"],
  methods: [],
  report: ["methods", "units", "curve", "choice", "plant", "bench", "responses", "study"],
};

function files(folder) {
  return readdirSync(folder).flatMap((name) => {
    const path = join(folder, name);
    if (statSync(path).isDirectory()) return files(path);
    return /\.(ts|vue|mjs)$/.test(name) && !name.endsWith(".d.ts") ? [path] : [];
  });
}

const faults = [];
for (const top of ["src", "main", "renderer"]) {
  for (const path of files(join(root, top))) {
    const text = readFileSync(path, "utf8");
    const here = relative(root, path).replaceAll("\\", "/");
    const fail = (why) => faults.push(`${here}: ${why}`);
    const lines = text.split("\n").length;
    if (lines > 401) fail(`has ${lines} lines; 400 is the limit`);
    if (/^index\.ts$/.test(here.split("/").pop()) && /export \* from/.test(text)) fail("is a barrel file");
    if (top === "src") {
      const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
      // Words are prose: a process in them is none of the machine.
      const hit = here.startsWith("src/words/") ? null : forbiddenGlobals.exec(code);
      if (hit) fail(`uses ${hit[0]}; time, ids and randomness arrive as arguments`);
    }
    for (const [, target] of text.matchAll(importPattern)) {
      if (!target.startsWith(".")) {
        if (target === "electron" && !here.startsWith("main/hosts/electron/")) fail("imports electron");
        if (target === "node:sqlite" && !here.startsWith("main/storage/")) fail("imports SQLite");
        if (top === "src" && !srcPackages.test(target)) fail(`imports ${target}; src/ is pure domain code`);
        if (top === "renderer" && target.startsWith("node:")) fail(`imports ${target}`);
        continue;
      }
      const aim = relative(root, resolve(dirname(path), target)).replaceAll("\\", "/");
      const aimTop = aim.split("/")[0];
      if (aim !== "package.json" && aimTop !== top && aimTop !== "src")
        fail(`imports ${aim}; ${top}/ may use itself and src/`);
      if (top === "src") {
        const [, from] = here.split("/");
        const [, to] = aim.split("/");
        if (
          from !== to &&
          to !== "outcome.ts" &&
          to !== "words" &&
          // A response keeps its words in every language in its own folder, so that a new one touches that folder only.
          !(/^src\/words\/\w+\/all\.ts$/.test(here) && /^src\/responses\/\w+\/all\.ts$/.test(aim)) &&
          from in domainAllowed &&
          !domainAllowed[from].includes(to)
        )
          fail(`imports ${aim}; src/${from} may use ${domainAllowed[from].join(", ") || "nothing else"}`);
      }
      if (here.startsWith("main/hosts/") && aim.startsWith("main/storage/"))
        fail(`imports ${aim}; hosts reach storage through the service`);
    }
  }
}
if (faults.length > 0) {
  process.stderr.write(faults.join("\n") + `\n${faults.length} import rule(s) broken\n`);
  process.exit(1);
}
process.stdout.write("import rules hold\n");

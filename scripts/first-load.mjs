// Adds up what a window loads before its first room can be used, compressed, and fails above the budget. The list is
// read from the build itself: what index.html names, what that imports, and what is fetched with each first room.
import { readFileSync } from "node:fs";
import { join } from "node:path";
import { gzipSync } from "node:zlib";

const budget = 200_000;
// With an open study, what stands above the rooms comes before the first of them.
const firstRooms = { StartRoom: ["StartRoom"], SampleRoom: ["StudyFrame", "SampleRoom"] };
const pages =
  process.argv.slice(2).find((word) => !word.startsWith("--")) ??
  join(import.meta.dirname, "..", "out", "renderer");
const assets = join(pages, "assets");
const text = (name) => readFileSync(join(assets, name), "utf8");

/** A script and everything it imports before it runs. */
function withImports(name, found = new Set()) {
  if (found.has(name)) return found;
  found.add(name);
  if (name.endsWith(".js"))
    for (const [, inner] of text(name).matchAll(/(?:from|import)\s*["'`]\.\/([^"'`]+\.js)["'`]/g))
      withImports(inner, found);
  return found;
}

const html = readFileSync(join(pages, "index.html"), "utf8");
const named = [...html.matchAll(/(?:src|href)="\.\/assets\/([^"]+)"/g)].map(([, name]) => name);
const entry = named.find((name) => /^index-.*\.js$/.test(name));
if (!entry) throw new Error("index.html names no script of its own");
const first = new Set(named.flatMap((name) => [...withImports(name)]));

/**
 * What is fetched with a script that is loaded on demand: each script holds one list of files, and for each such script
 * the places in it of what that one needs.
 */
function fetchedWith(wanted, among) {
  for (const holder of among) {
    if (!holder.endsWith(".js")) continue;
    const list = /\.f=(\[[^\]]*\])/.exec(text(holder))?.[1];
    const found = new RegExp(
      `import\\(["'\`]\\./(${wanted}-[^"'\`]+\\.js)["'\`]\\)[^]{0,60}?,__vite__mapDeps\\(\\[([\\d,]*)\\]\\)`,
    ).exec(text(holder));
    if (!list || !found) continue;
    const files = [...list.matchAll(/["'`]\.\/([^"'`]+)["'`]/g)].map(([, name]) => name);
    const needed = [found[1], ...found[2].split(",").map((place) => files[Number(place)])];
    return needed.flatMap((name) => [...withImports(name)]);
  }
  throw new Error(`what comes with ${wanted} is not found in the build`);
}

// The entry speaks the language, then loads the screens' start, which loads the first room. English needs no table.
for (const name of fetchedWith("start", first)) first.add(name);

let over = false;
for (const [room, wanted] of Object.entries(firstRooms)) {
  const all = new Set([...first, ...wanted.flatMap((name) => fetchedWith(name, first))]);
  const bytes = [...all].reduce((sum, name) => sum + gzipSync(readFileSync(join(assets, name))).length, 0);
  over ||= bytes > budget;
  console.log(
    `${room}: ${(bytes / 1000).toFixed(1)} kB of script and style, compressed, in ${all.size} files (budget ${budget / 1000} kB)`,
  );
  if (bytes > budget || process.argv.includes("--files"))
    for (const name of all)
      console.log(`  ${name} ${(gzipSync(readFileSync(join(assets, name))).length / 1000).toFixed(1)} kB`);
}
process.exit(over ? 1 : 0);

import { isBuiltin } from "node:module";
import { spawnSync } from "node:child_process";
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  writeFileSync,
} from "node:fs";
import { homedir, tmpdir } from "node:os";
import { join, relative } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import config from "../../electron-builder.json" with { type: "json" };
import packageFile from "../../package.json" with { type: "json" };
import { ensureBuilt } from "../../main/hosts/loopback/build.ts";
import { extension } from "../../main/storage/format.ts";

const root = join(import.meta.dirname, "..", "..");

function filesUnder(path: string): string[] {
  if (!statSync(path).isDirectory()) return [relative(root, path).replaceAll("\\", "/")];
  return readdirSync(path).flatMap((name) => filesUnder(join(path, name)));
}

const named = config.files.filter((pattern) => !pattern.startsWith("!"));
let packed: string[] = [];

beforeAll(async () => {
  const built = await ensureBuilt();
  if (!built.ok) throw new Error(built.message);
  packed = named.flatMap((pattern) => filesUnder(join(root, pattern.replace(/\/\*\*$/, ""))));
}, 60_000);

const fuses = {
  runAsNode: false,
  enableCookieEncryption: true,
  enableNodeOptionsEnvironmentVariable: false,
  enableNodeCliInspectArguments: false,
  enableEmbeddedAsarIntegrityValidation: true,
  onlyLoadAppFromAsar: true,
  loadBrowserProcessSpecificV8Snapshot: false,
  grantFileProtocolExtraPrivileges: false,
  resetAdHocDarwinSignature: true,
};

describe("what is packed", () => {
  test("every path named is there after a build, and the entry's own paths are among them", () => {
    for (const pattern of named)
      expect(existsSync(join(root, pattern.replace(/\/\*\*$/, ""))), pattern).toBe(true);
    for (const path of [packageFile.main, "out/preload/preload.cjs", "out/renderer/index.html", "LICENSE"])
      expect(packed).toContain(path);
    expect(existsSync(join(root, config.directories.buildResources, "icon.png"))).toBe(true);
  });
  test("nothing but the built app, its description and its licence", () => {
    for (const path of packed)
      expect(path).toMatch(
        /^(package\.json|LICENSE|out\/main\/electron\.js|out\/preload\/preload\.cjs|out\/renderer\/(index\.html|assets\/[\w.-]+\.(js|css|woff2)))$/,
      );
    expect(config.files).toContain("!node_modules/**");
    const bytes = packed.reduce((sum, path) => sum + statSync(join(root, path)).size, 0);
    expect(bytes).toBeLessThan(8 * 1024 * 1024);
  });
  test("no secret, no path of this machine, no map of the sources, nothing of the tests", () => {
    const forbidden = [
      root,
      homedir() === "/root" ? "/root/" : homedir(),
      tmpdir() + "/",
      "PRIVATE KEY",
      "sourceMappingURL",
      "electron-stand-in",
      "STAND_IN",
      "vitest",
      "_authToken",
    ];
    for (const path of packed.filter((name) => !name.endsWith(".woff2"))) {
      const text = readFileSync(join(root, path), "utf8");
      for (const word of forbidden)
        // package.json names what tests it; electron-builder strips that from the copy it packs.
        if (path !== "package.json") expect(text.includes(word), `${path}: ${word}`).toBe(false);
    }
  });
  test("the entry and the preload import nothing that is not in Electron itself", () => {
    const main = readFileSync(join(root, packageFile.main), "utf8");
    const imports = [...main.matchAll(/(?:from\s+|import\s*\(\s*|require\()["']([^"'.][^"']*)["']/g)].map(
      ([, name]) => name!,
    );
    expect(imports.length).toBeGreaterThan(3);
    // A bundled package may name a module of Node's own without its prefix.
    for (const name of imports)
      expect(name === "electron" || isBuiltin(name), `${name} is not in Electron itself`).toBe(true);
    const preload = readFileSync(join(root, "out/preload/preload.cjs"), "utf8");
    expect([...preload.matchAll(/require\(["']([^"']+)["']\)/g)].map(([, name]) => name)).toEqual([
      "electron",
    ]);
  });
});

describe("how it is packed", () => {
  test("every fuse is set, each the safe way", () => {
    expect(config.electronFuses).toEqual(fuses);
    expect(config.asar).toBe(true);
  });
  test("for three systems, with the runtime that is tested, published nowhere", () => {
    expect(config.electronVersion).toBe(packageFile.devDependencies.electron);
    for (const system of [config.win, config.mac, config.linux])
      expect(system.target.length).toBeGreaterThan(0);
    expect(config.publish).toBeNull();
    expect(config.nsis.deleteAppDataOnUninstall).toBe(false);
  });
  test("opens study files by their own ending", () => {
    expect(config.fileAssociations.map(({ ext }) => `.${ext}`)).toEqual([extension]);
  });
  test("by one pinned command, the same in the script and in the documents", () => {
    const script = readFileSync(join(root, "scripts", "package.mjs"), "utf8");
    const pinned = /electron-builder@\d+\.\d+\.\d+/.exec(script)?.[0];
    expect(pinned).toBeDefined();
    expect(readFileSync(join(root, "docs", "hosts.md"), "utf8")).toContain(pinned);
  });
});

const builder = process.env["FLOCWRIGHT_BUILDER"];

/** The names in an asar archive: a header of JSON behind its length. */
function namesInAsar(path: string): string[] {
  const bytes = readFileSync(path);
  const header = JSON.parse(bytes.toString("utf8", 16, 16 + bytes.readUInt32LE(12))) as Node;
  interface Node {
    files?: Record<string, Node>;
  }
  const walk = (node: Node, at: string): string[] =>
    node.files
      ? Object.entries(node.files).flatMap(([name, inner]) => walk(inner, `${at}/${name}`))
      : [at.slice(1)];
  return walk(header, "");
}

describe.skipIf(builder === undefined)(
  "electron-builder itself, on a stand-in for the runtime (skipped where FLOCWRIGHT_BUILDER does not name its cli.js)",
  () => {
    const sentinel = "dL7pKGdnNz796PbbjQWNKmHXBZaB9tsX";
    let folder = "";
    beforeAll(() => {
      folder = mkdtempSync(join(tmpdir(), "flocwright-pack-"));
      const runtime = join(folder, "runtime");
      mkdirSync(join(runtime, "resources"), { recursive: true });
      // Only what the packer looks at: a program that holds the fuses' wire, nine fuses long.
      const program = Buffer.concat([
        Buffer.alloc(512),
        Buffer.from(sentinel),
        Buffer.from([1, 9]),
        Buffer.from("000000000"),
        Buffer.alloc(512),
      ]);
      writeFileSync(join(runtime, "electron"), program, { mode: 0o755 });
      writeFileSync(join(runtime, "LICENSE"), "");
      writeFileSync(join(runtime, "version"), config.electronVersion);
      const result = spawnSync(
        process.execPath,
        [
          builder!,
          "--linux",
          "dir",
          "--x64",
          "--publish",
          "never",
          `-c.electronDist=${runtime}`,
          `-c.directories.output=${join(folder, "out")}`,
        ],
        { cwd: root, encoding: "utf8" },
      );
      if (result.status !== 0) throw new Error(result.stdout + result.stderr);
    }, 120_000);
    afterAll(() => rmSync(folder, { recursive: true, force: true }));

    test("packs exactly the files that are named", () => {
      const names = namesInAsar(join(folder, "out", "linux-unpacked", "resources", "app.asar"));
      expect(names.sort()).toEqual([...packed].sort());
    });
    test("turns the fuses in the program", () => {
      const program = readFileSync(join(folder, "out", "linux-unpacked", "flocwright"));
      const wire = program.toString("latin1", program.indexOf(sentinel) + sentinel.length);
      // in the order of the wire: run as node, cookies, NODE_OPTIONS, inspect, integrity, only asar, snapshot, file:
      expect(wire.slice(2, 10)).toBe("01001100");
    });
  },
);

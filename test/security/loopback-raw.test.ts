import fc from "fast-check";
import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from "node:fs";
import { connect } from "node:net";
import { networkInterfaces, tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { bounds } from "../../main/hosts/loopback/bounds.ts";
import { startLoopback, type LoopbackHost } from "../../main/hosts/loopback/server.ts";
import { closeContext, createContext, type Context } from "../../main/service.ts";
import { head, talk } from "./raw.ts";

let folder = "";
let host: LoopbackHost;
let context: Context;
let cookie = "";
const largePage = 64 * 1024 * 1024;
const timing = { headMs: 300, requestMs: 600, idleMs: 300, lookMs: 50 };
const own = () => ({ host: `127.0.0.1:${host.port}`, cookie });
const asPage = () => ({
  ...own(),
  origin: `http://127.0.0.1:${host.port}`,
  "content-type": "application/json",
});
const alive = async () => (await talk(host.port, head("GET /", own()))).statuses;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-raw-"));
  mkdirSync(join(folder, "pages"));
  mkdirSync(join(folder, "shelf"));
  writeFileSync(join(folder, "pages", "index.html"), "<!doctype html><title>x</title>");
  writeFileSync(join(folder, "pages", "large.js"), Buffer.alloc(largePage, 32));
  writeFileSync(join(folder, "secret.txt"), "secret");
  context = createContext({
    host: "loopback",
    version: "0",
    now: () => "2026-01-01T00:00:00Z",
    folder: join(folder, "shelf"),
    dialogs: null,
  });
  host = await startLoopback(context, {
    port: 0,
    pagesFolder: join(folder, "pages"),
    once: true,
    timing,
  });
});
afterAll(async () => {
  closeContext(context);
  await host.close();
  rmSync(folder, { recursive: true, force: true });
});

test("asking with HEAD does not use the launch key up; exchanging it does", async () => {
  const path = new URL(host.url).pathname + new URL(host.url).search;
  const probe = await talk(host.port, head(`HEAD ${path}`, { host: own().host }));
  expect(probe.statuses).toEqual([403]);
  const given = await talk(host.port, head(`GET ${path}`, { host: own().host }));
  expect(given.statuses).toEqual([303]);
  cookie = /set-cookie: (flocwright=[0-9a-f]{64});/i.exec(given.text)![1]!;
  expect((await talk(host.port, head(`GET ${path}`, { host: own().host }))).statuses).toEqual([403]);
  expect(await alive()).toEqual([200]);
});

describe("who may speak", () => {
  test("this machine only: no other address of it listens", async () => {
    const others = Object.values(networkInterfaces())
      .flatMap((list) => list ?? [])
      .filter((one) => !one.internal && one.family === "IPv4")
      .map((one) => one.address);
    for (const address of ["::1", "127.0.0.2", ...others]) {
      const answer = await talk(host.port, head("GET /", own()), { host: address });
      expect(answer.text, address).toBe("");
      expect(answer.closed, address).toBe(true);
    }
  });
  test("Host is looked at before Origin, and neither may come twice or not at all", async () => {
    const evil = { origin: "http://evil.invalid" };
    const status = async (headers: Record<string, string>, more = "") =>
      (
        await talk(
          host.port,
          `GET / HTTP/1.1\r\n${more}${head("", headers).split("\r\n").slice(1).join("\r\n")}`,
        )
      ).statuses[0];
    expect(await status({ ...own(), ...evil, host: "evil.invalid" })).toBe(421);
    expect(await status({ ...own(), host: `localhost:${host.port}` })).toBe(421);
    expect(await status({ ...own(), host: `127.0.0.1:${host.port}.evil.invalid` })).toBe(421);
    expect(await status({ ...own(), ...evil })).toBe(403);
    expect(await status({ cookie })).toBe(400);
    expect(await status(own(), "host: evil.invalid\r\n")).toBeGreaterThanOrEqual(400);
    expect(await status({ ...asPage() }, "origin: http://evil.invalid\r\n")).toBe(403);
  });
  test("no answer, of whatever kind, lets another origin read it", async () => {
    for (const first of [
      "GET /",
      "GET /nowhere",
      "OPTIONS /call/host.about",
      "PUT /",
      "POST /call/host.about",
    ]) {
      const { text } = await talk(
        host.port,
        head(first, { ...own(), "access-control-request-method": "POST", "content-length": "0" }),
      );
      expect(text, first).toMatch(/^HTTP\/1\.1 \d{3}/);
      expect(text, first).not.toMatch(/access-control-allow/i);
      expect(text, first).toMatch(/cross-origin-resource-policy: same-origin/i);
    }
  });
  test("a cookie of the wrong length, of other bytes, or beside another is no key", async () => {
    for (const wrong of [
      "flocwright=",
      `${cookie}0`,
      cookie.slice(0, -1),
      "flocwright=ü".repeat(3),
      `x${cookie}`,
    ])
      expect((await talk(host.port, head("GET /", { ...own(), cookie: wrong }))).statuses, wrong).toEqual([
        403,
      ]);
    expect((await talk(host.port, head("GET /", { ...own(), cookie: `a=b; ${cookie}` }))).statuses).toEqual([
      200,
    ]);
  });
});

describe("what may be asked", () => {
  test("three methods and no other", async () => {
    const table: Record<string, number> = {
      GET: 200,
      HEAD: 200,
      POST: 405,
      PUT: 405,
      DELETE: 405,
      PATCH: 405,
    };
    for (const method of ["OPTIONS", "TRACE", "PROPFIND", "MKCOL", "PURGE", "SEARCH"]) table[method] = 405;
    for (const [method, status] of Object.entries(table))
      expect(
        (await talk(host.port, head(`${method} /`, { ...own(), "content-length": "0" }))).statuses,
        method,
      ).toEqual([status]);
    for (const method of ["FETCH", "get", "G\u0000T", "CONNECT"])
      expect(
        (await talk(host.port, head(`${method} /`, own()))).statuses.every((status) => status === 400),
        method,
      ).toBe(true);
    expect(await alive()).toEqual([200]);
  });
  test("GET changes nothing, whatever it names", async () => {
    for (const path of [
      "/call/study.createDemo",
      "/call/study.create?name=x&by=",
      "/?name=study.createDemo",
    ]) {
      const { statuses } = await talk(host.port, head(`GET ${path}`, asPage()));
      expect([200, 404], path).toContain(statuses[0]);
    }
    expect(readdirSync(join(folder, "shelf"))).toEqual([]);
    expect(context.open).toBeNull();
  });
  test("a malformed or foreign address is refused and reaches no file", async () => {
    const table: [string, number[]][] = [
      ["/%", [404]],
      ["/%E0%A4%A", [404]],
      ["/%00", [404]],
      ["//", [404]],
      ["//evil.invalid/", [404]],
      ["/..%5c..%5csecret.txt", [404]],
      ["/../secret.txt", [404]],
      ["/%2e%2e/secret.txt", [404]],
      ["/%252e%252e/secret.txt", [404]],
      ["/./index.html", [404]],
      ["/index.html#x", [404]],
      ["*", [400]],
      ["http://evil.invalid/", [400]],
      ["file:///etc/hostname", [400]],
      ["index.html", [400]],
      ["/?key=%E0%A4%A", [303]],
      [`/${"a".repeat(bounds.addressChars)}`, [414]],
      [`/?${"a=b&".repeat(1000)}`, [414]],
    ];
    for (const [path, statuses] of table) {
      const answer = await talk(host.port, head(`GET ${path}`, own()));
      expect(answer.statuses, path).toEqual(statuses);
      expect(answer.text, path).not.toContain("secret");
    }
    expect(existsSync(join(folder, "secret.txt"))).toBe(true);
  });
  test("a head larger than the bound is refused, in one header or in many", async () => {
    const large = "x".repeat(bounds.headerBytes);
    const many = Object.fromEntries(Array.from({ length: 1500 }, (_, i) => [`x-${i}`, "y".repeat(10)]));
    for (const extra of [{ "x-large": large }, many, { cookie: large }])
      expect((await talk(host.port, head("GET /", { ...own(), ...extra }))).statuses).toEqual([431]);
    expect((await talk(host.port, head(`GET /${large}`, own()))).statuses).toEqual([431]);
  });
  test("no protocol is switched to", async () => {
    const answer = await talk(
      host.port,
      head("GET /alive", {
        ...own(),
        connection: "Upgrade",
        upgrade: "websocket",
        "sec-websocket-version": "13",
        "sec-websocket-key": "AAAAAAAAAAAAAAAAAAAAAA==",
      }),
    );
    expect(answer.text).not.toContain(" 101 ");
  });
});

describe("time and bytes are bounded", () => {
  const soon = 3000;
  test("a connection that says nothing, or says its head too slowly, is closed", async () => {
    const silent = await talk(host.port, "", { forMs: soon });
    expect(silent.closed).toBe(true);
    expect(silent.afterMs).toBeLessThan(soon);
    const drip = await talk(host.port, [...head("GET /", own())], { forMs: soon, everyMs: 40 });
    expect(drip.closed).toBe(true);
    expect(drip.statuses).toEqual([408]);
  });
  test("a body that does not come is not waited for, and one that breaks off changes nothing", async () => {
    const begin = head("POST /call/study.createDemo", { ...asPage(), "content-length": "1000" }, "{");
    const answer = await talk(host.port, begin, { forMs: soon });
    expect(answer.closed).toBe(true);
    expect(answer.statuses.every((status) => status === 408 || status === 413)).toBe(true);
    await talk(host.port, head("POST /call/study.createDemo", { ...asPage(), "content-length": "9" }, "{}"), {
      forMs: 30,
    });
    expect(context.open).toBeNull();
  });
  test("an idle connection is closed after its answer", async () => {
    const kept = { ...own(), connection: "keep-alive" };
    const answer = await talk(host.port, head("GET /", kept), { forMs: soon });
    expect(answer.afterMs).toBeGreaterThan(timing.idleMs);
    expect(answer.closed).toBe(true);
    expect(answer.statuses).toEqual([200]);
  });
  test("somebody who asks and does not take the answer is let go; a window's connection is held all the same", async () => {
    const held = connect(host.port, "127.0.0.1");
    held.on("error", () => undefined).write(head("GET /alive", { ...own(), connection: "keep-alive" }));
    await expect.poll(() => host.windows.open()).toBe(1);
    const idle = connect(host.port, "127.0.0.1");
    idle.on("error", () => undefined).pause();
    idle.write(head("GET /large.js", own()));
    await new Promise((resolve) => setTimeout(resolve, 2 * timing.requestMs + 400));
    let got = 0;
    const closed = new Promise((resolve) => idle.on("close", resolve));
    idle.on("data", (chunk) => (got += chunk.length)).resume();
    await closed;
    expect(got).toBeGreaterThan(0);
    expect(got).toBeLessThan(largePage);
    expect(host.windows.open()).toBe(1);
    held.destroy();
    await expect.poll(() => host.windows.open()).toBe(0);
  });
  test("a body beyond the bound is answered 413, with its length said or in chunks", async () => {
    const piece = Buffer.alloc(1024 * 1024, 32);
    const pieces = Array.from({ length: 9 }, () => piece);
    const length = String(pieces.length * piece.length);
    const said = head("POST /call/host.about", { ...asPage(), "content-length": length });
    expect((await talk(host.port, [said, ...pieces], { forMs: soon })).statuses).toEqual([413]);
    const chunked = pieces.map((part) =>
      Buffer.concat([Buffer.from("100000\r\n"), part, Buffer.from("\r\n")]),
    );
    const opening = head("POST /call/host.about", { ...asPage(), "transfer-encoding": "chunked" });
    expect((await talk(host.port, [opening, ...chunked], { forMs: soon })).statuses).toEqual([413]);
    expect(await alive()).toEqual([200]);
  });
  test("no more than so many connections are kept", async () => {
    const more = 30;
    let dropped = 0;
    const sockets = Array.from({ length: bounds.connections + more }, () =>
      connect(host.port, "127.0.0.1")
        .on("error", () => undefined)
        .on("close", () => (dropped += 1)),
    );
    for (const socket of sockets) socket.write(head("GET /alive", { ...own(), connection: "keep-alive" }));
    await expect.poll(() => dropped, { timeout: 5000 }).toBe(more);
    expect(host.windows.open()).toBe(bounds.connections);
    for (const socket of sockets) socket.destroy();
    await expect.poll(() => host.windows.open()).toBe(0);
    await expect.poll(alive).toEqual([200]);
  });
});

describe("junk on the wire", () => {
  test("two lengths, a length beside chunks, or a line folded are refused", async () => {
    const bad: Record<string, string>[] = [
      { "content-length": "2", "transfer-encoding": "chunked" },
      { "content-length": "2", "Content-Length": "5" },
      { "content-length": "-1" },
      { "content-length": "2x" },
      { "transfer-encoding": "chunked, identity" },
      { "x-folded": "a\r\n b" },
      { "x-bare": "a\nx: b\u0000" },
    ];
    for (const headers of bad) {
      const answer = await talk(
        host.port,
        head("POST /call/study.createDemo", { ...asPage(), ...headers }, "{}"),
      );
      expect(answer.statuses, JSON.stringify(headers)).toEqual([400]);
    }
    expect(context.open).toBeNull();
  });
  test("requests in one breath are answered in order, up to the junk among them", async () => {
    const kept = { connection: "keep-alive" };
    const one = head("GET /", { ...own(), ...kept });
    const three = one + head("GET /nowhere", { ...own(), ...kept }) + head("GET /", own());
    expect((await talk(host.port, three)).statuses).toEqual([200, 404, 200]);
    const call = head("POST /call/host.about", { ...asPage(), ...kept, "content-length": "2" }, "{}");
    for (const spoilt of [`${one}\u0016\u0003\u0001 junk\r\n\r\n${one}`, `${call}garbage\r\n\r\n${one}`]) {
      const answer = await talk(host.port, spoilt);
      // Whether the junk is answered depends on whether the first answer was out; nothing after it is ever looked at.
      expect([[200], [400], [200, 400]]).toContainEqual(answer.statuses);
      expect(answer.closed).toBe(true);
    }
  });
  test("random bytes neither end the host nor get an answer that is not a refusal", async () => {
    let tried = 0;
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ minLength: 1, maxLength: 300 }), async (bytes) => {
        const answer = await talk(host.port, Buffer.concat([Buffer.from(bytes), Buffer.from("\r\n\r\n")]), {
          forMs: 15,
        });
        tried += 1;
        expect(answer.statuses.every((status) => status >= 400)).toBe(true);
      }),
      { numRuns: 200, seed: 20260101 },
    );
    expect(tried).toBe(200);
    expect(await alive()).toEqual([200]);
    expect(context.open).toBeNull();
  });
});

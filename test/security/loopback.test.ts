import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { startLoopback, type LoopbackHost } from "../../main/hosts/loopback/server.ts";
import { closeContext, createContext } from "../../main/service.ts";

let folder = "";
let host: LoopbackHost;
let cookie = "";
let key = "";
const context = () =>
  createContext({ host: "loopback", version: "0", now: () => "2026-01-01T00:00:00Z", folder, dialogs: null });
let open: ReturnType<typeof context>;

interface Reply {
  status: number;
  headers: Record<string, string | string[] | undefined>;
  body: string;
}

function ask(
  path: string,
  options: { method?: string; headers?: Record<string, string>; body?: string; port?: number } = {},
): Promise<Reply> {
  return new Promise((resolve, reject) => {
    const port = options.port ?? host.port;
    const out = request(
      {
        host: "127.0.0.1",
        port,
        path,
        method: options.method ?? "GET",
        headers: { host: `127.0.0.1:${port}`, ...options.headers },
      },
      (response) => {
        let body = "";
        response.on("data", (chunk) => (body += String(chunk)));
        response.on("end", () =>
          resolve({ status: response.statusCode ?? 0, headers: response.headers, body }),
        );
      },
    );
    out.on("error", reject);
    out.end(options.body);
  });
}

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), "flocwright-loopback-"));
  const pages = join(folder, "pages");
  mkdirSync(pages);
  writeFileSync(join(pages, "index.html"), "<!doctype html><title>x</title>");
  writeFileSync(join(folder, "secret.txt"), "secret");
  open = context();
  host = await startLoopback(open, { port: 0, pagesFolder: pages, once: true });
  key = new URL(host.url).searchParams.get("key")!;
});
afterAll(async () => {
  closeContext(open);
  await host.close();
  rmSync(folder, { recursive: true, force: true });
});

const origin = () => `http://127.0.0.1:${host.port}`;
const json = () => ({ "content-type": "application/json", origin: origin(), cookie });

describe("the loopback host", () => {
  test("gives its cookie once for the launch key, strict and unreadable to scripts", async () => {
    expect((await ask("/")).status).toBe(403);
    expect((await ask("/?key=wrong")).status).toBe(403);
    const exchange = await ask(`/?key=${key}`);
    expect(exchange.status).toBe(303);
    const header = String(exchange.headers["set-cookie"]);
    expect(header).toMatch(/HttpOnly; SameSite=Strict/);
    cookie = header.split(";")[0]!;
    expect((await ask(`/?key=${key}`)).status).toBe(403);
    expect((await ask(`/?key=${key}`, { headers: { cookie } })).status).toBe(303);
    const page = await ask("/", { headers: { cookie } });
    expect(page.status).toBe(200);
    expect(page.headers["content-security-policy"]).toMatch(
      /default-src 'none'; script-src 'self'; style-src 'self'/,
    );
    expect(page.headers["access-control-allow-origin"]).toBeUndefined();
  });
  test("checks Host before anything else, then Origin", async () => {
    expect(
      (await ask("/", { headers: { host: "localhost:80", cookie, origin: "http://evil.invalid" } })).status,
    ).toBe(421);
    expect((await ask("/", { headers: { cookie, origin: "http://evil.invalid" } })).status).toBe(403);
    expect(
      (await ask("/call/shelf.list", { method: "POST", headers: { ...json(), origin: "null" }, body: "{}" }))
        .status,
    ).toBe(403);
  });
  test("answers calls only by POST of JSON with cookie and own origin", async () => {
    const call = (headers: Record<string, string>, body = "{}") =>
      ask("/call/host.about", { method: "POST", headers, body });
    expect(JSON.parse((await call(json())).body)).toMatchObject({ ok: true, value: { host: "loopback" } });
    expect((await call({ ...json(), cookie: "" })).status).toBe(403);
    expect((await call({ cookie, "content-type": "application/json" })).status).toBe(403);
    expect((await call({ ...json(), "content-type": "text/plain" })).status).toBe(415);
    expect((await call(json(), "{")).status).toBe(400);
    expect((await ask("/call/host.about", { headers: { cookie } })).status).toBe(404);
    expect((await ask("/call/host.about", { method: "PUT", headers: json() })).status).toBe(405);
  });
  test("serves nothing outside the build", async () => {
    for (const path of [
      "/../secret.txt",
      "/%2e%2e/secret.txt",
      "/..%2fsecret.txt",
      "//secret.txt",
      "/index.html/../../secret.txt",
      "/%00",
    ])
      expect((await ask(path, { headers: { cookie } })).body, path).not.toContain("secret");
    expect((await ask("/%E0%A4%A", { headers: { cookie } })).status).toBeGreaterThanOrEqual(400);
  });
  test("bounds what it reads", async () => {
    const body = JSON.stringify({ text: "x".repeat(9 * 1024 * 1024) });
    expect((await ask("/call/host.about", { method: "POST", headers: json(), body })).status).toBe(413);
    const edit = JSON.stringify({ text: "x".repeat(49 * 1024 * 1024) });
    expect((await ask("/call/study.apply", { method: "POST", headers: json(), body: edit })).status).toBe(
      413,
    );
    expect(
      JSON.parse((await ask("/call/host.about", { method: "POST", headers: json(), body: "{}" })).body),
    ).toMatchObject({ ok: true });
  });
});

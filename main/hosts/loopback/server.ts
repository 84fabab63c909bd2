import { randomBytes, timingSafeEqual } from "node:crypto";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { createDispatcher } from "../../dispatch.ts";
import type { Context } from "../../service.ts";
import { loadPages } from "./pages.ts";
import { safeHeaders } from "./policy.ts";

const largestBody = 8 * 1024 * 1024;
// An import is one edit; the plan of an import keeps below this by its own bound, and says so in words.
const largestEdit = 48 * 1024 * 1024;
const cookieName = "flocwright";

export interface LoopbackHost {
  /** the address to open, with the launch key that the page exchanges for its cookie */
  url: string;
  port: number;
  close(): Promise<void>;
}

const equal = (a: string, b: string) =>
  a.length === b.length && timingSafeEqual(Buffer.from(a), Buffer.from(b));

function cookieOf(request: IncomingMessage): string {
  const parts = (request.headers.cookie ?? "").split(";").map((part) => part.trim());
  return parts.find((part) => part.startsWith(`${cookieName}=`))?.slice(cookieName.length + 1) ?? "";
}

function send(
  response: ServerResponse,
  status: number,
  body: string | Buffer,
  headers: Record<string, string> = {},
): void {
  response.writeHead(status, { ...safeHeaders, "content-type": "text/plain; charset=utf-8", ...headers });
  response.end(body);
}

async function bodyOf(request: IncomingMessage, largest: number): Promise<string | null> {
  const chunks: Buffer[] = [];
  let size = 0;
  for await (const chunk of request as AsyncIterable<Buffer>) {
    size += chunk.length;
    if (size > largest) return null;
    chunks.push(chunk);
  }
  return Buffer.concat(chunks).toString("utf8");
}

/**
 * Serves the screens and the contract's calls on 127.0.0.1. Host is checked first, then Origin, then the session
 * cookie; GET changes nothing; bodies are bounded. With `once` the launch key opens one browser only.
 */
export async function startLoopback(
  context: Context,
  options: { port: number; pagesFolder: string; once: boolean },
): Promise<LoopbackHost> {
  const pages = loadPages(options.pagesFolder);
  const dispatch = createDispatcher(context);
  const session = randomBytes(32).toString("hex");
  let key: string | null = randomBytes(32).toString("hex");
  let authority = "";

  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    if (request.headers.host !== authority) return send(response, 421, "Wrong host.");
    const { origin } = request.headers;
    if (origin !== undefined && origin !== `http://${authority}`) return send(response, 403, "Wrong origin.");
    const address = new URL(request.url ?? "/", `http://${authority}`);
    const known = equal(cookieOf(request), session);

    if (request.method === "GET" || request.method === "HEAD") {
      const given = address.searchParams.get("key");
      if (given !== null) {
        const right = key !== null && equal(given, key);
        if (!right && !known)
          return send(response, 403, "This address was for one opening only. Start Flocwright again.");
        if (right && options.once) key = null;
        return send(response, 303, "", {
          location: "/",
          "set-cookie": `${cookieName}=${session}; HttpOnly; SameSite=Strict; Path=/`,
        });
      }
      if (!known) return send(response, 403, "Open Flocwright by the address it printed.");
      const page = pages.get(decodeURIComponent(address.pathname));
      if (!page) return send(response, 404, "There is no such page.");
      return send(response, 200, request.method === "HEAD" ? "" : page.body, { "content-type": page.type });
    }
    if (request.method !== "POST" || !address.pathname.startsWith("/call/"))
      return send(response, 405, "Not allowed.", { allow: "GET, POST" });
    if (!known || origin === undefined)
      return send(response, 403, "Open Flocwright by the address it printed.");
    if (!/^application\/json\b/.test(request.headers["content-type"] ?? ""))
      return send(response, 415, "JSON only.");
    const name = address.pathname.slice("/call/".length);
    const body = await bodyOf(request, name === "study.apply" ? largestEdit : largestBody);
    if (body === null) return send(response, 413, "Too much at once.", { connection: "close" });
    let input: unknown;
    try {
      input = JSON.parse(body);
    } catch {
      return send(response, 400, "This is not JSON.");
    }
    const result = await dispatch(name, input);
    send(response, 200, JSON.stringify(result), { "content-type": "application/json; charset=utf-8" });
  };

  const server = createServer((request, response) => {
    answer(request, response).catch(() => {
      if (!response.headersSent) send(response, 500, "Something in Flocwright itself failed.");
      else response.end();
    });
  });
  server.requestTimeout = 60_000;
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen(options.port, "127.0.0.1", resolve);
  });
  const { port } = server.address() as AddressInfo;
  authority = `127.0.0.1:${port}`;
  return {
    url: `http://${authority}/?key=${key}`,
    port,
    close: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

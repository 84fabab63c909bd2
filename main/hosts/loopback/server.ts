import { randomBytes } from "node:crypto";
import { createServer, type IncomingMessage, type ServerResponse } from "node:http";
import type { AddressInfo } from "node:net";
import { createDispatcher } from "../../dispatch.ts";
import type { Context } from "../../service.ts";
import { bounds } from "./bounds.ts";
import { loadPages, pageAt } from "./pages.ts";
import { safeHeaders } from "./policy.ts";
import { addressOf, bodyOf, cookieOf, onlyOne, sameSecret, send } from "./request.ts";
import { countWindows, type Windows } from "./windows.ts";

const cookieName = "flocwright";
const openByAddress = "Open Flocwright by the address it printed.";

export interface LoopbackHost {
  /** the address to open, with the launch key that the page exchanges for its cookie */
  url: string;
  port: number;
  windows: Windows;
  close(): Promise<void>;
}

export interface LoopbackOptions {
  port: number;
  pagesFolder: string;
  /** whether the launch key opens one browser only */
  once: boolean;
  /** narrower bounds on time, for tests */
  timing?: { headMs: number; requestMs: number; idleMs: number; lookMs: number };
}

/**
 * Serves the screens and the contract's calls on 127.0.0.1. Host is checked first, then Origin, then the session
 * cookie; GET changes nothing; bodies, heads, addresses, time and connections are bounded. Rejects where the port
 * cannot be had.
 */
export async function startLoopback(context: Context, options: LoopbackOptions): Promise<LoopbackHost> {
  const pages = loadPages(options.pagesFolder);
  const dispatch = createDispatcher(context);
  const windows = countWindows();
  const session = randomBytes(32).toString("hex");
  const launchKey = randomBytes(32).toString("hex");
  let key: string | null = launchKey;
  let authority = "";

  const answer = async (request: IncomingMessage, response: ServerResponse): Promise<void> => {
    const host = onlyOne(request, "host");
    if (host !== authority) return send(response, 421, "Wrong host.");
    const origin = onlyOne(request, "origin");
    if (origin !== undefined && origin !== `http://${authority}`) return send(response, 403, "Wrong origin.");
    if ((request.url ?? "").length > bounds.addressChars)
      return send(response, 414, "This address is too long.");
    const address = addressOf(request);
    if (!address) return send(response, 400, "This is not an address of this host.");
    const known = sameSecret(cookieOf(request, cookieName), session);

    if (request.method === "GET" || request.method === "HEAD") {
      const given = address.query.get("key");
      if (given !== null && request.method === "GET") return exchange(given, known, response);
      if (!known) return send(response, 403, openByAddress);
      if (address.path === "/alive" && request.method === "GET") return holdWindow(response);
      const page = pageAt(pages, address.path);
      if (!page) return send(response, 404, "There is no such page.");
      return send(response, 200, request.method === "HEAD" ? "" : page.body, { "content-type": page.type });
    }
    if (request.method !== "POST" || !address.path.startsWith("/call/"))
      return send(response, 405, "Not allowed.", { allow: "GET, HEAD, POST" });
    if (!known || origin === undefined) return send(response, 403, openByAddress);
    if (!/^application\/json\s*(;|$)/i.test(request.headers["content-type"] ?? ""))
      return send(response, 415, "JSON only.");
    const name = address.path.slice("/call/".length);
    const body = await bodyOf(request, name === "study.apply" ? bounds.editBytes : bounds.bodyBytes);
    if (body === null) return send(response, 413, "Too much at once.", { connection: "close" });
    let input: unknown;
    try {
      input = JSON.parse(body);
    } catch {
      return send(response, 400, "This is not JSON.");
    }
    const result = await dispatch(name, input, request.headers["x-flocwright-opening"]);
    send(response, 200, JSON.stringify(result), { "content-type": "application/json; charset=utf-8" });
  };

  /** The launch key for the session's cookie, once where so wished. */
  function exchange(given: string, known: boolean, response: ServerResponse): void {
    const right = key !== null && sameSecret(given, key);
    if (!right && !known)
      return send(response, 403, "This address was for one opening only. Start Flocwright again.");
    if (right && options.once) key = null;
    send(response, 303, "", {
      location: "/",
      "set-cookie": `${cookieName}=${session}; HttpOnly; SameSite=Strict; Path=/`,
    });
  }

  /** An answer that never ends: a window holds it for as long as it is open. It says nothing and changes nothing. */
  function holdWindow(response: ServerResponse): void {
    // Ended by the connection's end and not in chunks: a host that goes is then no fault in the page's eyes.
    response.removeHeader("transfer-encoding");
    response.writeHead(200, {
      ...safeHeaders,
      "content-type": "application/octet-stream",
      connection: "close",
    });
    response.flushHeaders();
    response.socket?.setTimeout(0);
    response.on("close", windows.arrived());
  }

  const timing = options.timing ?? bounds;
  const server = createServer(
    {
      maxHeaderSize: bounds.headerBytes,
      headersTimeout: timing.headMs,
      requestTimeout: timing.requestMs,
      keepAliveTimeout: timing.idleMs,
      connectionsCheckingInterval: timing.lookMs,
      insecureHTTPParser: false,
    },
    (request, response) => {
      answer(request, response).catch(() => {
        if (!response.headersSent) send(response, 500, "Something in Flocwright itself failed.");
        else response.end();
      });
    },
  );
  server.maxConnections = bounds.connections;
  // Nothing read and nothing sent for so long: somebody who asks and does not take the answer.
  server.setTimeout(timing.requestMs);
  await new Promise<void>((resolve, reject) => {
    server.once("error", reject);
    server.listen({ port: options.port, host: "127.0.0.1", exclusive: true }, resolve);
  });
  const { port } = server.address() as AddressInfo;
  authority = `127.0.0.1:${port}`;
  return {
    url: `http://${authority}/?key=${launchKey}`,
    port,
    windows,
    close: () =>
      new Promise((resolve) => {
        windows.stop();
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}

import { timingSafeEqual } from "node:crypto";
import type { IncomingMessage, ServerResponse } from "node:http";
import { safeHeaders } from "./policy.ts";

/** Compares two secrets without telling by the time it takes how much of them agrees. */
export function sameSecret(a: string, b: string): boolean {
  const [left, right] = [Buffer.from(a), Buffer.from(b)];
  return left.length === right.length && timingSafeEqual(left, right);
}

/** The value of one cookie, "" where it is not there. */
export function cookieOf(request: IncomingMessage, name: string): string {
  const parts = (request.headers.cookie ?? "").split(";").map((part) => part.trim());
  return parts.find((part) => part.startsWith(`${name}=`))?.slice(name.length + 1) ?? "";
}

/** A header that must not come twice; null where it does. */
export function onlyOne(request: IncomingMessage, name: string): string | undefined | null {
  const values = request.headersDistinct[name] ?? [];
  return values.length > 1 ? null : values[0];
}

/** An address split into its path and what follows "?"; null for one that is not a path on this host. */
export function addressOf(request: IncomingMessage): { path: string; query: URLSearchParams } | null {
  const whole = request.url ?? "";
  if (!whole.startsWith("/")) return null;
  const at = whole.indexOf("?");
  return at < 0
    ? { path: whole, query: new URLSearchParams() }
    : { path: whole.slice(0, at), query: new URLSearchParams(whole.slice(at + 1)) };
}

/** Answers under the strict policy. */
export function send(
  response: ServerResponse,
  status: number,
  body: string | Buffer,
  headers: Record<string, string> = {},
): void {
  response.writeHead(status, { ...safeHeaders, "content-type": "text/plain; charset=utf-8", ...headers });
  response.end(body);
}

/**
 * A request's body as text, or null as soon as it is larger than the bound, or where it breaks off. What goes beyond
 * the bound is thrown away unread, so that whoever sends it still gets the answer.
 */
export function bodyOf(request: IncomingMessage, largest: number): Promise<string | null> {
  return new Promise((resolve) => {
    let chunks: Buffer[] = [];
    let size = 0;
    request.on("data", (chunk: Buffer) => {
      size += chunk.length;
      if (size <= largest) chunks.push(chunk);
      else {
        chunks = [];
        resolve(null);
      }
    });
    request.on("end", () => resolve(size > largest ? null : Buffer.concat(chunks).toString("utf8")));
    request.on("error", () => resolve(null));
    request.on("close", () => resolve(null));
  });
}

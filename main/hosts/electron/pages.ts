import type { Page } from "../loopback/pages.ts";
import { pageAt } from "../loopback/pages.ts";
import { safeHeaders } from "../loopback/policy.ts";

const plain = { ...safeHeaders, "content-type": "text/plain; charset=utf-8" };

/**
 * Answers the app's own scheme from the list of built pages, under the same policy as the loopback host. Addresses
 * are looked up, never joined to a folder, so that none can climb out of it.
 */
export function pageHandler(pages: Map<string, Page>): (request: Request) => Response {
  return (request) => {
    if (request.method !== "GET" && request.method !== "HEAD")
      return new Response("Pages are only read.", { status: 405, headers: plain });
    const { host, pathname } = new URL(request.url);
    const page = host === "app" ? pageAt(pages, pathname) : null;
    if (!page) return new Response("There is no such page.", { status: 404, headers: plain });
    const body = request.method === "HEAD" ? null : new Uint8Array(page.body);
    return new Response(body, { headers: { ...safeHeaders, "content-type": page.type } });
  };
}

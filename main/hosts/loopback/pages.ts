import { readdirSync, readFileSync, statSync } from "node:fs";
import { extname, join } from "node:path";

const types: Record<string, string> = {
  ".html": "text/html; charset=utf-8",
  ".js": "text/javascript; charset=utf-8",
  ".css": "text/css; charset=utf-8",
  ".woff2": "font/woff2",
  ".woff": "font/woff",
  ".svg": "image/svg+xml",
  ".png": "image/png",
  ".json": "application/json",
};

export interface Page {
  type: string;
  body: Buffer;
}

/**
 * The built screens by their address. The list is made once from the build's own folder, so an address that is not
 * on it (whatever dots or slashes it holds) finds nothing.
 */
export function loadPages(folder: string): Map<string, Page> {
  const pages = new Map<string, Page>();
  const walk = (path: string, address: string) => {
    for (const name of readdirSync(path)) {
      const inner = join(path, name);
      if (statSync(inner).isDirectory()) walk(inner, `${address}/${name}`);
      else
        pages.set(`${address}/${name}`, {
          type: types[extname(name)] ?? "application/octet-stream",
          body: readFileSync(inner),
        });
    }
  };
  walk(folder, "");
  const index = pages.get("/index.html");
  if (index) pages.set("/", index);
  return pages;
}

/** The page at an address's path, or null: an address that cannot be read as text is one that is not on the list. */
export function pageAt(pages: Map<string, Page>, path: string): Page | null {
  try {
    return pages.get(decodeURIComponent(path)) ?? null;
  } catch {
    return null;
  }
}

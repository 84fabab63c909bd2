import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { allowedBy, allowTable, type Door } from "../../main/hosts/electron/allow.ts";

const doors: Door[] = ["navigation", "popup", "webview", "permission", "device", "request", "download"];

describe("the allow-table", () => {
  test("gives a reason for each entry, and each entry once", () => {
    for (const entry of allowTable) expect(entry.because.length, entry.to).toBeGreaterThan(20);
    expect(new Set(allowTable.map(({ door, to }) => `${door} ${to}`)).size).toBe(allowTable.length);
  });
  test("lets nothing through that begins elsewhere than with this app, the page's own memory or a data address", () => {
    for (const { to } of allowTable) expect(to).toMatch(/^(blob:)?flocwright:\/\/app\/|^data:/);
    for (const door of ["popup", "webview", "permission", "device"] as const)
      expect(
        allowTable.filter((entry) => entry.door === door),
        door,
      ).toEqual([]);
  });
  test("denies look-alikes at every door", () => {
    for (const address of [
      "flocwright://app.example.invalid/index.html",
      "flocwright://apps/index.html",
      "flocwright:///app/index.html",
      "flocwright://user@app/index.html",
      "flocwright://app:80/index.html",
      "FLOCWRIGHT://elsewhere/index.html",
      "blob:flocwright://app.example.invalid/1",
      "view-source:flocwright://app/index.html",
      "filesystem:flocwright://app/index.html",
      "javascript:alert(1)",
      "about:blank",
      "",
      "__proto__",
    ])
      for (const door of doors) expect(allowedBy(door, address), `${door} ${address}`).toBeNull();
    expect(allowedBy("navigation", "flocwright://app/index.html?x=1")).toBeNull();
    expect(allowedBy("navigation", "flocwright://app/index.html#/dose")).not.toBeNull();
  });
  test("denies whatever else is tried", () => {
    fc.assert(
      fc.property(fc.constantFrom(...doors), fc.oneof(fc.webUrl(), fc.string()), (door, address) => {
        if (!/^(blob:)?flocwright:\/\/app\/|^data:/.test(address))
          expect(allowedBy(door, address)).toBeNull();
      }),
      { numRuns: 2000 },
    );
  });
});

import { appOrigin, home } from "./names.ts";

/** The ways out of the window, or into it, that a page could try. */
export type Door = "navigation" | "popup" | "webview" | "permission" | "device" | "request" | "download";

export interface Allowed {
  door: Door;
  to: string;
  /** whether `to` is the whole address (or name), or only how it begins */
  match: "whole" | "start";
  because: string;
}

/**
 * Everything a page may do beyond drawing itself and calling the contract. What is not in this table is denied:
 * no popup, no webview, no permission and no device is in it, because the screens need none.
 */
export const allowTable: readonly Allowed[] = [
  {
    door: "navigation",
    to: home,
    match: "whole",
    because: "the screens themselves: at the start, and again after a crash or a reload",
  },
  {
    door: "request",
    to: `${appOrigin}/`,
    match: "start",
    because: "the built pages, answered from their list by the app's own protocol",
  },
  {
    door: "request",
    to: `blob:${appOrigin}/`,
    match: "start",
    because: "pictures that were just chosen, and files on their way to a download, held by the page itself",
  },
  {
    door: "request",
    to: "data:",
    match: "start",
    because: "pictures kept inside the study, and the empty icon; the content policy lets no script be one",
  },
  {
    door: "download",
    to: `blob:${appOrigin}/`,
    match: "start",
    because: "tables, charts and papers that the person asked for; the person names the file",
  },
  {
    door: "download",
    to: "data:image/",
    match: "start",
    because: "a chart as a picture; the person names the file",
  },
];

/** The entry that lets this through, or null: then it is denied. The part behind # never leaves a page and is not looked at. */
export function allowedBy(door: Door, to: string): Allowed | null {
  const address = door === "navigation" ? (to.split("#")[0] ?? "") : to;
  return (
    allowTable.find(
      (entry) =>
        entry.door === door &&
        (entry.match === "whole" ? address === entry.to : address.startsWith(entry.to)),
    ) ?? null
  );
}

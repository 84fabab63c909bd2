import type { Session, WebContents } from "electron";
import { allowedBy } from "./allow.ts";

/** Keeps one page's contents inside the allow-table: where it goes, what it opens, what it takes in. */
export function guardContents(contents: WebContents): void {
  contents.setWindowOpenHandler(({ url }) => ({ action: allowedBy("popup", url) ? "allow" : "deny" }));
  contents.on("will-navigate", (event, url) => {
    if (!allowedBy("navigation", url)) event.preventDefault();
  });
  contents.on("will-frame-navigate", (event) => {
    if (!event.isMainFrame || !allowedBy("navigation", event.url)) event.preventDefault();
  });
  contents.on("will-redirect", (event, url) => {
    if (!allowedBy("navigation", url)) event.preventDefault();
  });
  contents.on("will-attach-webview", (event, _preferences, { src }) => {
    if (!allowedBy("webview", src ?? "")) event.preventDefault();
  });
}

/** Keeps a session inside the allow-table: permissions, devices, requests and downloads. */
export function guardSession(session: Session): void {
  session.setPermissionRequestHandler((_contents, permission, answer) =>
    answer(allowedBy("permission", permission) !== null),
  );
  session.setPermissionCheckHandler((_contents, permission) => allowedBy("permission", permission) !== null);
  session.setDevicePermissionHandler(({ deviceType }) => allowedBy("device", deviceType) !== null);
  session.webRequest.onBeforeRequest(({ url }, answer) => answer({ cancel: !allowedBy("request", url) }));
  session.on("will-download", (event, item) => {
    if (!allowedBy("download", item.getURL())) event.preventDefault();
  });
  // Its dictionaries would be fetched from the network.
  session.setSpellCheckerEnabled(false);
}

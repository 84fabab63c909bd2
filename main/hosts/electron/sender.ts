import type { IpcMainEvent, IpcMainInvokeEvent, WebContents } from "electron";
import { allowedBy } from "./allow.ts";

/** Whether a message comes from the app's own window, from its top frame, and from the screens shown in it. */
export function isOwnPage(event: IpcMainEvent | IpcMainInvokeEvent, own: WebContents | undefined): boolean {
  const frame = event.senderFrame;
  return (
    own !== undefined &&
    event.sender === own &&
    frame !== null &&
    frame.parent === null &&
    allowedBy("navigation", frame.url) !== null
  );
}

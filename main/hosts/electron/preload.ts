import { contextBridge, ipcRenderer } from "electron";
import { settledEvent, settleEvent, unsettledEvent } from "../../../src/window-events.ts";
import { callChannel, settleChannel, settledChannel } from "./names.ts";

// Put in by the build from the contract's own table, so that the two cannot drift and no schema is loaded here.
declare const __CALL_NAMES__: readonly string[];

// Thin on purpose: one function a call of the contract; the main process checks sender, name and input.
const calls = Object.fromEntries(
  __CALL_NAMES__.map((name) => [
    name,
    (input: unknown, opening?: unknown): Promise<unknown> =>
      ipcRenderer.invoke(callChannel, name, input, opening),
  ]),
);
contextBridge.exposeInMainWorld("flocwright", calls);

ipcRenderer.on(settleChannel, () => void window.dispatchEvent(new Event(settleEvent)));
window.addEventListener(settledEvent, () => ipcRenderer.send(settledChannel, true));
window.addEventListener(unsettledEvent, () => ipcRenderer.send(settledChannel, false));

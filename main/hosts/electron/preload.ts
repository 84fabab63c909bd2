import { contextBridge, ipcRenderer } from "electron";
import { callChannel } from "./names.ts";

// Thin on purpose: the page gets one function; the main process checks sender, name and input.
contextBridge.exposeInMainWorld("flocwright", {
  call: (name: string, input: unknown): Promise<unknown> => ipcRenderer.invoke(callChannel, name, input),
});

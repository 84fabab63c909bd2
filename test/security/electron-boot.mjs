// Boots the built main entry under the stand-in and lets its parent play the window: pages asked for, calls made,
// buttons pressed. What the app does to its window is said to the parent.
import { registerHooks } from "node:module";
import { join } from "node:path";
import { pathToFileURL } from "node:url";

const root = process.env.STAND_IN_ROOT ?? join(import.meta.dirname, "..", "..");
const standIn = pathToFileURL(join(import.meta.dirname, "electron-stand-in.mjs")).href;
registerHooks({
  resolve: (specifier, context, next) =>
    specifier === "electron" ? { url: standIn, shortCircuit: true } : next(specifier, context),
});
const { seen, app, ipcMain } = await import(standIn);
const say = (message) => process.send(message);
seen.onLoad = (url) => say({ say: "load", url });
seen.onSend = (channel) => say({ say: "send", channel });
seen.onQuit = () => say({ say: "quit" });

const [, window] = [
  await import(pathToFileURL(join(root, "out", "main", "electron.js")).href),
  await new Promise((resolve) => setTimeout(() => resolve(seen.windows[0]), 50)),
];
const sender = window.webContents;
window.on("closed", () => say({ say: "closed" }));

const doings = {
  async page({ url, method }) {
    const response = await seen.handlers.flocwright(new Request(url, { method }));
    return {
      status: response.status,
      headers: Object.fromEntries(response.headers),
      body: new Uint8Array(await response.arrayBuffer()),
    };
  },
  invoke: ({ frame, channel, words }) => seen.channels[channel]({ sender, senderFrame: frame }, ...words),
  send({ frame, channel, words }) {
    ipcMain.emit(channel, { sender, senderFrame: frame }, ...words);
  },
  crash: () => void sender.emit("render-process-gone", {}, { reason: "crashed" }),
  close: () => window.close(),
  second: ({ words }) => void app.emit("second-instance", {}, words, process.cwd()),
  press: ({ button }) => void (seen.press = button),
  seen: () => ({ messages: seen.messages, errors: seen.errors, quits: seen.quits }),
};
process.on("message", async ({ id, ...message }) => say({ id, answer: await doings[message.do](message) }));
say({ say: "ready" });

// Stands in for the electron module: remembers what the app asks of it and lets a test play the outside world.
import { EventEmitter } from "node:events";

export const seen = {
  windows: [],
  schemes: [],
  handlers: {},
  channels: {},
  permissions: {},
  loaded: [],
  quits: 0,
  exposed: {},
  invoked: [],
  sent: [],
  fromPage: {},
  messages: [],
  errors: [],
  menus: [],
  /** what the person presses in a message box */
  press: 0,
  crashed: false,
  saves: [],
  printed: [],
  /** where the person says to save; null while the dialog is cancelled */
  saveAs: null,
};

class Contents extends EventEmitter {
  setWindowOpenHandler(handler) {
    this.openHandler = handler;
  }
  send(channel) {
    seen.sent.push(channel);
    seen.onSend?.(channel);
  }
  isCrashed() {
    return seen.crashed;
  }
  isLoadingMainFrame() {
    return false;
  }
  async printToPDF(options) {
    seen.printed.push(options);
    return Buffer.from("%PDF- of the stand-in");
  }
}

export class BrowserWindow extends EventEmitter {
  constructor(options) {
    super();
    this.options = options;
    this.webContents = new Contents();
    seen.windows.push(this);
    app.emit("web-contents-created", {}, this.webContents);
  }
  /** the person presses the window's close button */
  close() {
    let stopped = false;
    this.emit("close", { preventDefault: () => (stopped = true) });
    if (!stopped) this.destroy();
  }
  destroy() {
    if (this.destroyed) return;
    this.destroyed = true;
    this.emit("closed");
    app.emit("window-all-closed");
  }
  loadURL(url) {
    seen.loaded.push(url);
    seen.onLoad?.(url);
    return Promise.resolve();
  }
  show() {}
  focus() {
    this.focused = true;
  }
  restore() {
    this.restored = true;
  }
  isMinimized() {
    return this.minimized === true;
  }
}

export const app = Object.assign(new EventEmitter(), {
  getLocale: () => process.env.STAND_IN_LOCALE ?? "en",
  requestSingleInstanceLock: () => process.env.STAND_IN_SECOND !== "yes",
  isPackaged: process.env.STAND_IN_PACKAGED === "yes",
  isReady: () => true,
  whenReady: () => Promise.resolve(),
  quit: () => {
    seen.quits += 1;
    app.emit("will-quit");
    seen.onQuit?.();
  },
});
export const dialog = {
  showOpenDialog: async () => ({ filePaths: [] }),
  showSaveDialog: async (...words) => {
    const [options] = words.slice(-1);
    seen.saves.push({ ofWindow: words.length > 1, ...options });
    return seen.saveAs ? { filePath: seen.saveAs } : {};
  },
};
dialog.showMessageBox = async (_window, { message, buttons }) => {
  seen.messages.push({ message, buttons });
  return { response: seen.press };
};
dialog.showErrorBox = (title, message) => seen.errors.push({ title, message });
export const Menu = {
  buildFromTemplate: (template) => template,
  setApplicationMenu: (menu) => seen.menus.push(menu),
};
export const ipcMain = Object.assign(new EventEmitter(), {
  handle: (channel, handler) => (seen.channels[channel] = handler),
});
export const protocol = {
  registerSchemesAsPrivileged: (schemes) => seen.schemes.push(...schemes),
  handle: (scheme, handler) => (seen.handlers[scheme] = handler),
};
export const session = {
  defaultSession: {
    setPermissionRequestHandler: (handler) => (seen.permissions.request = handler),
    setPermissionCheckHandler: (handler) => (seen.permissions.check = handler),
    setDevicePermissionHandler: (handler) => (seen.permissions.device = handler),
    setSpellCheckerEnabled: (on) => (seen.spellChecker = on),
    webRequest: { onBeforeRequest: (handler) => (seen.beforeRequest = handler) },
    on: (name, handler) => (seen.fromPage[name] = handler),
  },
};
export const contextBridge = { exposeInMainWorld: (name, api) => (seen.exposed[name] = api) };
export const ipcRenderer = {
  invoke: (...words) => {
    seen.invoked.push(words);
    return Promise.resolve({ ok: true });
  },
  on: (channel, listener) => (seen.fromPage[channel] = listener),
  send: (...words) => seen.invoked.push(words),
};

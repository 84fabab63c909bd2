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
  saves: [],
  printed: [],
  /** where the person says to save; null while the dialog is cancelled */
  saveAs: null,
};

class Contents extends EventEmitter {
  setWindowOpenHandler(handler) {
    this.openHandler = handler;
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
  }
  loadURL(url) {
    seen.loaded.push(url);
    return Promise.resolve();
  }
  show() {}
  focus() {
    this.focused = true;
  }
  restore() {}
  isMinimized() {
    return false;
  }
}

export const app = Object.assign(new EventEmitter(), {
  requestSingleInstanceLock: () => process.env.STAND_IN_SECOND !== "yes",
  whenReady: () => Promise.resolve(),
  quit: () => {
    seen.quits += 1;
    app.emit("will-quit");
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
export const ipcMain = { handle: (channel, handler) => (seen.channels[channel] = handler) };
export const protocol = {
  registerSchemesAsPrivileged: (schemes) => seen.schemes.push(...schemes),
  handle: (scheme, handler) => (seen.handlers[scheme] = handler),
};
export const session = {
  defaultSession: {
    setPermissionRequestHandler: (handler) => (seen.permissions.request = handler),
    setPermissionCheckHandler: (handler) => (seen.permissions.check = handler),
  },
};
export const contextBridge = { exposeInMainWorld: (name, api) => (seen.exposed[name] = api) };
export const ipcRenderer = {
  invoke: (...words) => {
    seen.invoked.push(words);
    return Promise.resolve({ ok: true });
  },
};

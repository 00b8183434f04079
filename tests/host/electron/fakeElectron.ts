import { vi } from 'vitest';

/** Electron's side of the seam, recorded: what the app asked for, and the handlers it left behind. */
export const createFakeElectron = () => {
  const frame = { url: 'app://lullwright/index.html' };
  const record = {
    options: null as unknown,
    schemes: null as unknown,
    menu: [] as unknown[],
    sent: [] as unknown[],
    loaded: [] as string[],
    exposed: {} as Record<string, unknown>,
    invoked: [] as unknown[],
    quits: 0,
    locked: true,
    ready: false,
    schemesBeforeReady: false,
    frame,
    answers: new Map<string, (event: unknown, request: unknown) => Promise<unknown>>(),
    serve: null as ((request: Request) => Promise<Response>) | null,
    openHandler: null as ((details: { url: string }) => { action: string }) | null,
    permissionRequest: null as ((contents: null, permission: string, decide: (yes: boolean) => void) => void) | null,
    permissionCheck: null as (() => boolean) | null,
    pageEvents: new Map<string, (event: { url: string; preventDefault: () => void }) => void>(),
    appEvents: new Map<string, () => void>(),
    saveDialog: vi.fn(),
    printToPDF: vi.fn(),
    messageBox: vi.fn(),
    errorBox: vi.fn(),
    exits: [] as number[],
    focused: 0,
  };
  class BrowserWindow {
    readonly webContents = {
      mainFrame: frame,
      setWindowOpenHandler: (handler: typeof record.openHandler) => (record.openHandler = handler),
      on: (name: string, handler: (event: { url: string; preventDefault: () => void }) => void) =>
        record.pageEvents.set(name, handler),
      send: (...message: unknown[]) => record.sent.push(message),
      printToPDF: record.printToPDF,
    };
    constructor(options: unknown) {
      record.options = options;
    }
    once(): void {
      // shown when ready: nothing to show here
    }
    isMinimized(): boolean {
      return false;
    }
    focus(): void {
      record.focused += 1;
    }
    loadURL(url: string): Promise<void> {
      record.loaded.push(url);
      return Promise.resolve();
    }
  }
  const electron = {
    BrowserWindow,
    app: {
      requestSingleInstanceLock: () => record.locked,
      setPath: () => undefined,
      quit: () => (record.quits += 1),
      exit: (code: number) => record.exits.push(code),
      whenReady: () => {
        record.ready = true;
        return Promise.resolve();
      },
      on: (name: string, handler: () => void) => record.appEvents.set(name, handler),
    },
    protocol: {
      registerSchemesAsPrivileged: (schemes: unknown) => {
        record.schemes = schemes;
        record.schemesBeforeReady = !record.ready;
      },
      handle: (_scheme: string, handler: typeof record.serve) => (record.serve = handler),
    },
    ipcMain: {
      handle: (channel: string, handler: (event: unknown, request: unknown) => Promise<unknown>) =>
        record.answers.set(channel, handler),
    },
    session: {
      defaultSession: {
        setPermissionRequestHandler: (handler: typeof record.permissionRequest) => (record.permissionRequest = handler),
        setPermissionCheckHandler: (handler: typeof record.permissionCheck) => (record.permissionCheck = handler),
      },
    },
    dialog: {
      showSaveDialog: record.saveDialog,
      showMessageBoxSync: record.messageBox,
      showErrorBox: record.errorBox,
    },
    Menu: {
      buildFromTemplate: (template: unknown[]) => template,
      setApplicationMenu: (menu: unknown[]) => (record.menu = menu),
    },
    contextBridge: { exposeInMainWorld: (name: string, api: unknown) => (record.exposed[name] = api) },
    ipcRenderer: {
      invoke: (...message: unknown[]) => {
        record.invoked.push(message);
        return Promise.resolve({ ok: true, value: null });
      },
      on: () => undefined,
    },
  };
  return { record, electron };
};

/**
 * Stands in for the `electron` module where there is no window: events are really emitted, handlers
 * really called, ports really carry messages. What was asked of it can be read back.
 */
import { EventEmitter } from 'node:events';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

type Handler = (...given: unknown[]) => unknown;

class App extends EventEmitter {
  readonly log: string[] = [];
  readonly paths: Record<string, string> = { appData: '/app-data', temp: tmpdir() };
  switches: string[] = [];
  isFirst = true;
  appPath = join(import.meta.dirname, '../..');

  readonly commandLine = { hasSwitch: (name: string) => this.switches.includes(name) };
  whenReady = async () => void this.log.push('ready');
  getAppPath = () => this.appPath;
  getPath = (name: string) => this.paths[name] ?? `/unset/${name}`;
  setPath = (name: string, path: string) => {
    this.paths[name] = path;
    this.log.push(`setPath ${name}`);
  };
  requestSingleInstanceLock = () => this.isFirst;
  /** As Electron does it: asks first, and ends only where nobody objected. */
  quit = () => {
    let prevented = false;
    this.emit('will-quit', {
      preventDefault: () => {
        prevented = true;
      },
    });
    this.log.push(prevented ? 'quit delayed' : 'quit');
    if (!prevented) this.emit('quit');
  };
}

export const app = new App();

/** One end of a channel: holds messages back until started, as Electron's does. */
class Port extends EventEmitter {
  other: Port | null = null;
  #started = false;
  #held: unknown[] = [];

  start(): void {
    this.#started = true;
    for (const data of this.#held.splice(0)) this.emit('message', { data, ports: [] });
  }

  postMessage(data: unknown): void {
    const copy = structuredClone(data);
    queueMicrotask(() => this.other?.receive(copy));
  }

  receive(data: unknown): void {
    if (this.#started) this.emit('message', { data, ports: [] });
    else this.#held.push(data);
  }

  close(): void {
    const { other } = this;
    this.other = null;
    if (other === null) return;
    other.other = null;
    other.emit('close');
  }
}

export class MessageChannelMain {
  readonly port1 = new Port();
  readonly port2 = new Port();
  constructor() {
    this.port1.other = this.port2;
    this.port2.other = this.port1;
  }
}

export class Contents extends EventEmitter {
  openHandler: ((details: { url: string }) => { action: string }) | null = null;
  readonly received: { channel: string; ports: Port[] }[] = [];
  destroyed = false;
  isDestroyed = () => this.destroyed;
  setWindowOpenHandler(handler: (details: { url: string }) => { action: string }): void {
    this.openHandler = handler;
  }
  postMessage(channel: string, _message: unknown, ports: Port[]): void {
    this.received.push({ channel, ports });
  }
}

export class BrowserWindow extends EventEmitter {
  static all: BrowserWindow[] = [];
  static getAllWindows = () => BrowserWindow.all;
  readonly options: { webPreferences: Record<string, unknown>; [name: string]: unknown };
  readonly webContents = new Contents();
  readonly log: string[] = [];
  minimized = false;

  constructor(options: BrowserWindow['options']) {
    super();
    this.options = options;
    BrowserWindow.all.push(this);
    app.emit('web-contents-created', {}, this.webContents);
  }
  loadURL = async (url: string) => void this.log.push(`load ${url}`);
  show = () => void this.log.push('show');
  focus = () => void this.log.push('focus');
  restore = () => void this.log.push('restore');
  isMinimized = () => this.minimized;
  setMenuBarVisibility = (visible: boolean) => void this.log.push(`menu bar ${visible}`);
}

class IpcMain extends EventEmitter {
  readonly handlers = new Map<string, Handler>();
  handle(channel: string, handler: Handler): void {
    if (this.handlers.has(channel)) throw new Error(`second handler for ${channel}`);
    this.handlers.set(channel, handler);
  }
}

export const ipcMain = new IpcMain();

interface Scheme {
  scheme: string;
  privileges: Record<string, boolean>;
}

export const protocol = {
  schemes: [] as Scheme[],
  handlers: new Map<string, (request: Request) => Promise<Response>>(),
  registerSchemesAsPrivileged(schemes: Scheme[]): void {
    if (app.log.includes('ready')) throw new Error('too late: the app is ready');
    protocol.schemes.push(...schemes);
  },
  handle(scheme: string, handler: (request: Request) => Promise<Response>): void {
    if (!app.log.includes('ready')) throw new Error('too early: the app is not ready');
    protocol.handlers.set(scheme, handler);
  },
};

type Decide = (contents: unknown, permission: string, decide: (yes: boolean) => void) => void;

export const session = {
  defaultSession: {
    request: null as Decide | null,
    check: null as ((contents: unknown, permission: string, origin: string) => boolean) | null,
    device: null as (() => boolean) | null,
    setPermissionRequestHandler(handler: Decide): void {
      this.request = handler;
    },
    setPermissionCheckHandler(handler: () => boolean): void {
      this.check = handler;
    },
    setDevicePermissionHandler(handler: () => boolean): void {
      this.device = handler;
    },
  },
};

export const shell = {
  opened: [] as string[],
  /** What the system says to the next file; empty where it opened. */
  problem: '',
  refusesLinks: false,
  async openExternal(url: string): Promise<void> {
    if (shell.refusesLinks) throw new Error('no program for this link');
    shell.opened.push(url);
  },
  async openPath(file: string): Promise<string> {
    shell.opened.push(file);
    return shell.problem;
  },
};

export const dialog = {
  shown: [] as string[],
  response: 1,
  folder: { canceled: true, filePaths: [] as string[] },
  showErrorBox: (title: string, content: string) => void dialog.shown.push(`${title}: ${content}`),
  async showMessageBox(options: { message: string; detail: string }) {
    dialog.shown.push(`${options.message} ${options.detail}`);
    return { response: dialog.response };
  },
  showOpenDialog: async () => dialog.folder,
};

interface MenuItem {
  role?: string;
  submenu?: MenuItem[];
}

export const Menu = {
  template: [] as MenuItem[],
  buildFromTemplate: (template: MenuItem[]) => template,
  setApplicationMenu: (template: MenuItem[]) => {
    Menu.template = template;
  },
};

/** A core process that only exists as far as the main process can see it. */
export class Child extends EventEmitter {
  readonly file: string;
  readonly args: string[];
  readonly options: { serviceName?: string };
  readonly told: { message: unknown; ports: Port[] }[] = [];
  killed = false;

  constructor(file: string, args: string[], options: { serviceName?: string }) {
    super();
    this.file = file;
    this.args = args;
    this.options = options;
  }
  postMessage(message: unknown, ports: Port[] = []): void {
    this.told.push({ message: structuredClone(message), ports });
  }
  kill(): boolean {
    this.killed = true;
    this.emit('exit', 1);
    return true;
  }
}

export const utilityProcess = {
  children: [] as Child[],
  fork(file: string, args: string[], options: { serviceName?: string }): Child {
    const child = new Child(file, args, options);
    utilityProcess.children.push(child);
    return child;
  },
};

/** Puts everything back as it was before the first test. */
export function resetStandIn(): void {
  app.removeAllListeners();
  app.log.length = 0;
  app.switches = [];
  app.isFirst = true;
  app.appPath = join(import.meta.dirname, '../..');
  BrowserWindow.all = [];
  ipcMain.removeAllListeners();
  ipcMain.handlers.clear();
  protocol.schemes = [];
  protocol.handlers.clear();
  Object.assign(session.defaultSession, { request: null, check: null, device: null });
  Object.assign(shell, { opened: [], problem: '', refusesLinks: false });
  Object.assign(dialog, { shown: [], response: 1, folder: { canceled: true, filePaths: [] } });
  utilityProcess.children = [];
}

import {
  dialog,
  MessageChannelMain,
  type MessagePortMain,
  type UtilityProcess,
  utilityProcess,
  type WebContents,
} from 'electron';
import { desktopChannels } from '../shared/desktop.ts';
import type { CoreMessage } from './core-message.ts';
import { dataArgumentFor } from './data-folder.ts';
import { hear } from './ipc.ts';
import { programFile } from './program-files.ts';
import { type RestartBudget, restartBudget } from './restart-budget.ts';

/** The core closes its files within this time, ms, or is ended: every write is already on disk. */
const stopPatience = 5000;

export interface CoreProcess {
  /** Resolves when the core has closed the shop and ended. */
  stop(): Promise<void>;
}

export interface CoreProcessOptions {
  dataFolder: string;
  /** Ends the whole program. */
  quit: () => void;
  budget?: RestartBudget;
}

const threeAMinute = () =>
  restartBudget({ restarts: 3, within: 60_000, now: () => performance.now() });

function tell(core: UtilityProcess, message: CoreMessage, ports: MessagePortMain[] = []): void {
  core.postMessage(message, ports);
}

function connect(core: UtilityProcess, page: WebContents): void {
  const { port1, port2 } = new MessageChannelMain();
  tell(core, { type: 'port' }, [port1]);
  page.postMessage(desktopChannels.corePort, null, [port2]);
}

function fork(dataFolder: string): UtilityProcess {
  return utilityProcess.fork(programFile('coreUtility'), [dataArgumentFor(dataFolder)], {
    serviceName: 'Tillermark core',
  });
}

async function wantsToTryAgain(dataFolder: string): Promise<boolean> {
  const { response } = await dialog.showMessageBox({
    type: 'error',
    title: 'Tillermark',
    message: 'The shop keeps closing by itself.',
    detail: `Your records are in ${dataFolder}. Check that the disk is not full, then try again; if it happens again, restart the computer.`,
    buttons: ['Try again', 'Quit'],
    defaultId: 0,
    cancelId: 1,
    noLink: true,
  });
  return response === 0;
}

/** Asks the core to close the shop; ends it where it does not in time. */
function stopped(core: UtilityProcess): Promise<void> {
  return new Promise((done) => {
    const impatient = setTimeout(() => core.kill(), stopPatience);
    core.once('exit', () => {
      clearTimeout(impatient);
      done();
    });
    tell(core, { type: 'stop' });
  });
}

/** Keeps the core process running and hands each page that asks its own port to it. */
export function setupCoreProcess(options: CoreProcessOptions): CoreProcess {
  const budget = options.budget ?? threeAMinute();
  /** Pages that asked while there was no core. */
  const waiting = new Set<WebContents>();
  let child: UtilityProcess | null = null;
  let stopping = false;

  const start = () => {
    const core = fork(options.dataFolder);
    child = core;
    core.once('exit', () => {
      child = null;
      if (stopping) return;
      if (budget.take()) start();
      else void askWhatNow();
    });
    for (const page of waiting) if (!page.isDestroyed()) connect(core, page);
    waiting.clear();
  };

  const askWhatNow = async () => {
    if (!(await wantsToTryAgain(options.dataFolder))) return options.quit();
    if (stopping) return;
    budget.refill();
    start();
  };

  hear(desktopChannels.corePortPlease, (page) => {
    if (child === null) waiting.add(page);
    else connect(child, page);
  });

  start();

  return {
    stop: async () => {
      stopping = true;
      if (child !== null) await stopped(child);
    },
  };
}

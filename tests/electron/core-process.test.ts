import { beforeEach, describe, expect, test, vi } from 'vitest';
import { type CoreProcess, setupCoreProcess } from '../../electron/core-process.ts';
import { restartBudget } from '../../electron/restart-budget.ts';
import { ourPage, strangers } from './senders.ts';
import { app, type Child, dialog, ipcMain, resetStandIn, utilityProcess } from './stand-in.ts';

vi.mock('electron', () => import('./stand-in.ts'));

const clock = { now: 0 };
const quit = vi.fn();
let core: CoreProcess;

beforeEach(() => {
  resetStandIn();
  quit.mockClear();
  clock.now = 0;
  const budget = restartBudget({ restarts: 3, within: 60_000, now: () => clock.now });
  core = setupCoreProcess({ dataFolder: '/shop of mine', quit, budget });
});

function running(): Child {
  const child = utilityProcess.children.at(-1);
  if (child === undefined) throw new Error('no core process');
  return child;
}
const crash = () => running().emit('exit', 1);
const askForPort = (from = ourPage()) => ipcMain.emit('core-port-please', from);

test('the core process is the built one, under its name, told its data folder', () => {
  expect(running()).toMatchObject({
    file: `${app.appPath}/dist/electron/core-utility.mjs`,
    args: ['--data=/shop of mine'],
    options: { serviceName: 'Tillermark core' },
  });
});

describe('ports', () => {
  test('the page and the core get the two ends of one channel', async () => {
    const from = ourPage();
    askForPort(from);
    const [toCore] = running().told;
    const [toPage] = from.sender.received;
    expect(toCore?.message).toEqual({ type: 'port' });
    expect(toPage?.channel).toBe('core-port');

    const heard = vi.fn();
    toCore?.ports[0]?.on('message', (event: { data: unknown }) => heard(event.data));
    toCore?.ports[0]?.start();
    toPage?.ports[0]?.postMessage('hello');
    await vi.waitFor(() => expect(heard).toHaveBeenCalledWith('hello'));
  });

  test('each page gets a channel of its own', () => {
    const pages = [ourPage(), ourPage()];
    for (const from of pages) askForPort(from);
    const ends = pages.map((from) => from.sender.received[0]?.ports[0]);
    expect(ends[0]).toBeDefined();
    expect(ends[0]).not.toBe(ends[1]);
    expect(running().told).toHaveLength(2);
  });

  test.each(strangers)('%s gets none', (_who, from) => {
    askForPort(from);
    expect(running().told).toEqual([]);
    expect(from.sender.received).toEqual([]);
  });

  test('after a restart a port leads to the new core', () => {
    const first = running();
    crash();
    askForPort();
    expect(first.told).toEqual([]);
    expect(running().told).toHaveLength(1);
  });
});

describe('a core that ends by itself', () => {
  test('is started again three times a minute, then the person is asked', async () => {
    for (let i = 0; i < 3; i++) crash();
    expect(utilityProcess.children).toHaveLength(4);
    expect(dialog.shown).toEqual([]);
    crash();
    expect(utilityProcess.children).toHaveLength(4);
    expect(dialog.shown).toHaveLength(1);
    expect(dialog.shown[0]).toContain('/shop of mine');
    await vi.waitFor(() => expect(quit).toHaveBeenCalledOnce());
  });

  test('is started again for ever if it ends seldom', () => {
    for (let i = 0; i < 10; i++) {
      clock.now += 30_000;
      crash();
    }
    expect(utilityProcess.children).toHaveLength(11);
  });

  test('gets a fresh start when the person says try again', async () => {
    dialog.response = 0;
    for (let i = 0; i < 4; i++) crash();
    await vi.waitFor(() => expect(utilityProcess.children).toHaveLength(5));
    crash();
    expect(utilityProcess.children).toHaveLength(6);
    expect(quit).not.toHaveBeenCalled();
  });

  test('connects the pages that asked meanwhile, each once, when it is back', async () => {
    dialog.response = 0;
    const [asking, closed] = [ourPage(), ourPage()];
    for (let i = 0; i < 4; i++) crash();
    for (const from of [asking, asking, closed]) askForPort(from);
    expect(asking.sender.received).toEqual([]);
    closed.sender.destroyed = true;
    await vi.waitFor(() => expect(utilityProcess.children).toHaveLength(5));
    expect(asking.sender.received).toHaveLength(1);
    expect(closed.sender.received).toEqual([]);
    expect(running().told).toHaveLength(1);
    crash();
    expect(running().told).toEqual([]);
  });
});

describe('stopping', () => {
  test('waits until the core has closed the shop, and starts no other', async () => {
    const stopped = vi.fn();
    const stopping = core.stop().then(stopped);
    expect(running().told).toEqual([{ message: { type: 'stop' }, ports: [] }]);
    await Promise.resolve();
    expect(stopped).not.toHaveBeenCalled();
    running().emit('exit', 0);
    await stopping;
    expect(utilityProcess.children).toHaveLength(1);
    expect(running().killed).toBe(false);
  });

  test('ends a core that does not close in time', async () => {
    vi.useFakeTimers();
    try {
      const stopping = core.stop();
      await vi.advanceTimersByTimeAsync(4999);
      expect(running().killed).toBe(false);
      await vi.advanceTimersByTimeAsync(1);
      expect(running().killed).toBe(true);
      await stopping;
    } finally {
      vi.useRealTimers();
    }
  });

  test('a person who answers the question after that gets no new core', async () => {
    dialog.response = 0;
    for (let i = 0; i < 4; i++) crash();
    await core.stop();
    await vi.waitFor(() => expect(dialog.shown).toHaveLength(1));
    await new Promise(setImmediate);
    expect(utilityProcess.children).toHaveLength(4);
  });
});

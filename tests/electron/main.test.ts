// Bound to the stand-in before modules are reset, so that every start meets the same one.
import 'electron';
import { beforeEach, expect, test, vi } from 'vitest';
import { app, BrowserWindow, ipcMain, protocol, resetStandIn, utilityProcess } from './stand-in.ts';

vi.mock('electron', () => import('./stand-in.ts'));

beforeEach(() => {
  resetStandIn();
  vi.resetModules();
  vi.stubEnv('TILLERMARK_DATA', '/shop');
});

const start = () => import('../../electron/main.ts');

test('start-up ends with one core, one window, every channel answered', async () => {
  await start();
  await vi.waitFor(() => expect(BrowserWindow.all).toHaveLength(1));
  expect(app.paths.userData).toMatch(/app-data.Tillermark window$/);
  expect(app.log).toEqual(['setPath userData', 'ready']);
  expect(protocol.schemes).toHaveLength(1);
  expect(protocol.handlers.has('tillermark')).toBe(true);
  expect(utilityProcess.children.map((child) => child.args)).toEqual([['--data=/shop']]);
  expect([...ipcMain.handlers.keys()].sort()).toEqual(['choose-folder', 'open-pdf']);
  expect(ipcMain.eventNames()).toEqual(['core-port-please']);
});

test('the window it opens is guarded', async () => {
  await start();
  await vi.waitFor(() => expect(BrowserWindow.all).toHaveLength(1));
  const preventDefault = vi.fn();
  BrowserWindow.all[0]?.webContents.emit('will-navigate', {
    url: 'https://example.org/',
    isMainFrame: true,
    preventDefault,
  });
  expect(preventDefault).toHaveBeenCalledOnce();
});

test('a second start opens nothing and ends', async () => {
  app.isFirst = false;
  await start();
  expect(app.log).toEqual(['setPath userData', 'quit']);
  expect(BrowserWindow.all).toEqual([]);
  expect(utilityProcess.children).toEqual([]);
});

test('a browser folder named on the command line is kept', async () => {
  app.switches = ['user-data-dir'];
  await start();
  expect(app.log).not.toContain('setPath userData');
});

test('a second start shows the first window', async () => {
  await start();
  await vi.waitFor(() => expect(BrowserWindow.all).toHaveLength(1));
  app.emit('second-instance');
  expect(BrowserWindow.all[0]?.log.slice(-2)).toEqual(['show', 'focus']);
});

test('closing the window closes the shop first and the program then', async () => {
  await start();
  await vi.waitFor(() => expect(BrowserWindow.all).toHaveLength(1));
  app.emit('window-all-closed');
  expect(app.log.at(-1)).toBe('quit delayed');
  const [child] = utilityProcess.children;
  expect(child?.told).toEqual([{ message: { type: 'stop' }, ports: [] }]);
  child?.emit('exit', 0);
  await vi.waitFor(() => expect(app.log.at(-1)).toBe('quit'));
});

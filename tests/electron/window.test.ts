import { beforeEach, expect, test, vi } from 'vitest';
import { setupMenu } from '../../electron/menu.ts';
import { openWindow, showWindow } from '../../electron/window.ts';
import { app, type BrowserWindow, Menu, resetStandIn } from './stand-in.ts';

vi.mock('electron', () => import('./stand-in.ts'));
beforeEach(resetStandIn);

const opened = () => openWindow() as unknown as BrowserWindow;

test('the page is locked in: isolated, sandboxed, without Node', () => {
  expect(opened().options.webPreferences).toMatchObject({
    contextIsolation: true,
    sandbox: true,
    nodeIntegration: false,
    webSecurity: true,
    spellcheck: false,
    preload: `${app.appPath}/dist/electron/preload.cjs`,
  });
});

test('the window has its name, ground and least size, and shows once it is drawn', () => {
  const window = opened();
  expect(window.options).toMatchObject({
    title: 'Tillermark',
    minWidth: 1024,
    minHeight: 700,
    backgroundColor: '#F6F4EF',
    show: false,
  });
  expect(window.log).toEqual(['menu bar false', 'load tillermark://app/']);
  window.emit('ready-to-show');
  expect(window.log).toContain('show');
});

test('a second start brings a minimized window back to the front', () => {
  const window = opened();
  window.minimized = true;
  window.log.length = 0;
  showWindow();
  expect(window.log).toEqual(['restore', 'show', 'focus']);
});

test('a second start before the first window is open does nothing', () => {
  expect(showWindow).not.toThrow();
});

test.each(['linux', 'win32', 'darwin'] as const)(
  'the menu of %s holds no reload and no developer tools',
  (platform) => {
    setupMenu(platform);
    const roles = Menu.template
      .flatMap((item) => [item, ...(item.submenu ?? [])])
      .map((i) => i.role);
    expect(roles).toContain('zoomIn');
    expect(roles).toContain('editMenu');
    expect(roles).toContain(platform === 'darwin' ? 'appMenu' : 'quit');
    for (const surprise of ['reload', 'forceReload', 'toggleDevTools', 'viewMenu', 'help']) {
      expect(roles).not.toContain(surprise);
    }
  },
);

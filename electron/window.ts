import { BrowserWindow } from 'electron';
import { desktopOrigin } from '../shared/desktop.ts';
import { programFile } from './program-files.ts';

/** The ground colour of the page, so that nothing flashes before it is drawn. */
const bone = '#F6F4EF';

export function openWindow(): BrowserWindow {
  const window = new BrowserWindow({
    title: 'Tillermark',
    width: 1280,
    height: 860,
    minWidth: 1024,
    minHeight: 700,
    backgroundColor: bone,
    show: false,
    webPreferences: {
      preload: programFile('preload'),
      contextIsolation: true,
      sandbox: true,
      nodeIntegration: false,
      webSecurity: true,
      // Chromium would fetch dictionaries from the network.
      spellcheck: false,
    },
  });
  // The menu's keys work; its bar would only repeat them.
  window.setMenuBarVisibility(false);
  window.once('ready-to-show', () => window.show());
  void window.loadURL(`${desktopOrigin}/`);
  return window;
}

/** A second start brings the first window forward. */
export function showWindow(): void {
  const [window] = BrowserWindow.getAllWindows();
  if (window === undefined) return;
  if (window.isMinimized()) window.restore();
  window.show();
  window.focus();
}

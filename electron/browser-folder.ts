import { join } from 'node:path';
import { app } from 'electron';

/**
 * Chromium's own files stand apart from the shop: on Windows and macOS its usual folder and the
 * shop's would be one and the same.
 */
export function setupBrowserFolder(): void {
  if (app.commandLine.hasSwitch('user-data-dir')) return;
  app.setPath('userData', join(app.getPath('appData'), 'Tillermark window'));
}

import { app } from 'electron';
import { setupBrowserFolder } from './browser-folder.ts';
import { setupCoreProcess } from './core-process.ts';
import { dataFolderFrom } from './data-folder.ts';
import { setupFolderDialog } from './folder-dialog.ts';
import { setupPageGuards, setupPermissions } from './guards.ts';
import { setupMenu } from './menu.ts';
import { setupPrinting } from './printing.ts';
import { setupProtocol, setupScheme } from './protocol.ts';
import { setupQuitting } from './quitting.ts';
import { setupSingleInstance } from './single-instance.ts';
import { openWindow } from './window.ts';

async function start(): Promise<void> {
  setupScheme();
  setupPageGuards();
  await app.whenReady();
  setupMenu(process.platform);
  setupPermissions();
  setupProtocol();
  setupPrinting();
  setupFolderDialog();
  setupQuitting(
    setupCoreProcess({ dataFolder: dataFolderFrom(process.argv), quit: () => app.quit() }),
  );
  openWindow();
}

setupBrowserFolder();
if (setupSingleInstance()) void start();
else app.quit();

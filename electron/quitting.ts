import { app } from 'electron';
import type { CoreProcess } from './core-process.ts';

/** One window is the program: closing it closes the shop, and the shop is closed before the program ends. */
export function setupQuitting(core: CoreProcess): void {
  let closed = false;
  app.on('window-all-closed', () => app.quit());
  app.on('will-quit', (event) => {
    if (closed) return;
    event.preventDefault();
    void core.stop().finally(() => {
      closed = true;
      app.quit();
    });
  });
}

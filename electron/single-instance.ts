import { app } from 'electron';
import { showWindow } from './window.ts';

/** False in a second start, which only shows the first one's window. */
export function setupSingleInstance(): boolean {
  if (!app.requestSingleInstanceLock()) return false;
  app.on('second-instance', showWindow);
  return true;
}

import { type IpcMainEvent, type IpcMainInvokeEvent, ipcMain, type WebContents } from 'electron';
import { type DesktopChannel, desktopOrigin } from '../shared/desktop.ts';

/** Only the top frame of our own page may speak to the main process. */
function isOurPage(event: IpcMainEvent | IpcMainInvokeEvent): boolean {
  const frame = event.senderFrame;
  return frame !== null && frame.parent === null && frame.origin === desktopOrigin;
}

/** Answers a question of the page. A foreign sender gets an error and no answer. */
export function answer<Result>(
  channel: DesktopChannel,
  reply: (...given: unknown[]) => Promise<Result>,
): void {
  ipcMain.handle(channel, (event, ...given: unknown[]) => {
    if (!isOurPage(event)) throw new Error(`${channel}: this page may not ask.`);
    return reply(...given);
  });
}

/** Hears a message of the page. A foreign sender is not heard. */
export function hear(channel: DesktopChannel, act: (sender: WebContents) => void): void {
  ipcMain.on(channel, (event) => {
    if (isOurPage(event)) act(event.sender);
  });
}

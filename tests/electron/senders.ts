import { Contents, ipcMain } from './stand-in.ts';

interface Sender {
  sender: Contents;
  senderFrame: { origin: string; parent: unknown } | null;
}

export const ourPage = (sender = new Contents()): Sender => ({
  sender,
  senderFrame: { origin: 'tillermark://app', parent: null },
});

/** Everybody who must not be heard, by what is wrong with them. */
export const strangers: [string, Sender][] = [
  ['a foreign site', { ...ourPage(), senderFrame: { origin: 'https://app', parent: null } }],
  ['a file', { ...ourPage(), senderFrame: { origin: 'file://', parent: null } }],
  ['a longer host', { ...ourPage(), senderFrame: { origin: 'tillermark://app.x', parent: null } }],
  ['an opaque origin', { ...ourPage(), senderFrame: { origin: 'null', parent: null } }],
  [
    'a frame in our page',
    { ...ourPage(), senderFrame: { origin: 'tillermark://app', parent: {} } },
  ],
  ['a frame that is gone', { ...ourPage(), senderFrame: null }],
];

/** Asks the main process as the page would, by default as our own. */
export async function ask(channel: string, given: unknown[], from = ourPage()): Promise<unknown> {
  const handler = ipcMain.handlers.get(channel);
  if (handler === undefined) throw new Error(`nobody answers ${channel}`);
  return handler(from, ...given);
}

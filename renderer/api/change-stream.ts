import { api } from './client.ts';
import { reportConnection } from './connection.ts';
import { queryClient } from './queries.ts';

type Message = 'changed' | 'lost' | 'open';
const channelName = 'tillermark-changes';
const firstWaitMs = 500;
const longestWaitMs = 8000;
/** Several commands in one breath are read again once. */
const gatherMs = 60;

let gathering = false;

function readAgain(): void {
  if (gathering) return;
  gathering = true;
  setTimeout(() => {
    gathering = false;
    void queryClient.invalidateQueries();
  }, gatherMs);
}

function receive(message: Message): void {
  if (message !== 'changed') reportConnection(message);
  if (message !== 'lost') readAgain();
}

const pause = (ms: number) => new Promise((resolve) => setTimeout(resolve, ms));

/** Reads the one change stream of this browser for all its tabs, and opens it again when it ends. */
async function lead(tell: (message: Message) => void, stop: AbortSignal): Promise<void> {
  let wait = firstWaitMs;
  while (!stop.aborted) {
    try {
      const stream = await api.system.changes(undefined, { signal: stop });
      wait = firstWaitMs;
      tell('open');
      for await (const _ of stream) tell('changed');
    } catch {
      // Whatever ended the stream, the cure is the same: say so, wait, open it again.
    }
    if (stop.aborted) return;
    tell('lost');
    await pause(wait);
    wait = Math.min(wait * 2, longestWaitMs);
  }
}

/**
 * Keeps every open tab fresh. One tab holds the stream (a browser allows six connections to one
 * address); the others hear from it. Returns the function that stops it.
 */
export function followChanges(): () => void {
  const stop = new AbortController();
  const channel = new BroadcastChannel(channelName);
  channel.onmessage = (event: MessageEvent<Message>) => receive(event.data);
  const tell = (message: Message) => {
    receive(message);
    channel.postMessage(message);
  };
  navigator.locks
    .request(channelName, { signal: stop.signal }, () => lead(tell, stop.signal))
    .catch(() => undefined);
  return () => {
    stop.abort();
    channel.close();
  };
}

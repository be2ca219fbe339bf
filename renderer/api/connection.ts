import { useSyncExternalStore } from 'react';

/** `open`: calls are answered; `lost`: the last call or the change stream got no answer. */
export interface Connection {
  state: 'open' | 'lost';
  /** When it was lost, milliseconds of the browser's clock. */
  since: number;
}

let current: Connection = { state: 'open', since: Date.now() };
const listeners = new Set<() => void>();

export function connection(): Connection {
  return current;
}

export function reportConnection(state: Connection['state']): void {
  if (state === current.state) return;
  current = { state, since: Date.now() };
  for (const listener of listeners) listener();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function useConnection(): Connection {
  return useSyncExternalStore(subscribe, connection);
}

import { useSyncExternalStore } from 'react';

/** What this browser knows about itself: the key of the door, the device, and who is working. */
export interface Session {
  token: string;
  device: string;
  personId: string | null;
}

const keys = {
  token: 'tillermark-token',
  device: 'tillermark-device',
  personId: 'tillermark-person',
} as const;
const listeners = new Set<() => void>();

function read(): Session {
  return {
    token: localStorage.getItem(keys.token) ?? '',
    device: localStorage.getItem(keys.device) ?? defaultDevice(),
    personId: localStorage.getItem(keys.personId),
  };
}

function defaultDevice(): string {
  return window.tillermarkDesktop === undefined ? 'office browser' : 'office computer';
}

/** Takes the token out of `#token=...`, so that it stays in no history and no screenshot. */
function takeToken(): void {
  const given = /^#token=([\w-]+)$/.exec(location.hash)?.[1];
  if (given === undefined) return;
  localStorage.setItem(keys.token, given);
  history.replaceState(null, '', `${location.pathname}${location.search}`);
}

takeToken();
let current = read();

function refresh(): void {
  current = read();
  for (const listener of listeners) listener();
}

window.addEventListener('storage', refresh);
window.addEventListener('hashchange', () => {
  takeToken();
  refresh();
});

export function session(): Session {
  return current;
}

export function setPerson(personId: string | null): void {
  if (personId === null) localStorage.removeItem(keys.personId);
  else localStorage.setItem(keys.personId, personId);
  refresh();
}

/** Device name as it is written into the history: letters, digits, spaces, dots and dashes. */
export function setDevice(name: string): void {
  localStorage.setItem(keys.device, name.replace(/[^\w .-]/g, '').slice(0, 60));
  refresh();
}

function subscribe(listener: () => void): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

export function useSession(): Session {
  return useSyncExternalStore(subscribe, session);
}

type Listener = (commandId: string) => unknown;

const listeners = new Set<Listener>();

/** Says that a command of this window was carried out. */
export function reportDone(commandId: string): void {
  for (const listener of listeners) listener(commandId);
}

/** Hears of every command of this window that was carried out. Returns the function that stops it. */
export function onDone(listener: Listener): () => void {
  listeners.add(listener);
  return () => listeners.delete(listener);
}

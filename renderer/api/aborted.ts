import { NoAnswer } from './errors.ts';

/** Fails when the signal aborts, for calls that may never look at it themselves. */
export function aborted(signal: AbortSignal): Promise<never> {
  return new Promise((_, reject) => {
    const fail = () =>
      reject(signal.reason instanceof Error ? signal.reason : new NoAnswer('stopped'));
    if (signal.aborted) fail();
    else signal.addEventListener('abort', fail, { once: true });
  });
}

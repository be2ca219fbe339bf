import type { ClientContext, ClientLink } from '@orpc/client';
import { aborted } from './aborted.ts';
import { reportConnection } from './connection.ts';
import { NoAnswer } from './errors.ts';

const deadlineMs = 30_000;
/** Stays open for as long as the screen does. */
const streams: readonly string[] = ['system.changes'];

/** Puts a deadline on every call and keeps the connection state. */
export function withDeadline(link: ClientLink<ClientContext>): ClientLink<ClientContext> {
  return {
    call: async (path, input, options) => {
      if (streams.includes(path.join('.'))) return link.call(path, input, options);
      const late = new AbortController();
      const timer = setTimeout(() => late.abort(new NoAnswer('deadline')), deadlineMs);
      const signal = options.signal ? AbortSignal.any([options.signal, late.signal]) : late.signal;
      try {
        const answer = await Promise.race([
          link.call(path, input, { ...options, signal }),
          aborted(signal),
        ]);
        reportConnection('open');
        return answer;
      } catch (error) {
        reportConnection(error instanceof NoAnswer ? 'lost' : 'open');
        throw error;
      } finally {
        clearTimeout(timer);
      }
    },
  };
}

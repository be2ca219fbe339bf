import type { ClientContext, ClientLink } from '@orpc/client';
import { onMessagePortClose, RPCLink } from '@orpc/client/message-port';
import { corePortMessage, corePortPleaseMessage } from '../../shared/desktop.ts';
import { aborted } from './aborted.ts';
import { reportConnection } from './connection.ts';
import { NoAnswer } from './errors.ts';
import { callHeaders } from './headers.ts';

const askAgainAfterMs = 2000;

interface OpenPort {
  link: ClientLink<ClientContext>;
  /** Aborted when the port closes: a call on a closed port would wait for ever. */
  closed: AbortSignal;
}

function openPort(port: MessagePort): OpenPort {
  const closing = new AbortController();
  const link = new RPCLink<ClientContext>({ port, headers: callHeaders });
  onMessagePortClose(port, () => closing.abort(new NoAnswer('port closed')));
  port.start();
  return { link, closed: closing.signal };
}

/** The port in use, if any, and whoever waits for the next one. */
class PortHolder {
  #open: OpenPort | null = null;
  #next = Promise.withResolvers<OpenPort>();

  get isOpen(): boolean {
    return this.#open !== null;
  }

  take(opened: OpenPort): void {
    this.#open = opened;
    this.#next.resolve(opened);
    this.#next = Promise.withResolvers();
    reportConnection('open');
    opened.closed.addEventListener('abort', () => this.drop(opened));
  }

  drop(opened: OpenPort): void {
    if (this.#open !== opened) return;
    this.#open = null;
    reportConnection('lost');
  }

  async port(): Promise<OpenPort> {
    return this.#open ?? this.#next.promise;
  }
}

/** The door over a message port, as the desktop window uses it. A new port replaces a closed one. */
export function portLink(): ClientLink<ClientContext> {
  const holder = new PortHolder();
  window.addEventListener('message', (event) => {
    const port = event.ports[0];
    if (event.source !== window || event.data !== corePortMessage || port === undefined) return;
    holder.take(openPort(port));
  });
  const ask = () => {
    if (!holder.isOpen) window.postMessage(corePortPleaseMessage, location.origin);
  };
  ask();
  // The preload may not listen yet, and a core that restarts needs a moment.
  setInterval(ask, askAgainAfterMs);

  return {
    call: async (path, input, options) => {
      const opened = await holder.port();
      const { link, closed } = opened;
      // Chromium tells nobody that the far end is gone; Electron does. A missed deadline tells both.
      options.signal?.addEventListener('abort', () => {
        if (options.signal?.reason instanceof NoAnswer) holder.drop(opened);
      });
      const signal = options.signal ? AbortSignal.any([options.signal, closed]) : closed;
      return Promise.race([link.call(path, input, { ...options, signal }), aborted(closed)]);
    },
  };
}

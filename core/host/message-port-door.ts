import { StandardRPCHandler } from '@orpc/server/standard';
import { createServerPeerHandleRequestFn } from '@orpc/server/standard-peer';
import { type EncodedMessage, ServerPeer } from '@orpc/standard-server-peer';
import type { Core } from './core.ts';
import { router } from './router.ts';
import { rpcOptions } from './rpc-options.ts';

/** One end of a message channel, whatever platform it comes from. */
export interface DoorPort {
  onMessage(listener: (data: unknown) => void): void;
  onClose(listener: () => void): void;
  post(data: unknown): void;
  close(): void;
}

const handler = new StandardRPCHandler(router, rpcOptions());

function isEncoded(data: unknown): data is string | Uint8Array | ArrayBuffer {
  return typeof data === 'string' || data instanceof Uint8Array || data instanceof ArrayBuffer;
}

/**
 * Serves the contract on a message port. A message that cannot be decoded closes this port and
 * nothing else: left unhandled, its rejection would end the core for every window.
 */
export function openMessagePortDoor(core: Core, port: DoorPort): void {
  const peer = new ServerPeer((message: EncodedMessage) => port.post(message));
  const handle = createServerPeerHandleRequestFn(handler, { context: { core } });
  let open = true;

  const shut = (why: string) => {
    if (!open) return;
    open = false;
    core.log.warn({ why }, 'message port closed');
    peer.close();
    port.close();
  };

  port.onMessage((data) => {
    if (!open) return;
    if (!isEncoded(data)) {
      shut('not an encoded message');
      return;
    }
    peer.message(data, handle).catch((error: unknown) => shut(String(error)));
  });
  port.onClose(() => {
    open = false;
    peer.close();
  });
}

import { MessageChannel } from 'node:worker_threads';
import { createORPCClient } from '@orpc/client';
import { RPCLink as FetchLink } from '@orpc/client/fetch';
import { RPCLink as PortLink } from '@orpc/client/message-port';
import type { ContractRouterClient } from '@orpc/contract';
import { onTestFinished } from 'vitest';
import type { Core } from '../../core/host/core.ts';
import { openHttpDoor } from '../../core/host/http-door.ts';
import { type DoorPort, openMessagePortDoor } from '../../core/host/message-port-door.ts';
import { deviceHeader, personHeader } from '../../shared/contract/base.ts';
import type { Contract } from '../../shared/contract/index.ts';

export type Client = ContractRouterClient<Contract>;

/** A way in, and a client that goes through it as the given person. */
export interface Door {
  name: string;
  client(personId: string): Client;
}

const headersOf = (personId: string) => ({ [personHeader]: personId, [deviceHeader]: 'test' });

export const token = 'test-token-0123456789abcdef0123456789abcdef';

type NodePort = MessageChannel['port1'];

/** Node's own message port as a door port. */
export function nodeDoorPort(port: NodePort): DoorPort {
  return {
    onMessage: (listener) => port.on('message', listener),
    onClose: (listener) => port.on('close', listener),
    post: (data) => port.postMessage(data),
    close: () => port.close(),
  };
}

export async function httpDoor(core: Core): Promise<Door & { url: string }> {
  const door = await openHttpDoor(core, { port: 0, token, renderer: import.meta.dirname });
  onTestFinished(() => door.close());
  return {
    name: 'http',
    url: door.url,
    client: (personId) => httpClient(door.url, token, personId),
  };
}

export function httpClient(url: string, bearer: string, personId: string): Client {
  const link = new FetchLink({
    url: new URL('rpc', url).href,
    headers: { ...headersOf(personId), authorization: `Bearer ${bearer}` },
  });
  return createORPCClient(link);
}

export function portClient(port: NodePort, personId: string): Client {
  return createORPCClient(new PortLink({ port: port as never, headers: headersOf(personId) }));
}

/** A fresh channel for each client: a door closes a port that misbehaves. */
export function messagePortDoor(core: Core): Door & { open(): NodePort } {
  const open = () => {
    const { port1, port2 } = new MessageChannel();
    openMessagePortDoor(core, nodeDoorPort(port1));
    port2.start();
    onTestFinished(() => port2.close());
    return port2;
  };
  return { name: 'message port', open, client: (personId) => portClient(open(), personId) };
}

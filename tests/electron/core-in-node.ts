/**
 * Loaded before the built core process, in plain Node: gives it the parent port Electron would,
 * asks for its status over a real port until the shop is open, prints it, and tells it to stop.
 */
import { EventEmitter } from 'node:events';
import { setTimeout as wait } from 'node:timers/promises';
import { MessageChannel } from 'node:worker_threads';
import { createORPCClient } from '@orpc/client';
import { RPCLink } from '@orpc/client/message-port';
import type { ContractRouterClient } from '@orpc/contract';
import type { Contract } from '../../shared/contract/index.ts';

const parent = new EventEmitter();
const { port1, port2 } = new MessageChannel();

const electronPort = {
  on: (event: string, listener: (event: { data: unknown }) => void) =>
    port1.on(event as 'message', (data: unknown) => listener({ data })),
  start: () => port1.start(),
  postMessage: (data: unknown) => port1.postMessage(data),
  close: () => port1.close(),
};

async function askUntilReady(): Promise<void> {
  parent.emit('message', { data: { type: 'port' }, ports: [electronPort] });
  port2.start();
  const client: ContractRouterClient<Contract> = createORPCClient(
    new RPCLink({ port: port2 as never }),
  );
  let status = await client.system.status();
  while (status.startUp.phase !== 'ready' && status.startUp.phase !== 'needs-you') {
    await wait(20);
    status = await client.system.status();
  }
  console.log(JSON.stringify(status));
  parent.emit('message', { data: { type: 'stop' }, ports: [] });
}

parent.once('newListener', () => setImmediate(() => void askUntilReady()));
Object.assign(process, { parentPort: parent });

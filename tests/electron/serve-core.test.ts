import { EventEmitter } from 'node:events';
import { createORPCClient } from '@orpc/client';
import { RPCLink } from '@orpc/client/message-port';
import type { ParentPort } from 'electron';
import { expect, onTestFinished, test, vi } from 'vitest';
import { serveCore } from '../../electron/serve-core.ts';
import type { Client } from '../support/doors.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { MessageChannelMain } from './stand-in.ts';

type StandInPort = MessageChannelMain['port1'];

/** The page's end as the browser shows it: the data itself under `data`, listeners by name. */
function pagePort(port: StandInPort) {
  port.start();
  return {
    addEventListener: (event: string, listener: (event: { data?: unknown }) => void) =>
      port.on(event, (given?: { data: unknown }) => listener({ data: given?.data })),
    postMessage: (data: unknown) => port.postMessage(data),
  };
}

function clientOver(port: StandInPort): Client {
  return createORPCClient(new RPCLink({ port: pagePort(port) as never }));
}

async function serving() {
  const parent = new EventEmitter();
  const dataFolder = tempFolder();
  const exit = vi.fn();
  await serveCore(parent as unknown as ParentPort, dataFolder, exit);
  onTestFinished(async () => {
    if (exit.mock.calls.length === 0) parent.emit('message', { data: { type: 'stop' }, ports: [] });
    await vi.waitFor(() => expect(exit).toHaveBeenCalledOnce());
  });
  const open = () => {
    const { port1, port2 } = new MessageChannelMain();
    parent.emit('message', { data: { type: 'port' }, ports: [port1] });
    return port2;
  };
  return { parent, dataFolder, exit, open };
}

test('a page reaches the real core through the port it was handed', async () => {
  const { open, dataFolder } = await serving();
  const client = clientOver(open());
  await vi.waitFor(async () => {
    const status = await client.system.status();
    expect(status).toMatchObject({ dataFolder, startUp: { phase: 'ready' } });
  });
});

test('a port that sends rubbish is closed and the others go on', async () => {
  const { open } = await serving();
  const bad = open();
  const closed = vi.fn();
  bad.on('close', closed);
  bad.postMessage({ rubbish: true });
  await vi.waitFor(() => expect(closed).toHaveBeenCalledOnce());
  expect(await clientOver(open()).system.status()).toBeDefined();
});

test('told to stop it closes the shop and ends, once', async () => {
  const { parent, exit } = await serving();
  parent.emit('message', { data: { type: 'stop' }, ports: [] });
  await vi.waitFor(() => expect(exit).toHaveBeenCalledOnce());
});

test.each([null, 'stop', {}, { type: 'exit' }])('%j is not a message to the core', async (data) => {
  const { parent, exit, open } = await serving();
  parent.emit('message', { data, ports: [] });
  expect(await clientOver(open()).system.status()).toBeDefined();
  expect(exit).not.toHaveBeenCalled();
});

import { rmSync, writeFileSync } from 'node:fs';
import { request } from 'node:http';
import { join } from 'node:path';
import { expect, onTestFinished, test } from 'vitest';
import { Core } from '../../core/host/core.ts';
import { openHttpDoor } from '../../core/host/http-door.ts';
import { httpDoor, messagePortDoor, portClient } from '../support/doors.ts';
import { tempFolder } from '../support/temp-folder.ts';
import { takeIn, testShop } from '../support/test-shop.ts';

const token = 'a'.repeat(64);

async function openDoor(renderer = import.meta.dirname) {
  const shop = await testShop();
  const door = await openHttpDoor(shop.core, { port: 0, token, renderer });
  onTestFinished(() => door.close());
  return { shop, door };
}

/** Sent as written: fetch would tidy up the path and refuse the headers. */
function raw(
  port: number,
  method: string,
  path: string,
  headers: Record<string, string> = {},
  body = '',
): Promise<{ status: number; body: string }> {
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, method, path, headers }, (response) => {
      let text = '';
      response.on('data', (chunk: Buffer) => {
        text += chunk.toString();
      });
      response.on('end', () => resolve({ status: response.statusCode ?? 0, body: text }));
    });
    asked.on('error', reject);
    asked.end(body);
  });
}

async function until(what: () => boolean): Promise<void> {
  for (let n = 0; n < 100 && !what(); n += 1) await new Promise((done) => setTimeout(done, 20));
}

test.each(['GET', 'HEAD', 'PUT', 'DELETE', 'OPTIONS', 'PATCH'])(
  '%s on a procedure never writes and is answered below 500',
  async (method) => {
    const { shop, door } = await openDoor();
    const before = await shop.core.shop().read.selectFrom('command').select('id').execute();
    const headers = {
      authorization: `Bearer ${token}`,
      'content-type': 'application/json',
      'x-tillermark-person': shop.owner.actor.personId,
    };
    const input = { commandId: 'door-1', name: 'scale', resolutionLbf: 0.1 };
    const asQuery = `?data=${encodeURIComponent(JSON.stringify({ json: input }))}`;
    const answer = await raw(door.port, method, `/rpc/scales/add${asQuery}`, headers);
    expect(answer.status).toBeGreaterThanOrEqual(400);
    expect(answer.status).toBeLessThan(500);
    const after = await shop.core.shop().read.selectFrom('command').select('id').execute();
    expect(after.length).toBe(before.length);
  },
);

test.each([
  '/../../package.json',
  '/..%2f..%2fpackage.json',
  '/%2e%2e/%2e%2e/package.json',
  '/..%5c..%5cpackage.json',
  '/%E0%A4%A',
  '/%00',
  '//etc/passwd',
])('the path %s leads to nothing outside the pages', async (path) => {
  const { door } = await openDoor();
  const answer = await raw(door.port, 'GET', path);
  expect(answer.status).toBeLessThan(500);
  expect(answer.body).not.toContain('better-sqlite3');
  expect(answer.body).not.toContain('root:');
});

test('other names for this machine, a long header and a broken body are refused, and the door stays open', async () => {
  const { door } = await openDoor();
  const bearer = { authorization: `Bearer ${token}` };
  expect((await raw(door.port, 'GET', '/', { host: 'evil.example' })).status).toBe(403);
  expect(
    (await raw(door.port, 'GET', '/', { host: `127.0.0.1:${door.port}.evil.example` })).status,
  ).toBe(403);
  expect(
    (await raw(door.port, 'POST', '/rpc/system/status', { origin: 'null', ...bearer })).status,
  ).toBe(403);
  expect(
    (await raw(door.port, 'POST', '/rpc/system/status', { ...bearer, x: 'y'.repeat(40_000) }))
      .status,
  ).toBe(431);
  const json = { ...bearer, 'content-type': 'application/json' };
  expect((await raw(door.port, 'POST', '/rpc/people/list', json, '{"json":')).status).toBe(400);
  expect((await raw(door.port, 'POST', '/rpc/no/such', json, '{}')).status).toBe(404);
  expect((await raw(door.port, 'POST', '/rpc/__proto__/constructor', json, '{}')).status).toBe(404);
  expect((await raw(door.port, 'POST', '/rpc/system/status', json, '{}')).status).toBe(200);
});

test('a client that goes away leaves no change stream behind, at either door', async () => {
  const shop = await testShop();
  const port = messagePortDoor(shop.core);
  const http = await httpDoor(shop.core);
  const { changes } = shop.core;
  const gone = new AbortController();
  const overHttp = await http
    .client(shop.owner.actor.personId)
    .system.changes(undefined, { signal: gone.signal });
  const first = overHttp.next();
  await until(() => changes.size === 1);
  expect(changes.size).toBe(1);
  await takeIn(shop);
  expect((await first).value).toMatchObject({ name: 'intake.submit' });
  const second = overHttp.next().catch(() => 'gone');
  gone.abort();
  await second;
  await until(() => changes.size === 0);
  expect(changes.size).toBe(0);
  const channel = port.open();
  const overPort = await portClient(channel, shop.owner.actor.personId).system.changes();
  overPort.next().catch(() => 'gone');
  await until(() => changes.size === 1);
  expect(changes.size).toBe(1);
  channel.close();
  await until(() => changes.size === 0);
  expect(changes.size).toBe(0);
});

test('closing the core while calls run ends each of them whole: written and told, or neither', async () => {
  const shop = await testShop();
  const running = Array.from({ length: 10 }, () => takeIn(shop));
  const closing = shop.core.close();
  const ends = await Promise.allSettled(running);
  await closing;
  await shop.core.close();
  const again = new Core({ dataFolder: shop.folder });
  onTestFinished(() => again.close());
  expect((await again.settled()).phase).toBe('ready');
  const orders = await again.shop().read.selectFrom('shop_order').select('number').execute();
  expect(orders.length).toBe(ends.filter((end) => end.status === 'fulfilled').length);
});

test('a file of the page that an update took away ends neither the door nor the program', async () => {
  const renderer = tempFolder();
  for (const name of ['index.html', 'gone.js']) writeFileSync(join(renderer, name), name);
  const { door } = await openDoor(renderer);
  rmSync(join(renderer, 'gone.js'));
  await expect(raw(door.port, 'GET', '/gone.js')).rejects.toThrow();
  expect(await raw(door.port, 'GET', '/')).toEqual({ status: 200, body: 'index.html' });
});

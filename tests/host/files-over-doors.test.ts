import { describe, expect, test } from 'vitest';
import type { Core } from '../../core/host/core.ts';
import { type Door, httpClient, httpDoor, messagePortDoor, token } from '../support/doors.ts';
import { fileOf, gpsExif, jpegPicture } from '../support/pictures.ts';
import { seededRandom } from '../support/random.ts';
import { newCommandId, takeIn, testShop } from '../support/test-shop.ts';

const doors: [string, (core: Core) => Promise<Door>][] = [
  ['http', httpDoor],
  ['message port', async (core) => messagePortDoor(core)],
];

const mega = 1024 * 1024;

const request = (file: File, orderId: string) => ({
  commandId: newCommandId(),
  file,
  about: 'bow' as const,
  orderId,
  bowId: null,
  findingId: null,
  incidentId: null,
  shipmentId: null,
  caption: 'upper fade',
});

describe.each(doors)('over %s', (_name, open) => {
  test('a photograph goes in and comes back byte for byte, with its name', async () => {
    const shop = await testShop();
    const { id: orderId, number } = await takeIn(shop);
    const client = (await open(shop.core)).client(shop.as('bench').actor.personId);
    const bytes = await jpegPicture({ exif: gpsExif });
    const { id } = await client.attachments.add(
      request(fileOf(bytes, 'B\u00f6gen 1.jpg'), orderId),
    );
    const original = await client.attachments.image({ id, size: 'original' });
    expect(original).toMatchObject({ name: 'B\u00f6gen 1.jpg', type: 'image/jpeg' });
    expect(Buffer.from(await original.arrayBuffer()).equals(bytes)).toBe(true);
    expect((await client.attachments.image({ id, size: 'thumb' })).type).toBe('image/webp');
    const copy = await client.attachments.copyToSend({ id });
    expect(copy.name).toBe(`${number} upper fade.jpg`);
    expect(await client.attachments.list({ orderId })).toMatchObject([{ id, hasLocation: true }]);
  });

  test('exactly 25 MB goes through', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const file = fileOf(Buffer.alloc(25 * mega, 'a line of text\n'), 'long.txt');
    const { id } = await client.attachments.add(request(file, orderId));
    expect((await client.attachments.image({ id, size: 'original' })).size).toBe(25 * mega);
  }, 60_000);

  test('a little more is refused by name', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const file = fileOf(Buffer.alloc(25 * mega + 1, 'a'), 'long.txt');
    await expect(client.attachments.add(request(file, orderId))).rejects.toMatchObject({
      code: 'BAD_INPUT',
      message: 'long.txt is larger than 25 MB. Save it smaller, then add it again.',
    });
  }, 60_000);

  test('a great deal more is refused with the limit, and the door goes on', async () => {
    const shop = await testShop();
    const { id: orderId } = await takeIn(shop);
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const file = fileOf(Buffer.alloc(60 * mega, 'a'), 'film.txt');
    await expect(client.attachments.add(request(file, orderId))).rejects.toMatchObject({
      code: 'BAD_INPUT',
      message: expect.stringContaining('25 MB'),
    });
    expect(await client.attachments.list({ orderId })).toEqual([]);
  }, 60_000);
});

test('the browser door takes no call that does not tell its length', async () => {
  const shop = await testShop();
  const { url } = await httpDoor(shop.core);
  const body = new ReadableStream({
    start(controller) {
      controller.enqueue(new TextEncoder().encode('{}'));
      controller.close();
    },
  });
  const answer = await fetch(new URL('rpc/system/status', url), {
    method: 'POST',
    headers: { authorization: `Bearer ${token}` },
    body,
    duplex: 'half',
  } as RequestInit);
  expect(answer.status).toBe(400);
  expect(await answer.text()).toContain('tell their length');
  expect(shop.core.shop()).toBeDefined();
});

test('readers who leave while a file is on its way take nobody else with them', async () => {
  const shop = await testShop();
  const { id: orderId } = await takeIn(shop);
  const door = await httpDoor(shop.core);
  const personId = shop.owner.actor.personId;
  const client = door.client(personId);
  const file = fileOf(Buffer.alloc(2 * mega, 'a line of text\n'), 'long.txt');
  const { id } = await client.attachments.add(request(file, orderId));
  const random = seededRandom(7);
  const leaveSoon = async () => {
    const leaving = new AbortController();
    setTimeout(() => leaving.abort(), random() * 25);
    await httpClient(door.url, token, personId)
      .attachments.image({ id, size: 'original' }, { signal: leaving.signal })
      .catch(() => undefined);
  };
  // What is thrown where nobody can catch it ends the process, and fails this run.
  for (let i = 0; i < 40; i += 1) await Promise.all([leaveSoon(), leaveSoon(), leaveSoon()]);
  expect((await client.attachments.image({ id, size: 'original' })).size).toBe(2 * mega);
}, 60_000);

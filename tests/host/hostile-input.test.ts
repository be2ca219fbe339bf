import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import type { Core } from '../../core/host/core.ts';
import { errorCodes } from '../../shared/errors.ts';
import { procedures, type WalkedProcedure } from '../support/contract-walk.ts';
import { type Client, type Door, httpDoor, messagePortDoor } from '../support/doors.ts';
import { customerFields } from '../support/fixtures.ts';
import { type KnownIds, leavesOf, sampleOf, withValue } from '../support/sample-input.ts';
import {
  checkedScale,
  newCommandId,
  type TestShop,
  takeIn,
  testShop,
} from '../support/test-shop.ts';

/**
 * Behind both doors stands one router with one schema a procedure. So every bad value is tried at
 * every leaf through the port, and through the browser's door every leaf once, with the bad values
 * in turn: what differs there is the coding.
 */
const doors: [string, (core: Core) => Promise<Door>, 'every value' | 'in turn'][] = [
  ['http', httpDoor, 'in turn'],
  ['message port', async (core) => messagePortDoor(core), 'every value'],
];

/** Streams never end by themselves and take no input to spoil. */
const callable = procedures.filter((procedure) => procedure.name !== 'system.changes');
const typedCodes = Object.keys(errorCodes);

type Call = (input: unknown) => Promise<unknown>;

function callOf(client: Client, procedure: WalkedProcedure): Call {
  let node: unknown = client;
  for (const key of procedure.path) node = (node as Record<string, unknown>)[key];
  return node as Call;
}

interface Outcome {
  code: string | null;
  message: string;
}

async function outcomeOf(call: Call, input: unknown): Promise<Outcome> {
  try {
    await call(input);
    return { code: null, message: '' };
  } catch (error) {
    const { code, message } = error as { code?: string; message: string };
    return { code: code ?? 'untyped', message };
  }
}

/** A fingerprint of everything the shop has written down. */
async function writtenDown(shop: TestShop): Promise<string> {
  const db = shop.core.shop().read;
  const rows = await Promise.all([
    db.selectFrom('command').select('id').orderBy('id').execute(),
    db.selectFrom('draft').selectAll().orderBy('id').execute(),
    db.selectFrom('shop_order').selectAll().orderBy('id').execute(),
    db.selectFrom('customer').selectAll().orderBy('id').execute(),
    db.selectFrom('bow').selectAll().orderBy('id').execute(),
  ]);
  return createHash('sha256').update(JSON.stringify(rows)).digest('hex');
}

async function seeded(shop: TestShop): Promise<KnownIds> {
  const { id: orderId } = await takeIn(shop);
  const scaleId = await checkedScale(shop);
  return { orderId, scaleId };
}

function baseInput(procedure: WalkedProcedure, known: KnownIds): unknown {
  if (procedure.input === undefined) return undefined;
  const room = procedure.path[0] ?? '';
  const own: KnownIds = { ...known, commandId: newCommandId() };
  if (room === 'orders' && known.orderId !== undefined) own.id = known.orderId;
  if (room === 'scales' && known.scaleId !== undefined) own.id = known.scaleId;
  return sampleOf(procedure.input, 'input', own);
}

const wrong: Record<string, unknown[]> = {
  string: [
    42,
    null,
    { nested: true },
    ['list'],
    true,
    'bell\u0007',
    'nul\u0000',
    'escape\u001b[31m',
  ],
  number: ['28', null, {}, Number.MAX_VALUE, -1e9, 'NaN'],
  boolean: ['yes', 1, {}],
  enum: ['no-such-choice', 7, null, '<script>alert(1)</script>'],
  literal: ['other', 3],
  record: ['text', 5, [1]],
  file: ['text', 42, null, {}, ['list']],
};

/** Values that are bad for a leaf; optional and nullable places may be null, so null is checked by parsing. */
function hostileValues(
  procedure: WalkedProcedure,
  base: unknown,
  how: 'every value' | 'in turn',
): unknown[] {
  const schema = procedure.input;
  if (schema === undefined) return [];
  const isBad = (input: unknown) => !schema.safeParse(input).success;
  const bad = leavesOf(schema).flatMap((leaf, i) => {
    const values = (wrong[leaf.type] ?? [])
      .map((value) => withValue(base, leaf.path, value))
      .filter(isBad);
    return how === 'every value' ? values : values.slice(i % values.length).slice(0, 1);
  });
  const whole = ['text', 42, [], withValue(base, ['unknownField'], 'x')].filter(isBad);
  return [...bad, ...whole];
}

/** Procedures that take a text, each with the first such leaf. */
const takingText = callable.flatMap((procedure) => {
  const leaf = procedure.input && leavesOf(procedure.input).find((each) => each.type === 'string');
  return leaf === undefined ? [] : [{ procedure, leaf }];
});
const firstOfRoom = new Map(
  takingText.toReversed().map(({ procedure }) => [procedure.path[0], procedure.name]),
);
const megabyte = 1024 * 1024;

describe.each(doors)('over %s', (_name, open, how) => {
  test('wrong types, control characters and unknown fields: a typed refusal, nothing written', async () => {
    const shop = await testShop();
    const known = await seeded(shop);
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const before = await writtenDown(shop);
    let tried = 0;
    for (const procedure of callable) {
      const call = callOf(client, procedure);
      for (const input of hostileValues(procedure, baseInput(procedure, known), how)) {
        const { code, message } = await outcomeOf(call, input);
        if (code !== 'BAD_INPUT' || message.length <= 5) {
          expect.fail(`${procedure.name} ${JSON.stringify(input)}: ${code} ${message}`);
        }
        tried += 1;
      }
    }
    expect(tried).toBeGreaterThan(how === 'every value' ? 5000 : 1000);
    expect(await writtenDown(shop)).toBe(before);
    expect((await client.system.status()).startUp.phase).toBe('ready');
  }, 60_000);

  test('a text of 10 MB in every room, of 1 MB in any procedure: a typed refusal, nothing written', async () => {
    const shop = await testShop();
    const known = await seeded(shop);
    const door = await open(shop.core);
    const before = await writtenDown(shop);
    for (const { procedure, leaf } of takingText) {
      // The longest text that any field takes is 60,000 letters.
      const isFirst = firstOfRoom.get(procedure.path[0]) === procedure.name;
      const huge = 'x'.repeat(isFirst ? 10 * megabyte : megabyte);
      const call = callOf(door.client(shop.owner.actor.personId), procedure);
      const outcome = await outcomeOf(
        call,
        withValue(baseInput(procedure, known), leaf.path, huge),
      );
      expect(
        typedCodes,
        `${procedure.name}: ${outcome.code} ${outcome.message.slice(0, 200)}`,
      ).toContain(outcome.code);
      expect(outcome.message.length).toBeLessThan(2000);
    }
    expect(await writtenDown(shop)).toBe(before);
    expect(shop.core.shop()).toBeDefined();
  }, 120_000);

  test('unknown ids: refused as not found, nothing written', async () => {
    const shop = await testShop();
    const known = await seeded(shop);
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const before = await writtenDown(shop);
    const pointing = callable.filter(
      (procedure) =>
        procedure.meta.kind !== 'keep' &&
        procedure.input &&
        leavesOf(procedure.input).some((leaf) =>
          /^(id|orderId|scaleId|consentId)$/.test(leaf.path.join('.')),
        ),
    );
    expect(pointing.length).toBeGreaterThan(20);
    for (const procedure of pointing) {
      const strange = { ...known, orderId: 'no-such-id', scaleId: 'no-such-id', id: 'no-such-id' };
      const input = baseInput(procedure, { ...strange, consentId: 'no-such-id' });
      const outcome = await outcomeOf(callOf(client, procedure), input);
      expect(outcome, procedure.name).toMatchObject({ code: 'NOT_FOUND' });
    }
    expect(await writtenDown(shop)).toBe(before);
  });

  test('a stale row version is told so, nothing written', async () => {
    const shop = await testShop();
    const known = await seeded(shop);
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const before = await writtenDown(shop);
    const versioned = callable.filter(
      (procedure) =>
        ['orders', 'scales', 'shop'].includes(procedure.path[0] ?? '') &&
        procedure.input &&
        leavesOf(procedure.input).some((leaf) => leaf.path.join('.') === 'rowVersion'),
    );
    expect(versioned.length).toBeGreaterThan(6);
    for (const procedure of versioned) {
      const input = withValue(baseInput(procedure, known), ['rowVersion'], 99);
      const outcome = await outcomeOf(callOf(client, procedure), input);
      expect(outcome, procedure.name).toMatchObject({ code: 'STALE' });
    }
    expect(await writtenDown(shop)).toBe(before);
  });

  test('HTML is kept as the text it is', async () => {
    const shop = await testShop();
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const html = '<img src=x onerror=alert(1)> [0] {"a":1}';
    const commandId = newCommandId();
    const { id } = await client.customers.add({ commandId, ...customerFields, notes: html });
    const { customer } = await client.customers.get({ id });
    expect(customer.notes).toBe(html);
  });
});

test('a malformed port message closes its own port and nothing else', async () => {
  const shop = await testShop();
  const door = messagePortDoor(shop.core);
  const messages: unknown[] = [
    'not json',
    '{"i":1',
    '{}',
    'null',
    '[1,2,3]',
    '{"i":"1","p":null}',
    '{"i":"1","p":{"u":"::::"}}',
    '{"i":"1","t":3,"p":null}',
    42,
    null,
    undefined,
    { i: '1', p: {} },
    new Uint8Array([255, 255, 0]),
    new ArrayBuffer(8),
    new Map([[1, 2]]),
  ];
  for (const message of messages) {
    const port = door.open();
    port.postMessage(message);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
  const client = door.client(shop.owner.actor.personId);
  expect((await client.system.status()).startUp.phase).toBe('ready');
});

test('the browser door answers only its own pages with the token', async () => {
  const shop = await testShop();
  const { url } = await httpDoor(shop.core);
  const ask = (headers: Record<string, string>) =>
    fetch(new URL('rpc/system/status', url), { method: 'POST', headers, body: '{}' });
  expect((await ask({})).status).toBe(401);
  expect((await ask({ authorization: 'Bearer wrong' })).status).toBe(401);
  expect((await ask({ origin: 'http://evil.example' })).status).toBe(403);
});

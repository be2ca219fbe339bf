import { describe, expect, test } from 'vitest';
import type { Core } from '../../core/host/core.ts';
import { type Door, httpDoor, messagePortDoor } from '../support/doors.ts';
import { bowFields, customerFields, orderFields } from '../support/fixtures.ts';
import { newCommandId, testShop } from '../support/test-shop.ts';

const doors: [string, (core: Core) => Promise<Door>][] = [
  ['http', httpDoor],
  ['message port', async (core) => messagePortDoor(core)],
];

const request = (commandId = newCommandId()) => ({
  commandId,
  draftId: null,
  customer: { is: 'new' as const, fields: customerFields },
  bow: { is: 'new' as const, fields: bowFields },
  order: orderFields,
  startsAt: 'requested' as const,
  cameBy: 'mail',
});

describe.each(doors)('over %s', (_name, open) => {
  test('a request is taken in, found and moved', async () => {
    const shop = await testShop();
    const client = (await open(shop.core)).client(shop.as('office').actor.personId);
    const made = await client.intake.submit(request());
    expect(made.number).toBe('26-0001');
    const moved = await client.orders.move({
      commandId: newCommandId(),
      id: made.id,
      rowVersion: made.rowVersion,
      to: 'in-mail',
    });
    expect(moved).toMatchObject({ outcome: 'moved', stage: 'in-mail' });
    const found = await client.find({ text: 'hale' });
    expect(found.map((item) => item.kind)).toEqual(['customer']);
  });

  test('a repeated command returns the stored result and writes nothing', async () => {
    const shop = await testShop();
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const commandId = newCommandId();
    const first = await client.intake.submit(request(commandId));
    const again = await client.intake.submit(request(commandId));
    expect(again).toEqual(first);
    expect(await client.orders.board({ includeClosed: true })).toHaveLength(1);
  });

  test('a command id used for something else is refused', async () => {
    const shop = await testShop();
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const commandId = newCommandId();
    await client.intake.submit(request(commandId));
    await expect(client.customers.add({ commandId, ...customerFields })).rejects.toMatchObject({
      code: 'CONFLICT',
    });
  });

  test('nobody acts without saying who, nor outside a role', async () => {
    const shop = await testShop();
    const door = await open(shop.core);
    await expect(door.client('').orders.board({ includeClosed: false })).rejects.toMatchObject({
      code: 'NOT_SIGNED_ON',
    });
    await expect(
      door.client(shop.as('bench').actor.personId).people.add({
        commandId: newCommandId(),
        name: 'Somebody',
        initials: 'SB',
        role: 'owner',
      }),
    ).rejects.toMatchObject({ code: 'NOT_ALLOWED' });
    expect(await door.client('').people.list()).toHaveLength(3);
  });

  test('every committed command is told to whoever listens', async () => {
    const shop = await testShop();
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const changes = await client.system.changes();
    const next = changes.next();
    const made = await client.intake.submit(request());
    const { value } = await next;
    expect(value).toMatchObject({ name: 'intake.submit', orderId: made.id });
    expect(value).toMatchObject({ tables: expect.arrayContaining(['shop_order']) });
    await changes.return?.(undefined);
  });

  test('an error names the field and carries a code from the contract', async () => {
    const shop = await testShop();
    const client = (await open(shop.core)).client(shop.owner.actor.personId);
    const bad = { ...request(), order: { ...orderFields, targetDrawIn: null } };
    await expect(client.intake.submit(bad)).rejects.toMatchObject({
      code: 'BAD_INPUT',
      data: { details: { targetDrawIn: expect.any(String) } },
    });
    expect(await client.customers.search({ text: '' })).toEqual([]);
  });
});

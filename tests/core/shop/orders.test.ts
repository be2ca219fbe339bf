import { expect, test } from 'vitest';
import { findAnything } from '../../../core/shop/find/find.ts';
import { boardCards } from '../../../core/shop/orders/board.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { moveOrder } from '../../../core/shop/orders/move.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';

test('a request becomes an order with the next number of the year and its route', async () => {
  const shop = await testShop();
  const first = await takeIn(shop);
  const second = await takeIn(shop);
  expect([first.number, second.number]).toEqual(['26-0001', '26-0002']);
  const order = await getOrder(shop.owner, first.id);
  expect(order.card.route).toEqual([
    'requested',
    'in-mail',
    'arrived',
    'agreed',
    'weight-work',
    'strip-sand',
    'finish',
    'cure',
    'final-check',
    'packed',
    'shipped',
  ]);
  expect(order.next?.stage).toBe('in-mail');
});

test('a refused move names every missing item and moves nothing', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  const result = await moveOrder(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: 1,
    to: 'arrived',
  });
  expect(result).toMatchObject({ outcome: 'refused' });
  if (result.outcome !== 'refused') throw new Error('moved');
  expect(result.missing.map((item) => item.item)).toEqual([
    'box-opened',
    'condition',
    'belongings',
  ]);
  expect((await getOrder(shop.owner, id)).card.stage).toBe('requested');
});

test('a second person acting on an older version is told what changed', async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  await moveOrder(shop.owner, { commandId: newCommandId(), id, rowVersion: 1, to: 'in-mail' });
  await expect(
    moveOrder(shop.as('office'), { commandId: newCommandId(), id, rowVersion: 1, to: 'in-mail' }),
  ).rejects.toMatchObject({ code: 'STALE', message: expect.stringContaining('In the mail') });
});

test('the board and the search find the order by customer, bow and scanned number', async () => {
  const shop = await testShop();
  const { id, number } = await takeIn(shop);
  expect((await boardCards(shop.owner, false)).map((card) => card.id)).toEqual([id]);
  expect((await findAnything(shop.owner, number)).map((found) => found.id)).toContain(id);
  expect((await findAnything(shop.owner, number.replace('-', '')))[0]?.id).toBe(id);
  expect((await findAnything(shop.owner, 'hal')).map((found) => found.kind)).toContain('customer');
  expect((await findAnything(shop.owner, 'Smith-"Jones* OR')).length).toBe(0);
});

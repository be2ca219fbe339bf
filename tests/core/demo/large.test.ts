import { expect, test } from 'vitest';
import { boardCards } from '../../../core/shop/orders/board.ts';
import { furnishLarge } from '../../../demo-data/large.ts';
import { testShop } from '../../support/test-shop.ts';

test('as many customers, bows and orders as asked for, some of them on the way', async () => {
  const { core, owner } = await testShop();
  const progress: number[] = [];
  await furnishLarge(owner, {
    customers: 12,
    bows: 20,
    orders: 30,
    onProgress: (done) => progress.push(done),
  });
  const { read } = core.shop();
  expect(await read.selectFrom('customer').select('id').execute()).toHaveLength(12);
  expect(await read.selectFrom('bow').select('id').execute()).toHaveLength(20);
  const cards = await boardCards(owner, false);
  expect(cards).toHaveLength(30);
  expect(new Set(cards.map((card) => card.stage))).toEqual(new Set(['requested', 'in-mail']));
  expect(progress.at(-1)).toBe(1);
});

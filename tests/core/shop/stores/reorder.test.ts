import { describe, expect, test } from 'vitest';
import { countLot } from '../../../../core/shop/stores/corrections.ts';
import { coverageWeeks } from '../../../../core/shop/stores/coverage.ts';
import { getConsumable } from '../../../../core/shop/stores/detail.ts';
import { issueStock } from '../../../../core/shop/stores/issue.ts';
import { listStores, shoppingList } from '../../../../core/shop/stores/list.ts';
import { reorderFacts } from '../../../../core/shop/stores/reorder-facts.ts';
import { type DatedMove, usageFrom } from '../../../../core/shop/stores/usage.ts';
import { dayMs } from '../../../support/clock.ts';
import { received, stocked } from '../../../support/stocked-shop.ts';
import { newCommandId, testShop } from '../../../support/test-shop.ts';

const issued = (day: string, quantity: number): DatedMove => ({
  day,
  kind: 'issued',
  quantity: -quantity,
});

const facts = {
  unit: 'sheet' as const,
  weekly_use: 50,
  weekly_use_spread: 3,
  wait_weeks: 2,
  wait_weeks_spread: null,
  run_out_percent: 10,
  order_quantity: null,
  on_order: 0,
};

/** One lot that does not expire. */
const there = (inDate: number, expiresOn: string | null = null) => ({
  inDate,
  lots: [{ id: 'a', receivedOn: '2026-02-01', expiresOn, onHand: inDate }],
  today: '2026-03-02',
});

describe('use from the moves', () => {
  test('is the mean of whole weeks back from today, with its spread', () => {
    const moves = [
      issued('2026-03-02', 8),
      issued('2026-02-20', 4),
      issued('2026-02-10', 4),
      // Before the first of four whole weeks.
      issued('2026-02-02', 90),
    ];
    const usage = usageFrom(moves, '2026-02-02', '2026-03-02');
    // Weeks of 4, 0, 4 and 8 sheets: mean 4, sum of squares 32, over three.
    expect(usage).toEqual({ mean: 4, spread: Math.sqrt(32 / 3), weeks: 4 });
  });

  test('less than four weeks say nothing, more than thirteen no more than thirteen', () => {
    expect(usageFrom([issued('2026-03-01', 8)], '2026-02-04', '2026-03-02')).toBeNull();
    const old = usageFrom(
      [issued('2025-06-01', 900), issued('2026-03-01', 13)],
      '2025-06-01',
      '2026-03-02',
    );
    expect(old).toMatchObject({ mean: 1, weeks: 13 });
  });

  test('what came back is no use, what a count found missing is, what was discarded is not', () => {
    const moves: DatedMove[] = [
      issued('2026-03-01', 10),
      { day: '2026-03-01', kind: 'returned', quantity: 4 },
      { day: '2026-03-01', kind: 'counted', quantity: -6 },
      { day: '2026-03-01', kind: 'discarded', quantity: -50 },
      { day: '2026-03-01', kind: 'received', quantity: 200 },
    ];
    expect(usageFrom(moves, '2026-02-03', '2026-03-02')).toMatchObject({ mean: 3, weeks: 4 });
  });
});

describe('when to order', () => {
  test("as the textbook's exercise has it: 50 and 3 a week, two weeks, 10 percent: 105.43", () => {
    const known = reorderFacts(facts, there(106), null);
    expect(known.reorderAt).toBeCloseTo(105.43, 2);
    expect(known).toMatchObject({ toOrder: false, useFrom: 'entered', orderQuantity: null });
    expect(reorderFacts(facts, there(105), null).toOrder).toBe(true);
    expect(reorderFacts({ ...facts, on_order: 50 }, there(60), null).toOrder).toBe(false);
  });

  test('without a quantity of its own it orders over the point by what the wait takes', () => {
    const { orderQuantity, sentence } = reorderFacts(facts, there(40), null);
    // 105.43 + 100 - 40, in whole sheets.
    expect(orderQuantity).toBe(166);
    expect(sentence).toBe(
      '40 sheets in date; order at 106 sheets: 50 sheets a week, 2 weeks of waiting, 6 sheets kept against running out.',
    );
  });

  test('in whole order quantities, as many as bring it over the point', () => {
    const packs = { ...facts, order_quantity: 50 };
    expect(reorderFacts(packs, there(100), null).orderQuantity).toBe(50);
    expect(reorderFacts(packs, there(20), null).orderQuantity).toBe(100);
    expect(reorderFacts(packs, there(0), null).orderQuantity).toBe(150);
  });

  test('what was issued counts more than what was entered', () => {
    const known = reorderFacts(facts, there(40), { mean: 4, spread: 0, weeks: 6 });
    expect(known).toMatchObject({ weeklyUse: 4, useFrom: 'moves', reorderAt: 8, toOrder: false });
    expect(known.coverageWeeks).toBe(10);
  });

  test('what expires before a delivery would come is ordered anew, however much there is', () => {
    // 500 sheets are ten weeks' use; only 71.4 of them before the last day. 105.43 + 100 - 71.43.
    const spoiling = reorderFacts(facts, there(500, '2026-03-11'), null);
    expect(spoiling.coverageWeeks).toBeCloseTo(10 / 7, 10);
    expect(spoiling).toMatchObject({ toOrder: true, orderQuantity: 135 });
    expect(spoiling.sentence).toContain('It expires before a delivery would come.');
    expect(reorderFacts(facts, there(500, '2026-05-11'), null).toOrder).toBe(false);
    const coming = { ...facts, on_order: 100 };
    expect(reorderFacts(coming, there(500, '2026-03-11'), null).toOrder).toBe(false);
  });

  test('it lasts until each lot is empty or over its day', () => {
    const lot = (onHand: number, expiresOn: string | null) => ({
      id: `${onHand}`,
      receivedOn: '2026-02-01',
      expiresOn,
      onHand,
    });
    const weeks = (lots: ReturnType<typeof lot>[]) => coverageWeeks(lots, 10, '2026-03-02');
    expect(weeks([])).toBe(0);
    expect(weeks([lot(20, null)])).toBe(2);
    // Seven days with the last one; the second lot is begun then and has its own week.
    expect(weeks([lot(50, '2026-03-08'), lot(10, '2026-12-31')])).toBe(2);
    expect(weeks([lot(50, '2026-03-01'), lot(30, null)])).toBe(3);
    expect(weeks([lot(5, '2026-03-08'), lot(50, '2026-03-15')])).toBe(2);
  });

  test('it says what is missing to know, and orders what has run out all the same', () => {
    const unknown = { ...facts, weekly_use: null, weekly_use_spread: null };
    expect(reorderFacts(unknown, there(5), null)).toMatchObject({
      toOrder: false,
      reorderAt: null,
    });
    expect(reorderFacts(unknown, there(5), null).sentence).toContain('Give the use in a week');
    expect(reorderFacts(unknown, there(0), null)).toMatchObject({
      toOrder: true,
      orderQuantity: null,
    });
    const noWait = reorderFacts({ ...facts, wait_weeks: null }, there(5), null);
    expect(noWait.sentence).toContain('Give the wait for a delivery');
    const unused = reorderFacts(facts, there(0), { mean: 0, spread: 0, weeks: 13 });
    expect(unused).toMatchObject({ toOrder: false, coverageWeeks: null });
    expect(unused.sentence).toContain('None was issued in the last 13 weeks.');
  });
});

describe('on the shelves', () => {
  test('an expired lot does not count for ordering: it is marked, and more is on the shopping list', async () => {
    const { owner } = await testShop();
    const use = { weeklyUse: 100, waitWeeks: 2 };
    const { id } = await stocked(owner, { name: 'Hardener', category: 'hardener', ...use });
    await received(owner, id, { quantity: 946, expiresOn: '2026-02-20' });
    const { id: resin } = await stocked(owner, use);
    await received(owner, resin, { quantity: 946, expiresOn: '2026-03-20' });
    const { consumables, expiring } = await listStores(owner);
    expect(
      consumables.map(({ name, marks, inDate, onHand }) => ({ name, marks, inDate, onHand })),
    ).toEqual([
      { name: 'Clear finish, resin', marks: ['expiring'], inDate: 946, onHand: 946 },
      { name: 'Hardener', marks: ['out', 'expired', 'order'], inDate: 0, onHand: 946 },
    ]);
    expect(expiring.map(({ name, expired }) => [name, expired])).toEqual([
      ['Hardener', true],
      ['Clear finish, resin', false],
    ]);
    const { items } = await shoppingList(owner);
    expect(items).toMatchObject([{ name: 'Hardener', quantity: 400, inDate: 0, onOrder: 0 }]);
  });

  test('after four weeks of issuing the moves tell the use', async () => {
    const shop = await testShop();
    const { id } = await stocked(shop.owner, { weeklyUse: 500, waitWeeks: 1 });
    const lotId = await received(shop.owner, id, { expiresOn: null });
    expect((await getConsumable(shop.owner, id)).reorder.useFrom).toBe('entered');
    for (let week = 0; week < 4; week += 1) {
      shop.clock.advance(7 * dayMs);
      await issueStock(shop.owner, {
        commandId: newCommandId(),
        consumableId: id,
        lotId: null,
        quantity: 40,
        unit: 'mL',
        orderId: null,
        reason: '',
      });
    }
    const { reorder } = await getConsumable(shop.owner, id);
    expect(reorder).toMatchObject({
      useFrom: 'moves',
      weeklyUse: 40,
      weeklyUseSpread: 0,
      useWeeks: 4,
    });
    expect(reorder.coverageWeeks).toBeCloseTo(786 / 40, 10);
    const count = { commandId: newCommandId(), lotId, quantity: 706, unit: 'mL' as const };
    await countLot(shop.owner, { ...count, reason: 'some was not booked' });
    expect((await getConsumable(shop.owner, id)).reorder.weeklyUse).toBe(60);
  });
});

import { describe, expect, test } from 'vitest';
import { historyOf } from '../../../../core/shop/orders/history.ts';
import { bookBack, countLot, discardFromLot } from '../../../../core/shop/stores/corrections.ts';
import { getConsumable } from '../../../../core/shop/stores/detail.ts';
import { issueStock, wouldIssue } from '../../../../core/shop/stores/issue.ts';
import { issueFirstExpired } from '../../../../core/shop/stores/issue-stock.ts';
import { getLot, openLot } from '../../../../core/shop/stores/lots.ts';
import { runCommand } from '../../../../core/storage/commands.ts';
import type { ShopContext } from '../../../../core/storage/context.ts';
import { mlPerUsFlOz } from '../../../../shared/stores.ts';
import { dayMs } from '../../../support/clock.ts';
import { received, stocked } from '../../../support/stocked-shop.ts';
import { newCommandId, takeIn, testShop } from '../../../support/test-shop.ts';

const plain = { lotId: null, unit: 'mL' as const, orderId: null, reason: '' };

function issue(ctx: ShopContext, consumableId: string, quantity: number, change = {}) {
  return issueStock(ctx, {
    commandId: newCommandId(),
    consumableId,
    quantity,
    ...plain,
    ...change,
  });
}

async function leftOf(ctx: ShopContext, lotId: string): Promise<number> {
  return (await getLot(ctx, lotId)).lot.onHand;
}

describe('first expired, first out', () => {
  test('the lot that expires first goes first, whenever it came; the rest from the next', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    const late = await received(owner, id, {
      number: 'X',
      receivedOn: '2026-01-10',
      expiresOn: '2026-12-31',
      quantity: 100,
    });
    const soon = await received(owner, id, {
      number: 'Y',
      receivedOn: '2026-03-01',
      expiresOn: '2026-09-30',
      quantity: 100,
    });
    const { picks } = await issue(owner, id, 130);
    expect(picks).toEqual([
      { lotId: soon, lotName: 'Y', quantity: 100, lastDay: '2026-09-30' },
      { lotId: late, lotName: 'X', quantity: 30, lastDay: '2026-12-31' },
    ]);
    expect(await leftOf(owner, soon)).toBe(0);
    expect(await leftOf(owner, late)).toBe(70);
  });

  test('an expired lot is left standing, and named where nothing else is there', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner, { name: 'Hardener B' });
    const old = await received(owner, id, { number: 'H-1', expiresOn: '2026-03-01' });
    await expect(issue(owner, id, 10)).rejects.toMatchObject({
      code: 'CONFLICT',
      message:
        'There is no Hardener B in date. Lot H-1 has expired and may not be used: discard and receive more.',
    });
    await expect(issue(owner, id, 10, { lotId: old })).rejects.toThrow(
      'Lot H-1 of Hardener B could be used until 2026-03-01 and may not be issued.',
    );
    expect(await leftOf(owner, old)).toBe(946);
    const fresh = await received(owner, id, { number: 'H-2', expiresOn: '2026-12-01' });
    const { picks } = await issue(owner, id, 10);
    expect(picks.map(({ lotId }) => lotId)).toEqual([fresh]);
  });

  test('the last day itself is still good, the day after is not', async () => {
    const shop = await testShop();
    const { id } = await stocked(shop.owner);
    await received(shop.owner, id, { expiresOn: '2026-03-02' });
    await expect(issue(shop.owner, id, 1)).resolves.toBeDefined();
    shop.clock.advance(dayMs);
    await expect(issue(shop.owner, id, 1)).rejects.toMatchObject({ code: 'CONFLICT' });
  });

  test('opening shortens the life, and so the turn, of a lot', async () => {
    const shop = await testShop();
    const { id } = await stocked(shop.owner, { openedDays: 30 });
    const first = await received(shop.owner, id, { number: 'A', expiresOn: '2026-06-30' });
    const second = await received(shop.owner, id, { number: 'B', expiresOn: '2026-12-31' });
    await openLot(shop.owner, {
      commandId: newCommandId(),
      id: second,
      rowVersion: 1,
      openedOn: '2026-03-02',
    });
    expect((await getLot(shop.owner, second)).lot.lastDay).toBe('2026-04-01');
    const preview = await wouldIssue(shop.owner, { consumableId: id, quantity: 5, unit: 'mL' });
    expect(preview.picks.map(({ lotId }) => lotId)).toEqual([second]);
    shop.clock.advance(31 * dayMs);
    const { picks } = await issue(shop.owner, id, 5);
    expect(picks.map(({ lotId }) => lotId)).toEqual([first]);
    const { lot } = await getLot(shop.owner, second);
    expect(lot.expired).toBe(true);
  });

  test('more than there is in date is refused, saying what there is; nothing is taken', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    const lot = await received(owner, id, { quantity: 40 });
    await expect(issue(owner, id, 41)).rejects.toThrow(
      'There is 40 mL of Clear finish, resin in date, not 41 mL. Receive more, or count what is there.',
    );
    await expect(issue(owner, id, 41, { lotId: lot })).rejects.toThrow(
      'Lot R-118 has 40 mL, not 41 mL. Count it, or take less.',
    );
    expect(await leftOf(owner, lot)).toBe(40);
  });

  test('looking writes nothing', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    await received(owner, id, { quantity: 40 });
    const ask = { consumableId: id, quantity: 60, unit: 'mL' as const };
    const preview = await wouldIssue(owner, ask);
    expect(preview).toMatchObject({ shortBy: 20, unit: 'mL' });
    expect(preview.sentence).toContain('There is 40 mL');
    expect((await getConsumable(owner, id)).moves).toHaveLength(1);
  });
});

describe('units', () => {
  test('US fluid ounces and millilitres turn into each other by the exact ounce', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    const lot = await received(owner, id, { quantity: 32, unit: 'fl oz' });
    expect(await leftOf(owner, lot)).toBe(Number((32 * mlPerUsFlOz).toFixed(6)));
    await issue(owner, id, 32, { unit: 'fl oz' });
    expect(await leftOf(owner, lot)).toBe(0);
  });

  test('weight does not turn into volume, and half a sheet is not a sheet', async () => {
    const { owner } = await testShop();
    const { id: resin } = await stocked(owner);
    await expect(received(owner, resin, { unit: 'g' })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      details: { unit: 'This is counted in mL. Give the amount in it.' },
    });
    const { id: paper } = await stocked(owner, {
      name: 'Paper',
      category: 'abrasive',
      unit: 'sheet',
    });
    await expect(received(owner, paper, { unit: 'sheet', quantity: 2.5 })).rejects.toThrow(
      'Give whole sheets.',
    );
  });
});

describe('issued to an order', () => {
  test('its history says what and from which lot, and it can be booked back, no more than that', async () => {
    const shop = await testShop();
    const order = await takeIn(shop);
    const { id } = await stocked(shop.owner);
    const lot = await received(shop.owner, id);
    await issue(shop.owner, id, 30, { orderId: order.id, reason: 'first clear coat' });
    const [last] = await historyOf(shop.owner, order.id);
    expect(last).toMatchObject({
      kind: 'stock',
      summary: 'Issued: 30 mL of Clear finish, resin, lot R-118',
      reason: 'first clear coat',
    });
    const back = (quantity: number, orderId: string | null) =>
      bookBack(shop.owner, {
        commandId: newCommandId(),
        lotId: lot,
        quantity,
        unit: 'mL',
        orderId,
        reason: 'was not used',
      });
    await expect(back(31, order.id)).rejects.toThrow(
      `Only 30 mL of lot R-118 is out to order ${order.number}.`,
    );
    await expect(back(1, null)).rejects.toThrow('Nothing of lot R-118 is out without an order.');
    expect(await back(10, order.id)).toEqual({ onHand: 926 });
    await expect(back(21, order.id)).rejects.toThrow('Only 20 mL');
  });
});

describe('count and discard', () => {
  test('a count writes the difference as a move with its reason, also where there is none', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    const lotId = await received(owner, id, { quantity: 100 });
    const count = (quantity: number) =>
      countLot(owner, {
        commandId: newCommandId(),
        lotId,
        quantity,
        unit: 'mL',
        reason: 'month end',
      });
    expect(await count(82.5)).toEqual({ difference: -17.5, onHand: 82.5 });
    expect(await count(82.5)).toEqual({ difference: 0, onHand: 82.5 });
    expect(await count(90)).toEqual({ difference: 7.5, onHand: 90 });
    const { moves } = await getConsumable(owner, id);
    expect(moves.map(({ kind, quantity, reason }) => [kind, quantity, reason])).toEqual([
      ['counted', 7.5, 'month end'],
      ['counted', 0, 'month end'],
      ['counted', -17.5, 'month end'],
      ['received', 100, ''],
    ]);
  });

  test('an expired lot can be discarded, never more than it holds', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    const lotId = await received(owner, id, { quantity: 20, expiresOn: '2026-02-01' });
    const discard = (quantity: number) =>
      discardFromLot(owner, {
        commandId: newCommandId(),
        lotId,
        quantity,
        unit: 'mL',
        reason: 'expired',
      });
    await expect(discard(21)).rejects.toThrow('Lot R-118 has 20 mL, not 21 mL.');
    expect(await discard(20)).toEqual({ onHand: 0 });
  });

  test('moves cannot be changed or taken out, not even by hand', async () => {
    const shop = await testShop();
    const { id } = await stocked(shop.owner);
    await received(shop.owner, id);
    const { write } = shop.core.shop();
    await expect(write.updateTable('stock_move').set({ quantity: 1 }).execute()).rejects.toThrow(
      'append-only',
    );
    await expect(write.deleteFrom('stock_move').execute()).rejects.toThrow('append-only');
  });
});

describe('inside another command', () => {
  const takeTwice = (ctx: ShopContext, consumableId: string, each: number) =>
    runCommand(ctx, { id: newCommandId(), name: 'stores.issue' }, async (trx) => {
      const issued = {
        consumableId,
        quantity: each,
        today: '2026-03-02',
        orderId: null,
        batchId: null,
        reason: 'batch',
      };
      await issueFirstExpired(trx, ctx, issued);
      await issueFirstExpired(trx, ctx, issued);
      return {};
    });

  test('what the command took before is seen; a refusal takes all of it back', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    const lot = await received(owner, id, { quantity: 50 });
    await expect(takeTwice(owner, id, 30)).rejects.toThrow('There is 20 mL');
    expect(await leftOf(owner, lot)).toBe(50);
    await takeTwice(owner, id, 25);
    expect(await leftOf(owner, lot)).toBe(0);
  });

  test('of two who take the last at once, one gets it', async () => {
    const shop = await testShop();
    const { id } = await stocked(shop.owner);
    const lot = await received(shop.owner, id, { quantity: 50 });
    const both = await Promise.allSettled([
      issue(shop.owner, id, 50),
      issue(shop.as('bench'), id, 50),
    ]);
    expect(both.map(({ status }) => status).sort()).toEqual(['fulfilled', 'rejected']);
    expect(await leftOf(shop.owner, lot)).toBe(0);
  });
});

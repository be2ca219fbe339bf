import { describe, expect, test } from 'vitest';
import { getCarePolicy } from '../../../../core/shop/care/policy.ts';
import { dayOf, wallTimeOf } from '../../../../core/shop/day.ts';
import { listClocks } from '../../../../core/shop/finish/list-clocks.ts';
import { orderFinishNow } from '../../../../core/shop/finish/order-finish.ts';
import { finishRoom } from '../../../../core/shop/finish/room.ts';
import { careCardData } from '../../../../core/shop/papers/care-card-data.ts';
import { finishFacts } from '../../../../core/shop/papers/finish-facts.ts';
import { mixCardData } from '../../../../core/shop/papers/mix-card-data.ts';
import { getShop } from '../../../../core/shop/setup/shop.ts';
import { hour } from '../../../support/clock.ts';
import { type FinishKit, finishKit, usableBatch } from '../../../support/finish-kit.ts';
import { received } from '../../../support/stocked-shop.ts';
import { inZone } from '../../today/in-zone.ts';

const minute = 60_000;

/**
 * Clocks in New York in 2026: from 2:00 to 3:00 on 8 March at 07:00 UTC, from 2:00 back to 1:00 on
 * 1 November at 06:00 UTC (Energy Policy Act of 2005: second Sunday in March, first in November).
 */
const changes = [
  {
    name: 'forward in March',
    // 23:15 in winter time on the 7th: a day of 23 hours follows.
    eve: '2026-03-08T04:15:00.000Z',
    coatedOn: '2026-03-07',
    days: { strung: '2026-03-11', wrap: '2026-03-13', cured: '2026-03-23' },
    // 1:30 in winter time.
    night: '2026-03-08T06:30:00.000Z',
    usable: 'Use from 2026-03-08 01:45 until 04:30',
    hoursOfDay: 23,
    day: '2026-03-08',
  },
  {
    name: 'back in November',
    // 0:15 in summer time on the 31st: the day after next begins 49 hours later.
    eve: '2026-10-31T04:15:00.000Z',
    coatedOn: '2026-10-31',
    days: { strung: '2026-11-02', wrap: '2026-11-04', cured: '2026-11-14' },
    // 1:30 in summer time, the first of two.
    night: '2026-11-01T05:30:00.000Z',
    usable: 'Use from 2026-11-01 01:45 until 02:30',
    hoursOfDay: 25,
    day: '2026-11-01',
  },
] as const;

function goTo({ shop }: FinishKit, instant: string): void {
  shop.clock.advance(Date.parse(instant) - Date.parse(shop.clock.now()));
}

/** A shop in New York at an instant of the year, with a hardener that is in date then. */
async function kitAt(instant: string) {
  inZone('America/New_York');
  const kit = await finishKit();
  const fresh = { number: 'H-2', expiresOn: '2027-06-30', quantity: 400 };
  await received(kit.shop.owner, kit.hardenerId, fresh);
  goTo(kit, instant);
  return kit;
}

async function coatedAt(instant: string) {
  const kit = await kitAt(instant);
  const bow = await kit.bow();
  await kit.air();
  const done = await kit.spray([bow], { batchId: await usableBatch(kit) });
  expect(done.outcome).toBe('recorded');
  const { lastCoatAt } = await orderFinishNow(kit.shop.owner, bow.orderId);
  return { kit, bow, since: Date.parse(lastCoatAt ?? '') };
}

describe.each(changes)('clocks go $name', (change) => {
  test('every clock of a coat runs its real hours', async () => {
    const { kit, bow, since } = await coatedAt(change.eve);
    const { clocks } = await listClocks(kit.shop.owner);
    const hours = clocks
      .filter(({ orderId }) => orderId === bow.orderId)
      .map(({ kind, until }) => [kind, (Date.parse(until) - since) / hour]);
    expect(Object.fromEntries(hours)).toEqual({
      'recoat-opens': 4,
      handle: 8,
      'string-and-flex': 48,
      wrap: 96,
      'full-cure': 336,
    });
  });

  test('final check opens after 48 real hours, whatever the wall shows then', async () => {
    const { kit, bow, since } = await coatedAt(change.eve);
    await bow.move('cure');
    goTo(kit, new Date(since + 48 * hour - minute).toISOString());
    expect((await bow.move('final-check')).outcome).toBe('refused');
    goTo(kit, new Date(since + 48 * hour).toISOString());
    expect((await bow.move('final-check')).outcome).toBe('moved');
  });

  test("the days on papers are those of the shop's own calendar", async () => {
    const { kit, bow } = await coatedAt(change.eve);
    const order = await bow.order();
    const words = `by its data sheet, last coat on ${change.coatedOn}`;
    expect(finishFacts(order)).toMatchObject({
      lastCoatOn: change.coatedOn,
      strung: { on: change.days.strung, words },
      safeToWrap: { on: change.days.wrap, words },
      cured: { on: change.days.cured, words },
    });
    const card = careCardData(
      order,
      await getShop(kit.shop.owner),
      await getCarePolicy(kit.shop.owner),
      { format: 'letter', copy: 'customer', printedAt: kit.shop.clock.now() },
    );
    expect(new Map(card.finish).get('Fully cured')).toBe(`from ${change.days.cured} (${words})`);
  });

  test('a batch mixed in the very night lasts two hours, in the cup and on its card', async () => {
    const kit = await kitAt(change.night);
    const bow = await kit.bow();
    await kit.air();
    const mixed = await kit.mix({ at: change.night });
    if (mixed.outcome !== 'mixed') throw new Error(mixed.troubles.join(' '));
    expect(Date.parse(mixed.usableUntil) - Date.parse(change.night)).toBe(2 * hour);
    const card = await mixCardData(kit.shop.owner, mixed.id, {
      format: 'letter',
      copy: 'bench',
      printedAt: kit.shop.clock.now(),
    });
    expect(card.usable).toBe(change.usable);

    goTo(kit, new Date(Date.parse(change.night) + 2 * hour - minute).toISOString());
    expect((await kit.spray([bow], { batchId: mixed.id })).outcome).toBe('recorded');
    const { window, lastCoatAt } = await orderFinishNow(kit.shop.owner, bow.orderId);
    expect(Date.parse(window?.opensAt ?? '') - Date.parse(lastCoatAt ?? '')).toBe(4 * hour);
    goTo(kit, mixed.usableUntil);
    const late = await kit.spray([await kit.bow()], { batchId: mixed.id });
    expect(late.outcome === 'refused' && late.session[0]?.sentence).toMatch(/past its pot life/);
  });

  test('the window opens after 4 real hours', async () => {
    const { kit, bow, since } = await coatedAt(change.night);
    goTo(kit, new Date(since + 4 * hour - 20 * minute).toISOString());
    await kit.air();
    // Mixed and stood for 16 minutes: 4 minutes are left.
    const batchId = await usableBatch(kit);
    const early = await kit.spray([bow], { batchId });
    expect(early.outcome === 'refused' && early.orders[0]?.missing[0]?.sentence).toBe(
      'Too early: the next coat may follow in 4 min.',
    );
    goTo(kit, new Date(since + 4 * hour).toISOString());
    expect((await kit.spray([bow], { batchId })).outcome).toBe('recorded');
  });

  test("the rack is counted anew with the shop's own midnight", async () => {
    const { kit, since } = await coatedAt(change.eve);
    const used = async () => (await finishRoom(kit.shop.owner)).slots.used;
    expect(await used()).toBe(1);
    const end = Array.from({ length: 60 }, (_, i) => since + i * 30 * minute).find(
      (ms) => dayOf(new Date(ms).toISOString()) !== change.coatedOn,
    );
    goTo(kit, new Date((end ?? 0) - 30 * minute).toISOString());
    expect(await used()).toBe(1);
    goTo(kit, new Date(end ?? 0).toISOString());
    expect(await used()).toBe(0);
  });

  test(`the day of the change has its ${change.hoursOfDay} hours`, () => {
    inZone('America/New_York');
    const from = Date.parse(`${change.day}T00:00:00.000Z`) - 24 * hour;
    const days = Array.from({ length: 72 }, (_, i) =>
      dayOf(new Date(from + i * hour + minute).toISOString()),
    );
    expect(days.filter((day) => day === change.day)).toHaveLength(change.hoursOfDay);
    expect(days).toEqual(days.toSorted());
    expect(wallTimeOf(change.night)).toBe(`${change.day} 01:30`);
  });
});

test("a lot is good until the shop's own midnight, though it is tomorrow in UTC", async () => {
  inZone('America/New_York');
  const kit = await finishKit();
  // The only hardener is good until 30 April. 23:30 there:
  goTo(kit, '2026-05-01T03:30:00.000Z');
  const good = await kit.mix();
  expect(good).toMatchObject({ outcome: 'mixed', name: '260430-1' });
  goTo(kit, '2026-05-01T04:05:00.000Z');
  const expired = await kit.mix();
  expect(expired.outcome === 'refused' && expired.troubles.join(' ')).toMatch(/expired/);
});

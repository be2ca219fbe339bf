import { expect, onTestFinished, test } from 'vitest';
import { dayOf, firstWholeDayFrom } from '../../../core/shop/day.ts';
import { dayMs } from '../../support/clock.ts';
import { takeIn, testShop } from '../../support/test-shop.ts';

function inZone(zone: string): void {
  const before = process.env.TZ;
  process.env.TZ = zone;
  onTestFinished(() => {
    if (before === undefined) delete process.env.TZ;
    else process.env.TZ = before;
  });
}

test('an evening in an American shop is still that day', () => {
  inZone('America/New_York');
  expect(dayOf('2026-03-03T01:30:00.000Z')).toBe('2026-03-02');
  inZone('UTC');
  expect(dayOf('2026-03-03T01:30:00.000Z')).toBe('2026-03-03');
});

test('what is over in the evening may be promised from the next morning', () => {
  inZone('America/New_York');
  expect(firstWholeDayFrom('2026-03-03T04:31:00.000Z')).toBe('2026-03-03');
  expect(firstWholeDayFrom('2026-03-03T05:00:00.000Z')).toBe('2026-03-03');
  expect(firstWholeDayFrom('2026-03-03T05:00:00.001Z')).toBe('2026-03-04');
  // The night of the change to summer time, and the end of a year.
  expect(firstWholeDayFrom('2026-03-08T05:00:00.000Z')).toBe('2026-03-08');
  expect(firstWholeDayFrom('2026-12-31T18:00:00.000Z')).toBe('2027-01-01');
});

test("order numbers start again with the shop's own new year, and none is used twice", async () => {
  inZone('America/New_York');
  const shop = await testShop();
  shop.clock.advance(Date.parse('2027-01-01T02:00:00.000Z') - Date.parse('2026-03-02T09:00:00Z'));
  expect((await takeIn(shop)).number).toBe('26-0001');
  shop.clock.advance(dayMs);
  expect((await takeIn(shop)).number).toBe('27-0001');
  shop.clock.advance(-dayMs);
  expect((await takeIn(shop)).number).toBe('26-0002');
});

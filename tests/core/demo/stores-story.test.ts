import { expect, test } from 'vitest';
import { listStores, shoppingList } from '../../../core/shop/stores/list.ts';
import type { ShopContext } from '../../../core/storage/context.ts';
import { seeded } from '../../../demo-data/seeded.ts';
import { Chronicle } from '../../../demo-data/story/chronicle.ts';
import { storesStory } from '../../../demo-data/story/stores.ts';
import { tellInOrder } from '../../../demo-data/story/tell.ts';
import { testShop } from '../../support/test-shop.ts';

const today = '2026-11-25';

/** The demo's stores alone, as they stand on the day the demo is opened. */
async function toldStores(): Promise<ShopContext> {
  const shop = await testShop();
  const chronicle = new Chronicle(shop.core.shop(), today, seeded(7));
  chronicle.meet(
    (['owner', 'office', 'bench'] as const).map((role) => {
      const { personId, name, device } = shop.as(role).actor;
      return { personId, name, role, device };
    }),
  );
  await tellInOrder(chronicle, [storesStory(chronicle)], () => undefined);
  return { ...shop.owner, now: () => `${today}T15:00:00.000Z` };
}

test('a believable shelf: both scales by grain, an expired hardener beside a fresh one, shortages', async () => {
  const ctx = await toldStores();
  const { consumables, expiring, cautions } = await listStores(ctx);
  const of = (name: string) => {
    const found = consumables.find((each) => each.name === name);
    if (found === undefined) throw new Error(`no ${name}`);
    return found;
  };
  const sizes = consumables.flatMap(({ grit }) => grit?.micrometres ?? []);
  expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
  expect(new Set(consumables.map(({ grit }) => grit?.scale))).toEqual(
    new Set(['P', 'CAMI', undefined]),
  );
  const hardener = of('Clear two-part finish, hardener');
  expect(hardener.marks).toContain('expired');
  expect(hardener.inDate).toBeGreaterThan(0);
  expect(hardener.onHand).toBeGreaterThan(hardener.inDate);
  expect(of('Clear two-part finish, resin').inDate).toBeGreaterThan(300);
  expect(expiring.map(({ lotName, expired }) => [lotName, expired])).toEqual([
    ['H-0917', true],
    ['K-14', false],
  ]);
  expect(new Set(cautions.map(({ hazard }) => hazard)).size).toBe(4);
  const { items } = await shoppingList(ctx);
  expect(items.map(({ name }) => name)).toContain('Sheets for wood, medium');
  expect(items.length).toBeLessThan(consumables.length / 2);
  expect(consumables.every(({ onHand }) => onHand > 0)).toBe(true);
});

import { expect, test } from 'vitest';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { getToday } from '../../../core/shop/today/today.ts';
import type { Stage } from '../../../shared/stages.ts';
import { planShop } from '../../support/plan-shop.ts';

const hour = 3_600_000;

/** The longbow with its target of 45 lb, standing where the test needs it. */
async function standingAt(stage: Stage) {
  const kit = await planShop(false);
  const { write } = kit.shop.core.shop();
  await write.updateTable('shop_order').set({ stage }).where('id', '=', kit.orderId).execute();
  const told = async () => {
    const { items } = await getToday(kit.shop.owner, '2026-03-02');
    return items.filter(({ kind }) => kind === 'undershoot');
  };
  const weigh = (phase: 'work' | 'after-sanding', lbf: number) => {
    kit.shop.clock.advance(hour);
    return kit.flow.weigh(kit.scaleId, phase, lbf);
  };
  const card = async () => (await getOrder(kit.shop.owner, kit.orderId)).card;
  return { kit, told, weigh, card };
}

test('in weight work any weight under the target is told on the card and on Today', async () => {
  const { told, weigh, card } = await standingAt('weight-work');
  await weigh('work', 45);
  expect((await card()).underTarget).toBeNull();
  expect(await told()).toEqual([]);
  await weigh('work', 44.8);
  expect((await card()).underTarget).toMatchObject({ byLbf: 0.2, targetLbf: 45, isSanded: false });
  const [item, ...more] = await told();
  expect(more).toEqual([]);
  expect(item).toMatchObject({ group: 'today', opens: 'weighings:after-sanding' });
  expect(item?.what).toContain('44.8# @ 28"');
  expect(item?.what).toContain('Take nothing more off');
});

test('after sanding the tolerance counts, and the way leads to the offer', async () => {
  const { told, weigh, card } = await standingAt('strip-sand');
  await weigh('after-sanding', 44.6);
  expect((await card()).underTarget).toBeNull();
  await weigh('after-sanding', 44.2);
  expect((await card()).underTarget).toMatchObject({ byLbf: 0.8, isSanded: true });
  expect((await told()).map(({ opens }) => opens)).toEqual(['undershoot']);
});

test('a struck-out weighing tells nothing, nor one in a later stage', async () => {
  const { kit, told, weigh, card } = await standingAt('weight-work');
  const { id } = await weigh('work', 43);
  const { write } = kit.shop.core.shop();
  await write
    .updateTable('reading')
    .set({ struck_reason: 'wrong bow' })
    .where('id', '=', id)
    .execute();
  expect((await card()).underTarget).toBeNull();
  expect(await told()).toEqual([]);
  await weigh('work', 43);
  expect((await card()).underTarget).not.toBeNull();
  await write
    .updateTable('shop_order')
    .set({ stage: 'finish' })
    .where('id', '=', kit.orderId)
    .execute();
  expect((await card()).underTarget).toBeNull();
  expect(await told()).toEqual([]);
});

import { expect, test } from 'vitest';
import { dayOf } from '../../../../core/shop/day.ts';
import { discardBatch } from '../../../../core/shop/finish/batches.ts';
import { batchClocks, inOrder } from '../../../../core/shop/finish/clocks.ts';
import { listClocks } from '../../../../core/shop/finish/list-clocks.ts';
import { orderFinishNow } from '../../../../core/shop/finish/order-finish.ts';
import { dayMs, hour } from '../../../support/clock.ts';
import { coatedBow, type FinishKit } from '../../../support/finish-kit.ts';
import { newCommandId } from '../../../support/test-shop.ts';

const kinds = async ({ shop }: FinishKit) =>
  (await listClocks(shop.owner)).clocks.map(({ kind, state }) => `${kind} ${state}`);

const batch = {
  id: 'b1',
  name: '260302-1',
  mixed_at: '2026-03-02T09:00:00.000Z',
  usable_from: '2026-03-02T09:15:00.000Z',
  usable_until: '2026-03-02T11:00:00.000Z',
  discarded_at: null,
};

test('a batch stands, then its pot life runs, then it is past for a day', () => {
  const at = (now: string) =>
    batchClocks(batch, now).map(({ kind, state, until }) => `${kind} ${state} ${until}`);
  expect(at('2026-03-02T09:05:00.000Z')).toEqual([
    'induction running 2026-03-02T09:15:00.000Z',
    'pot-life running 2026-03-02T11:00:00.000Z',
  ]);
  expect(at('2026-03-02T09:15:00.000Z')).toEqual(['pot-life running 2026-03-02T11:00:00.000Z']);
  expect(at('2026-03-02T11:00:00.000Z')).toEqual(['pot-life past 2026-03-02T11:00:00.000Z']);
  expect(at('2026-03-03T11:00:00.000Z')).toHaveLength(1);
  expect(at('2026-03-03T11:00:01.000Z')).toEqual([]);
  expect(batchClocks({ ...batch, discarded_at: batch.usable_from }, batch.usable_from)).toEqual([]);
});

test('no change to summer time gets into a clock: instants count, not the hands of the wall', () => {
  // Clocks in New York went from 2:00 to 3:00 at 07:00 UTC on 8 March 2026: 8 h stay 8 h.
  const night = {
    ...batch,
    mixed_at: '2026-03-08T03:00:00.000Z',
    usable_from: '2026-03-08T03:00:00.000Z',
    usable_until: '2026-03-08T11:00:00.000Z',
  };
  const [clock] = batchClocks(night, '2026-03-08T10:59:00.000Z');
  expect(clock).toMatchObject({ kind: 'pot-life', state: 'running' });
  expect(batchClocks(night, '2026-03-08T11:00:00.000Z')[0]?.state).toBe('past');
});

test('a coat starts its window and its four times, soonest first', async () => {
  const { kit, bow, batchId } = await coatedBow();
  expect(await kinds(kit)).toEqual([
    'pot-life running',
    'recoat-opens running',
    'handle running',
    'string-and-flex running',
    'wrap running',
    'full-cure running',
  ]);
  const { clocks, trouble } = await listClocks(kit.shop.owner);
  expect(trouble).toBeNull();
  expect(clocks.map(({ label }) => label)).toEqual([
    '260302-1',
    ...Array<string>(5).fill((await bow.order()).card.number),
  ]);
  await discardBatch(kit.shop.owner, {
    commandId: newCommandId(),
    id: batchId,
    rowVersion: 1,
    reason: 'used up',
  });
  kit.shop.clock.advance(5 * hour);
  expect(await kinds(kit)).toEqual([
    'handle running',
    'recoat-closes running',
    'string-and-flex running',
    'wrap running',
    'full-cure running',
  ]);
  kit.shop.clock.advance(2 * dayMs);
  expect(await kinds(kit)).toContain('string-and-flex past');
  kit.shop.clock.advance(20 * dayMs);
  expect(await kinds(kit)).toEqual([]);
});

test('final check opens when its time is up and not a minute before', async () => {
  const { kit, bow } = await coatedBow();
  await bow.move('cure');
  const refused = await bow.move('final-check');
  expect(refused.outcome === 'refused' && refused.missing).toMatchObject([
    {
      item: 'string-and-flex',
      section: 'finish',
      override: 'owner',
      sentence: "Not yet safe to string and flex: by the finish's sheet in 2 days.",
    },
  ]);
  kit.shop.clock.advance(48 * hour - 60_000);
  expect((await bow.move('final-check')).outcome).toBe('refused');
  kit.shop.clock.advance(60_000);
  expect((await bow.move('final-check')).outcome).toBe('moved');
  const { passed } = await orderFinishNow(kit.shop.owner, bow.orderId);
  expect(passed).toEqual(['handle', 'stringAndFlex']);
});

test('clocks are told soonest end first', () => {
  const [one] = batchClocks(batch, batch.usable_from);
  if (one === undefined) throw new Error('no clock');
  const later = { ...one, id: 'z', until: '2026-03-02T12:00:00.000Z' };
  expect(inOrder([later, one])).toEqual([one, later]);
  expect(dayOf(one.until)).toBe(dayOf(later.until));
});

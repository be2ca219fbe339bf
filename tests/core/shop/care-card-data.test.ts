import { expect, test } from 'vitest';
import { editCarePolicy, getCarePolicy } from '../../../core/shop/care/policy.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { careCardData, leastArrowGrains } from '../../../core/shop/papers/care-card-data.ts';
import { finishFacts } from '../../../core/shop/papers/finish-facts.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import { oldNote } from '../../support/old-note.ts';
import { checkedScale, newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

async function carried() {
  const shop = await testShop();
  const flow = new Flow(shop, (await takeIn(shop)).id);
  const scaleId = await checkedScale(shop);
  await flow.move('arrived', { override: { reason: 'papers follow' } });
  const card = async () =>
    careCardData(await flow.order(), await getShop(shop.owner), await getCarePolicy(shop.owner), {
      format: 'letter',
      copy: 'customer',
      printedAt: '2026-03-02T09:00:00.000Z',
    });
  return { shop, flow, scaleId, card };
}

test('the weight of an arriving bow is never told as the one it leaves with', async () => {
  const { flow, scaleId, card } = await carried();
  await flow.weigh(scaleId, 'arrival', 52);
  expect((await card()).weights).toEqual([['Weight', 'not weighed since the work']]);
  await flow.weigh(scaleId, 'final', 45);
  const weights = new Map((await card()).weights);
  expect(weights.get('Weight at 28" AMO')).toMatch(/^45(\.\d)?# @ 28", measured$/);
  // One draw was measured: no other is told.
  expect(weights.get('At your own draw, 27.5"')).toMatch(/^not /);
  expect((await card()).string).toContainEqual(['Brace height', 'as it was braced here: 7 1/4"']);
});

test('a weight to another reference is no weight at AMO 28 in', async () => {
  const { flow, scaleId, card } = await carried();
  await flow.weigh(scaleId, 'final', 45, { drawReference: 'to-back' });
  const [first] = (await card()).weights;
  expect(first?.[0]).toBe('Weight as measured');
  expect(first?.[1]).toContain('to the back');
});

test('arrows follow the rule of the shop, its terms are printed as they stand', async () => {
  const { shop, flow, scaleId, card } = await carried();
  await flow.weigh(scaleId, 'final', 45);
  const { rowVersion } = await getCarePolicy(shop.owner);
  const careTerms = 'We look at our work again within 90 days.';
  const change = { rowVersion, arrowGrainsPerLb: 10, careTerms };
  await editCarePolicy(shop.owner, { commandId: newCommandId(), ...change });
  const data = await card();
  expect(data.terms).toBe(careTerms);
  expect(data.arrows[0]).toMatch(/^Arrows of at least 45\d grains in all: 10 grains a pound at 45/);
  expect(data.arrows[1]).toContain('too stiff in spine');
  await expect(
    editCarePolicy(shop.owner, { commandId: newCommandId(), ...change }),
  ).rejects.toMatchObject({ code: 'STALE' });
});

test('an arrow a part of a grain under the rule is under it', () => {
  expect(leastArrowGrains(45, 9)).toBe(405);
  expect(leastArrowGrains(45.1, 9)).toBe(406);
  expect(leastArrowGrains(45.1, 10)).toBe(451);
});

test('safe to wrap is said only while its note stands', async () => {
  const { flow, card } = await carried();
  await oldNote(flow, 'finish-system', 'two-part clear, sheet of 2025-06');
  const wrap = async () => new Map((await card()).finish).get('Safe to wrap or case');
  expect(await wrap()).toContain('not yet recorded');
  await oldNote(flow, 'safe-to-wrap', 'seven days at 70 F');
  expect(await wrap()).toBe('from 2026-03-02 (seven days at 70 F)');
  await oldNote(flow, 'safe-to-wrap', 'prints under the thumb', 'not-ok');
  expect(finishFacts(await flow.order()).safeToWrap).toBeNull();
  expect(await wrap()).toContain('not yet recorded');
});

test('there is no care card for a bow that may not be strung', async () => {
  const { shop, flow, card } = await carried();
  const stop = { grade: 'stop', place: 'upper limb', note: 'glass lifting' } as const;
  await addFinding(shop.owner, { commandId: newCommandId(), orderId: flow.orderId, ...stop });
  await expect(card()).rejects.toMatchObject({ code: 'UNPRINTABLE' });
});

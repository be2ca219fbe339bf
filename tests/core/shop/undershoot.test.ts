import { expect, test } from 'vitest';
import { proposeConsent } from '../../../core/shop/consents/ask.ts';
import {
  proposeUndershoot,
  strikeOutUndershoot,
} from '../../../core/shop/undershoot/undershoot.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { checkedScale, newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

/** Target 45# @ 28"; weighed after sanding at the given weight. */
async function sandedTo(forceLbf: number, customer: 'new' | 'shop' = 'new') {
  const shop = await testShop();
  const { id } = await takeIn(shop, {}, customer);
  const flow = new Flow(shop, id);
  const scaleId = await checkedScale(shop);
  await flow.weigh(scaleId, 'after-sanding', forceLbf);
  return { shop, flow, scaleId };
}

async function offer(flow: Flow, change: Partial<ContractInputs['undershoot']['propose']> = {}) {
  return proposeUndershoot(flow.shop.as('office'), {
    commandId: newCommandId(),
    orderId: flow.orderId,
    offer: 'accept',
    priceChangeCents: 0,
    words: '',
    ...change,
  });
}

const propose = (flow: Flow) =>
  proposeConsent(flow.shop.owner, { orderId: flow.orderId, kind: 'undershoot' });
const stateNow = async (flow: Flow) =>
  (await flow.order()).consents.find((consent) => consent.kind === 'undershoot')?.state;

test('the shortfall is told only past half a pound under the target', async () => {
  for (const [weight, isUnder] of [
    [44.5, false],
    [44.4, true],
    [46, false],
  ] as const) {
    const { flow } = await sandedTo(weight);
    expect((await flow.order()).undershoot.now !== null, String(weight)).toBe(isUnder);
  }
});

test('nothing is offered where nothing is short, or nobody weighed', async () => {
  const { flow } = await sandedTo(45);
  await expect(offer(flow)).rejects.toMatchObject({ code: 'CONFLICT' });
  const shop = await testShop();
  const bare = new Flow(shop, (await takeIn(shop)).id);
  await expect(offer(bare)).rejects.toMatchObject({ code: 'CONFLICT' });
  await expect(propose(bare)).rejects.toMatchObject({ message: 'Weigh after sanding first.' });
});

test('the offer freezes the weights it is about', async () => {
  const { flow } = await sandedTo(43);
  await offer(flow, { offer: 'price', priceChangeCents: -4000, words: 'Sorry for that.' });
  const { undershoot } = await flow.order();
  expect(undershoot).toMatchObject({
    now: { measuredLbf: 43, targetLbf: 45, drawIn: 28 },
    isOffered: true,
    offers: [
      {
        measuredLbf: 43,
        targetLbf: 45,
        drawIn: 28,
        offer: 'price',
        priceChangeCents: -4000,
        proposedBy: 'Otto Reed',
        struckReason: null,
      },
    ],
  });
});

test('the customer is not asked before the shop says what it offers', async () => {
  const { flow } = await sandedTo(43);
  await expect(propose(flow)).rejects.toMatchObject({
    code: 'CONFLICT',
    message: 'Say first what the shop offers.',
  });
  await expect(flow.ask('undershoot')).rejects.toMatchObject({ code: 'CONFLICT' });
});

test.each([
  ['accept', 0, '', 'Offer: the bow stays as it is, at the agreed price.'],
  ['price', -4000, '', 'Offer: The price falls by $40.00.'],
  ['remedy', 0, 'A new string of your choice.', 'Offer: A new string of your choice.'],
  ['remedy', -1050, 'A new string.', 'Offer: A new string.\nThe price falls by $10.50.'],
] as const)('the consent says the offer in words: %s %i', async (kind, cents, words, said) => {
  const { flow } = await sandedTo(43);
  await offer(flow, { offer: kind, priceChangeCents: cents, words });
  const { text, subject } = await propose(flow);
  expect(subject).toBe(`Target: 45# @ 28"\nMeasured: 43# @ 28"\n${said}`);
  expect(text).toContain(subject);
});

test('another offer outdates what was granted for the first', async () => {
  const { flow } = await sandedTo(43);
  await offer(flow);
  await flow.grant('undershoot');
  expect(await stateNow(flow)).toBe('granted');
  await offer(flow, { offer: 'price', priceChangeCents: -4000 });
  expect(await stateNow(flow)).toBe('outdated');
  await flow.grant('undershoot');
  expect(await stateNow(flow)).toBe('granted');
});

test('a struck-out offer counts no more, and stays readable', async () => {
  const { shop, flow } = await sandedTo(43);
  const { id } = await offer(flow);
  await flow.grant('undershoot');
  const strike = { commandId: newCommandId(), id, rowVersion: 1, reason: 'wrong order' };
  await strikeOutUndershoot(shop.as('office'), strike);
  const { undershoot } = await flow.order();
  expect(undershoot.isOffered).toBe(false);
  expect(undershoot.offers[0]?.struckReason).toBe('wrong order');
  expect(await stateNow(flow)).toBe('outdated');
  await expect(
    strikeOutUndershoot(shop.owner, { ...strike, commandId: newCommandId(), rowVersion: 2 }),
  ).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('another weighing needs another offer before anybody is asked', async () => {
  const { flow, scaleId } = await sandedTo(43);
  await offer(flow);
  await flow.weigh(scaleId, 'after-sanding', 42);
  expect((await flow.order()).undershoot.isOffered).toBe(false);
  await expect(propose(flow)).rejects.toMatchObject({
    message: 'Weight or target changed since the offer. Say again what the shop offers.',
  });
  await offer(flow);
  expect((await propose(flow)).subject).toContain('Measured: 42# @ 28"');
});

test.each([
  [{ offer: 'price' as const }, 'priceChangeCents'],
  [{ offer: 'accept' as const, priceChangeCents: -100 }, 'priceChangeCents'],
  [{ offer: 'remedy' as const, words: ' ' }, 'words'],
  [{ offer: 'price' as const, priceChangeCents: -24_001 }, 'priceChangeCents'],
])('a hollow offer is refused: %j', async (change, field) => {
  const { flow } = await sandedTo(43);
  await expect(offer(flow, change)).rejects.toMatchObject({
    code: 'BAD_INPUT',
    details: { [field]: expect.any(String) },
  });
  expect((await flow.order()).undershoot.offers).toEqual([]);
});

test("for the shop's own bow the record alone is the decision", async () => {
  const { flow } = await sandedTo(43, 'shop');
  const items = async () => {
    const result = await flow.move('finish', { override: { reason: 'own bow' } });
    return result.outcome === 'refused' ? result.missing.map((item) => item.item) : [];
  };
  expect(await items()).toContain('undershoot-offer');
  await offer(flow);
  expect(await items()).not.toContain('undershoot-offer');
  expect(await items()).not.toContain('undershoot');
});

test('a granted cut stands beside the price until a line takes it up', async () => {
  const { flow } = await sandedTo(43.9);
  await offer(flow, { offer: 'price', priceChangeCents: -3_000 });
  expect((await flow.order()).price.agreedChanges).toEqual([]);
  await flow.grant('undershoot');
  const [change] = (await flow.order()).price.agreedChanges;
  expect(change).toMatchObject({ cents: -3_000 });
});

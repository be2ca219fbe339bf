import { expect, test } from 'vitest';
import { addFinding, resolveFinding } from '../../../core/shop/findings/findings.ts';
import { editOrder, setInscription } from '../../../core/shop/orders/orders.ts';
import { proposeUndershoot } from '../../../core/shop/undershoot/undershoot.ts';
import { dayMs } from '../../support/clock.ts';
import { choose, finishKit, usableBatch } from '../../support/finish-kit.ts';
import { orderFields } from '../../support/fixtures.ts';
import { checkedScale, newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

async function started() {
  const shop = await testShop();
  const { id } = await takeIn(shop);
  const scaleId = await checkedScale(shop);
  return { shop, scaleId, flow: new Flow(shop, id) };
}

const missing = (result: Awaited<ReturnType<Flow['move']>>) =>
  result.outcome === 'refused' ? result.missing.map((item) => item.item) : 'moved';

async function toAgreed(flow: Flow) {
  await flow.move('in-mail');
  await flow.unpack();
  expect(missing(await flow.move('arrived'))).toBe('moved');
  await flow.completeArrival();
  await flow.note('target-feasible');
  await flow.grant('price-and-scope');
  await flow.grant('alteration-acknowledgement');
  expect(missing(await flow.move('agreed'))).toBe('moved');
}

test('a weight job passes every stage of its route, each gate naming what it still needs', async () => {
  const { shop, scaleId, flow } = await started();
  await flow.move('in-mail');
  await flow.unpack();
  await flow.move('arrived');
  expect(missing(await flow.move('agreed'))).toEqual([
    'arrival-check',
    'target-feasible',
    'price-and-scope',
    'alteration-acknowledgement',
  ]);
  await flow.completeArrival();
  await flow.note('target-feasible');
  await flow.grant('price-and-scope');
  await flow.grant('alteration-acknowledgement');
  await flow.move('agreed');
  expect(missing(await flow.move('weight-work'))).toEqual([
    'arrival-weighing',
    'stations',
    'plan-accepted',
    'bare-glass',
  ]);
  await flow.weigh(scaleId, 'arrival', 52.3);
  for (const item of ['stations', 'plan-accepted', 'bare-glass'] as const) await flow.note(item);
  expect(missing(await flow.move('weight-work'))).toBe('moved');
  await flow.bite('upper and lower, 1/64 per side, 1/32 in total');
  expect(missing(await flow.move('strip-sand'))).toBe('moved');
  expect(missing(await flow.move('finish'))).toEqual([
    'weighed-after-sanding',
    'last-grit',
    'finish-system',
    'air',
  ]);
  await flow.weigh(scaleId, 'after-sanding', 45.4);
  const kit = await finishKit(shop);
  await flow.sand();
  await choose(shop, flow.orderId, kit.systemId);
  await kit.air();
  expect(missing(await flow.move('finish'))).toBe('moved');

  const refused = await flow.note('lettering-applied');
  expect(refused).toMatchObject({ outcome: 'refused' });
  const { rowVersion } = (await flow.order()).card;
  const line = 'AMO 66"\n45# @ 28"';
  await setInscription(shop.owner, {
    commandId: newCommandId(),
    id: flow.orderId,
    rowVersion,
    inscription: line,
  });
  await flow.grant('marking-approval');
  expect(await flow.note('lettering-applied')).toMatchObject({ outcome: 'recorded' });
  const coat = { batchId: await usableBatch(kit), purpose: 'first-clear' } as const;
  expect(await kit.spray([flow], coat)).toMatchObject({
    outcome: 'refused',
    orders: [{ missing: [{ item: 'lettering-dry' }] }],
  });
  await flow.note('lettering-dry');
  expect(await kit.spray([flow], coat)).toMatchObject({ outcome: 'recorded' });

  expect(missing(await flow.move('cure'))).toBe('moved');
  expect(missing(await flow.move('final-check'))).toEqual(['string-and-flex']);
  shop.clock.advance(2 * dayMs);
  expect(missing(await flow.move('final-check'))).toBe('moved');
  expect(missing(await flow.move('packed'))).toEqual([
    'check-flexed',
    'check-glass',
    'check-nocks',
    'check-alignment',
    'check-brace-and-tiller',
    'check-weighed',
    'check-straightness',
    'check-edges',
    'check-finish',
    'check-markings',
    'belongings-back',
    'paid-or-terms',
    'safe-to-wrap',
  ]);
  await flow.weigh(await checkedScale(shop), 'final', 45.3);
  await flow.finalCheck();
  await flow.tickAllBack();
  await flow.note('paid-or-terms');
  expect(missing(await flow.move('packed'))).toEqual(['safe-to-wrap']);
  shop.clock.advance(2 * dayMs);
  expect(missing(await flow.move('packed'))).toBe('moved');
  expect(missing(await flow.move('shipped'))).toEqual(['carrier-limits', 'tracking']);
  await flow.parcel();
  expect(missing(await flow.move('shipped'))).toBe('moved');
  const order = await flow.order();
  expect(order.next).toBeNull();
  expect(order.card.weights).toMatchObject({ arrivalLbf: 52.3, targetLbf: 45, drawIn: 28 });
  expect(order.history.filter((item) => item.kind === 'move').length).toBe(10);
});

test('a changed target, price or inscription voids the consent that rested on it', async () => {
  const { shop, flow } = await started();
  await toAgreed(flow);
  await flow.move('in-mail', { reason: 'typed wrong' });
  const { rowVersion } = (await flow.order()).card;
  await editOrder(shop.owner, {
    commandId: newCommandId(),
    id: flow.orderId,
    rowVersion,
    ...orderFields,
    targetWeightLbf: 43,
  });
  await flow.move('arrived');
  expect(missing(await flow.move('agreed'))).toEqual([
    'price-and-scope',
    'alteration-acknowledgement',
  ]);
  expect((await flow.order()).consents.map((consent) => consent.state)).toEqual([
    'outdated',
    'outdated',
  ]);
});

test('no reply, a refusal and a withdrawal all keep the gate shut, for the owner too', async () => {
  const { flow } = await started();
  await flow.move('in-mail');
  await flow.unpack();
  await flow.move('arrived');
  await flow.completeArrival();
  await flow.note('target-feasible');
  await flow.grant('price-and-scope');
  const asked = await flow.ask('alteration-acknowledgement');
  const override = { override: { reason: 'the owner is in a hurry' } };
  expect(missing(await flow.move('agreed', override))).toEqual(['alteration-acknowledgement']);
  await flow.answer(asked, 'granted');
  await flow.answer(asked, 'withdrawn');
  expect(missing(await flow.move('agreed', override))).toEqual(['alteration-acknowledgement']);
  const again = await flow.ask('alteration-acknowledgement');
  await flow.answer(again, 'declined');
  expect(missing(await flow.move('agreed', override))).toEqual(['alteration-acknowledgement']);
});

test('the owner lets an order pass with a reason, others do not, and it stays on record', async () => {
  const { shop, flow } = await started();
  const override = { override: { reason: 'seen on the table, papers follow' } };
  await flow.move('in-mail');
  await expect(flow.move('arrived', override, shop.as('office'))).rejects.toMatchObject({
    code: 'NOT_ALLOWED',
  });
  expect(missing(await flow.move('arrived', override))).toBe('moved');
  const overridden = (await flow.order()).history.filter((item) => item.kind === 'override');
  expect(overridden.map((item) => item.reason)).toEqual(
    Array(3).fill('seen on the table, papers follow'),
  );
});

test('with a stop finding open nobody weighs the bow and no gate opens; repair and a second look do', async () => {
  const { shop, scaleId, flow } = await started();
  const { id } = await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    grade: 'stop',
    place: 'upper limb, 9 in from the fade',
    note: 'glass lifting',
  });
  await expect(flow.weigh(scaleId, 'arrival', 52)).rejects.toMatchObject({ code: 'CONFLICT' });
  await flow.move('arrived', { override: { reason: 'on the table' } });
  const result = await flow.move('agreed', { override: { reason: 'no' } });
  expect(missing(result)).toContain('no-stop-finding');
  await expect(
    resolveFinding(shop.as('office'), {
      commandId: newCommandId(),
      id,
      rowVersion: 1,
      how: 'looks fine',
    }),
  ).rejects.toMatchObject({ code: 'NOT_ALLOWED' });
  await resolveFinding(shop.owner, {
    commandId: newCommandId(),
    id,
    rowVersion: 1,
    how: 'reglued, looked at again',
  });
  await flow.weigh(scaleId, 'arrival', 52);
});

test('an undershoot is a decision of the customer, never let pass', async () => {
  const { shop, scaleId, flow } = await started();
  await toAgreed(flow);
  await flow.weigh(scaleId, 'arrival', 52.3);
  const override = { override: { reason: 'papers follow' } };
  await flow.move('strip-sand', override);
  await flow.weigh(scaleId, 'after-sanding', 44.2);
  expect(missing(await flow.move('finish', override))).toContain('undershoot');
  await expect(flow.ask('undershoot')).rejects.toMatchObject({ code: 'CONFLICT' });
  await proposeUndershoot(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    offer: 'price',
    priceChangeCents: -4000,
    words: 'forty dollars less for the pound too much',
  });
  await flow.grant('undershoot');
  expect(missing(await flow.move('finish', override))).toBe('moved');
});

test('a bite needs the glass looked at and the tiller read since the last one', async () => {
  const { scaleId, flow } = await started();
  await toAgreed(flow);
  expect(await flow.bite()).toMatchObject({
    outcome: 'refused',
    missing: [{ item: 'stage', override: 'never' }],
  });
  await flow.weigh(scaleId, 'arrival', 52.3);
  await flow.move('weight-work', { override: { reason: 'papers follow' } });
  expect(await flow.bite()).toMatchObject({ outcome: 'recorded' });
  expect(await flow.bite()).toMatchObject({
    outcome: 'refused',
    missing: [
      { item: 'glass-check', override: 'never' },
      { item: 'tiller-read', override: 'owner' },
    ],
  });
  await flow.checkGlass();
  await flow.readTiller();
  expect(await flow.bite()).toMatchObject({ outcome: 'recorded' });
  await flow.checkGlass({ showThrough: true }, 'at the fade');
  await flow.readTiller();
  expect(await flow.bite()).toMatchObject({ outcome: 'refused' });
});

test("the shop's own bow has nobody to ask", async () => {
  const shop = await testShop();
  const { id } = await takeIn(shop, {}, 'shop');
  const flow = new Flow(shop, id);
  await flow.unpack();
  await flow.move('arrived');
  await flow.completeArrival();
  await flow.note('target-feasible');
  expect(missing(await flow.move('agreed'))).toBe('moved');
  await expect(flow.ask('price-and-scope')).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('a weight at another draw or reference is never told as the weight at 28 in', async () => {
  const { scaleId, flow } = await started();
  await flow.weigh(scaleId, 'arrival', 49, { drawIn: 27 });
  await flow.weigh(scaleId, 'arrival', 50, { drawReference: 'to-back' });
  await flow.weigh(scaleId, 'arrival', 51, { drawIn: 28.004 });
  const order = await flow.order();
  expect(order.card.weights).toMatchObject({ arrivalLbf: null, nowLbf: null });
  expect(order.readings.map((reading) => reading.weights.map((weight) => weight.text))).toEqual([
    ['49# @ 27"'],
    ['50# @ 28" to the back'],
    ['51# @ 28.004"'],
  ]);
});

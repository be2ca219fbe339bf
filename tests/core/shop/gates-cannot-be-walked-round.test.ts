import { expect, test } from 'vitest';
import { addBow, editBow } from '../../../core/shop/bows/bows.ts';
import { answerConsent } from '../../../core/shop/consents/answer.ts';
import { proposeConsent } from '../../../core/shop/consents/ask.ts';
import { addFinding, resolveFinding } from '../../../core/shop/findings/findings.ts';
import { submitIntake } from '../../../core/shop/intake/submit.ts';
import { moveOrder } from '../../../core/shop/orders/move.ts';
import { editOrder, identifyBow, setInscription } from '../../../core/shop/orders/orders.ts';
import { issuePaper } from '../../../core/shop/papers/papers.ts';
import { checkScale } from '../../../core/shop/scales/scales.ts';
import { contract } from '../../../shared/contract/index.ts';
import { orderDetail } from '../../../shared/contract/orders.ts';
import { bowFields, orderFields } from '../../support/fixtures.ts';
import {
  checkedScale,
  newCommandId,
  type TestShop,
  takeIn,
  testShop,
} from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

async function started(change: Partial<typeof orderFields> = {}) {
  const shop = await testShop();
  const { id } = await takeIn(shop, change);
  const scaleId = await checkedScale(shop);
  return { shop, scaleId, flow: new Flow(shop, id) };
}

const override = { override: { reason: 'papers follow' } };
const missing = (result: Awaited<ReturnType<Flow['move']>>) =>
  result.outcome === 'refused' ? result.missing.map((item) => item.item) : 'moved';

async function agreed(flow: Flow) {
  await flow.grant('price-and-scope');
  const { card } = await flow.order();
  if (card.services.includes('reduce-weight')) await flow.grant('alteration-acknowledgement');
  expect(missing(await flow.move('agreed', override))).toBe('moved');
}

async function stopOn(shop: TestShop, orderId: string) {
  return addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId,
    grade: 'stop',
    place: 'upper fade',
    note: 'glass lifting',
  });
}

async function inscribe(flow: Flow, inscription: string) {
  const { rowVersion } = (await flow.order()).card;
  await setInscription(flow.shop.owner, {
    commandId: newCommandId(),
    id: flow.orderId,
    rowVersion,
    inscription,
  });
}

async function edit(flow: Flow, change: Partial<typeof orderFields>) {
  const { rowVersion } = (await flow.order()).card;
  return editOrder(flow.shop.owner, {
    commandId: newCommandId(),
    id: flow.orderId,
    rowVersion,
    ...orderFields,
    ...change,
  });
}

async function identify(flow: Flow, bowId: string) {
  const { rowVersion } = (await flow.order()).card;
  return identifyBow(flow.shop.owner, {
    commandId: newCommandId(),
    id: flow.orderId,
    rowVersion,
    bowId,
  });
}

async function secondOrder(flow: Flow): Promise<Flow> {
  const { card } = await flow.order();
  const { id } = await submitIntake(flow.shop.owner, {
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'known', id: card.customerId ?? '' },
    bow: { is: 'known', id: card.bowId ?? '' },
    order: orderFields,
    startsAt: 'in-mail',
    cameBy: 'phone',
  });
  return new Flow(flow.shop, id);
}

test('a stop finding stops the bow on its next order too, and can be resolved from there', async () => {
  const { shop, flow } = await started();
  const stop = await stopOn(shop, flow.orderId);
  const next = await secondOrder(flow);
  await next.move('arrived', override);
  expect(missing(await next.move('agreed', override))).toContain('no-stop-finding');
  const order = await next.order();
  expect(order.card.openStops).toBe(1);
  expect(order.findings.map((finding) => finding.id)).toEqual([stop.id]);
  await resolveFinding(shop.owner, {
    commandId: newCommandId(),
    id: stop.id,
    rowVersion: 1,
    how: 'reglued, looked at again',
  });
  expect((await next.order()).card.openStops).toBe(0);
});

test('a stop finding noted before the bow was identified still keeps it undrawn', async () => {
  const { shop, scaleId, flow } = await started();
  const { card } = await flow.order();
  const { id } = await submitIntake(shop.owner, {
    commandId: newCommandId(),
    draftId: null,
    customer: { is: 'known', id: card.customerId ?? '' },
    bow: { is: 'later' },
    order: orderFields,
    startsAt: 'in-mail',
    cameBy: 'box',
  });
  const boxed = new Flow(shop, id);
  await stopOn(shop, id);
  await identify(boxed, card.bowId ?? '');
  await expect(boxed.weigh(scaleId, 'arrival', 52)).rejects.toMatchObject({ code: 'CONFLICT' });
  await expect(flow.weigh(scaleId, 'arrival', 52)).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('whoever moves on a view older than a stop finding is told', async () => {
  const { shop, flow } = await started();
  const { rowVersion } = (await flow.order()).card;
  await stopOn(shop, flow.orderId);
  await expect(
    moveOrder(shop.owner, {
      commandId: newCommandId(),
      id: flow.orderId,
      rowVersion,
      to: 'in-mail',
    }),
  ).rejects.toMatchObject({ code: 'STALE' });
});

test('a bow with a stop finding is not strung for the final check', async () => {
  const { shop, flow } = await started({ services: ['new-string'] });
  await agreed(flow);
  await stopOn(shop, flow.orderId);
  expect(missing(await flow.move('final-check', override))).toEqual(['no-stop-finding']);
});

test('consent to one bow does not count for another put on the order later', async () => {
  const { shop, flow } = await started();
  await flow.move('arrived', override);
  const asked = await flow.ask('price-and-scope');
  await flow.answer(asked, 'granted');
  const { card } = await flow.order();
  const other = await addBow(shop.owner, {
    commandId: newCommandId(),
    customerId: card.customerId,
    ...bowFields,
    serial: 'H-119',
  });
  await identify(flow, other.id);
  expect((await flow.order()).consents.map((consent) => consent.state)).toEqual(['outdated']);
  expect(missing(await flow.move('agreed', override))).toContain('price-and-scope');
});

test('a bow is not exchanged under weighings, bench notes or an agreement', async () => {
  const { shop, scaleId, flow } = await started();
  const { card } = await flow.order();
  const other = await addBow(shop.owner, {
    commandId: newCommandId(),
    customerId: card.customerId,
    ...bowFields,
  });
  await flow.weigh(scaleId, 'arrival', 52);
  await expect(identify(flow, other.id)).rejects.toMatchObject({ code: 'CONFLICT' });
  const second = await started();
  await second.flow.move('arrived', override);
  await agreed(second.flow);
  const another = await addBow(second.shop.owner, {
    commandId: newCommandId(),
    customerId: (await second.flow.order()).card.customerId,
    ...bowFields,
  });
  await expect(identify(second.flow, another.id)).rejects.toMatchObject({ code: 'CONFLICT' });
});

test('a consent withdrawn after the agreement stops the next bite and the next stage', async () => {
  const { scaleId, flow } = await started();
  const asked = await flow.ask('alteration-acknowledgement');
  await flow.answer(asked, 'granted');
  await flow.grant('price-and-scope');
  await flow.move('agreed', override);
  await flow.weigh(scaleId, 'arrival', 52);
  await flow.answer(asked, 'withdrawn');
  expect(missing(await flow.move('weight-work', override))).toContain('alteration-acknowledgement');
  expect(await flow.bite()).toMatchObject({ outcome: 'refused' });
});

test('work added after the agreement needs its own consent before it begins', async () => {
  const { scaleId, flow } = await started({ services: ['grip-rest'] });
  await agreed(flow);
  await edit(flow, { services: ['grip-rest', 'reduce-weight'] });
  await flow.weigh(scaleId, 'arrival', 52);
  expect(missing(await flow.move('weight-work', override))).toEqual(
    expect.arrayContaining(['price-and-scope', 'alteration-acknowledgement']),
  );
});

test('a service added late does not put its stages behind the order', async () => {
  const { flow } = await started({ services: ['grip-rest'] });
  await agreed(flow);
  expect(missing(await flow.move('final-check', override))).toBe('moved');
  await expect(edit(flow, { services: ['grip-rest', 're-mark'] })).rejects.toMatchObject({
    code: 'CONFLICT',
  });
});

test('a bite after the last weighing or the final check asks for both again', async () => {
  const { scaleId, flow } = await started();
  await agreed(flow);
  await flow.weigh(scaleId, 'arrival', 52);
  await flow.move('strip-sand', override);
  await flow.weigh(scaleId, 'after-sanding', 45.4);
  await inscribe(flow, '45# @ 28"');
  await flow.grant('marking-approval');
  expect(missing(await flow.move('finish', override))).toBe('moved');
  await flow.move('final-check', override);
  await flow.weigh(scaleId, 'final', 45.4);
  await flow.finalCheck();
  await flow.move('strip-sand', { reason: 'a hair too heavy' });
  expect(await flow.bite()).toMatchObject({ outcome: 'recorded' });
  expect(missing(await flow.move('finish'))).toContain('weighed-after-sanding');
  await flow.move('finish', override);
  expect(await flow.note('lettering-applied')).toMatchObject({
    outcome: 'refused',
    missing: [{ item: 'inscription-weight' }],
  });
  await flow.move('final-check', override);
  expect(missing(await flow.move('packed', override))).toContain('check-flexed');
  await flow.weigh(scaleId, 'final', 45.1);
  await flow.finalCheck();
  expect(missing(await flow.move('packed', override))).toBe('moved');
});

test.each([
  ['50 # at 28 in', false],
  ['50 lbs. @ 28"', false],
  ['50 pounds at 28"', false],
  ['50 @ 28', false],
  ['50#', false],
  ['45 # at 28 in', true],
  ['45#\n@ 28"', true],
  ['45 1/4# @ 28"', true],
  ['45# @ 28 1/2"', false],
  ['Bow #118, AMO 66"', true],
] as const)(
  'after a weighing of 45.2 lb at 28 in, "%s" may be lettered: %s',
  async (lines, may) => {
    const { scaleId, flow } = await started();
    await agreed(flow);
    await flow.weigh(scaleId, 'arrival', 52);
    await flow.move('strip-sand', override);
    await flow.weigh(scaleId, 'after-sanding', 45.2);
    await flow.move('finish', override);
    await inscribe(flow, lines);
    await flow.grant('marking-approval');
    expect((await flow.note('lettering-applied')).outcome).toBe(may ? 'recorded' : 'refused');
  },
);

test("a bow's safe draw does not drop under what an open order plans for it", async () => {
  const { shop, flow } = await started();
  const { bow } = await flow.order();
  const change = { commandId: newCommandId(), id: bow?.id ?? '', rowVersion: 1, ...bowFields };
  await expect(
    editBow(shop.owner, { ...change, markedDrawIn: 26, maxSafeDrawIn: 27 }),
  ).rejects.toMatchObject({ code: 'CONFLICT', message: expect.stringContaining('26-0001') });
});

test('a finding noted while a paper was being drawn outdates that paper', async () => {
  const { shop, flow } = await started();
  const issuing = issuePaper(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    aboutId: null,
    kind: 'work-order',
    format: 'letter',
    copy: 'bench',
    action: 'printed',
  });
  await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    grade: 'watch',
    place: 'lower tip',
    note: 'hairline',
  });
  await issuing;
  expect((await flow.order()).papers).toMatchObject([{ outdated: true }]);
});

test('however many findings there are to watch, the customer can be asked about them', async () => {
  const { shop, flow } = await started();
  for (let n = 0; n < 10; n += 1) {
    await addFinding(shop.owner, {
      commandId: newCommandId(),
      orderId: flow.orderId,
      grade: 'watch',
      place: `limb, place ${n}`,
      note: 'long story '.repeat(90),
    });
  }
  const proposed = await proposeConsent(shop.owner, {
    orderId: flow.orderId,
    kind: 'watch-findings',
  });
  expect(contract.consents.propose['~orpc'].outputSchema?.safeParse(proposed).success).toBe(true);
  await flow.grant('watch-findings');
  expect(orderDetail.safeParse(await flow.order()).success).toBe(true);
});

test('an answer dated in the future is refused', async () => {
  const { shop, flow } = await started();
  const asked = await flow.ask('price-and-scope');
  const early = answerConsent(shop.owner, {
    commandId: newCommandId(),
    consentId: asked.id,
    textSha256: asked.textSha256,
    answer: 'granted',
    answeredAt: '2027-03-02T10:00:00.000Z',
    channel: 'in-person',
    answeredBy: 'Nora Hale',
    contact: '',
    words: '',
    costChangeCents: 0,
  });
  await expect(early).rejects.toMatchObject({ code: 'BAD_INPUT' });
});

test('a scale half a pound off, which may be used, gives an arrival weighing that counts', async () => {
  const { shop, scaleId, flow } = await started();
  await checkScale(shop.owner, {
    commandId: newCommandId(),
    scaleId,
    lowLoadLbf: 31.7,
    lowReadingLbf: 32.2,
    highLoadLbf: 50,
    highReadingLbf: 50,
  });
  await agreed(flow);
  await flow.weigh(scaleId, 'arrival', 52);
  expect(missing(await flow.move('weight-work', override))).toBe('moved');
});

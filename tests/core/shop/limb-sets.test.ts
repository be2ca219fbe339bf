import { expect, test } from 'vitest';
import { addBow, editBow, getBow } from '../../../core/shop/bows/bows.ts';
import { addLimbSet, editLimbSet } from '../../../core/shop/bows/limb-sets.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { setLimbSet } from '../../../core/shop/orders/limb-set.ts';
import { identifyBow } from '../../../core/shop/orders/orders.ts';
import { workOrderData } from '../../../core/shop/papers/work-order-data.ts';
import { addReading, strikeOutReading } from '../../../core/shop/readings/readings.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import type { LimbSetFields } from '../../../shared/contract/limb-sets.ts';
import { bowFields, limbSetFields as limbs } from '../../support/fixtures.ts';
import {
  checkedScale,
  newCommandId,
  type TestShop,
  takeIn,
  testShop,
} from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

async function takeDownOrder(shop: TestShop, takeDown: 'one-piece' | 'bolted three-piece') {
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  const bowId = (await flow.order()).bow?.id ?? '';
  const change = { commandId: newCommandId(), id: bowId, rowVersion: 1, ...bowFields, takeDown };
  await editBow(shop.owner, change);
  const scaleId = await checkedScale(shop);
  return { shop, flow, bowId, scaleId };
}

type Case = Awaited<ReturnType<typeof takeDownOrder>>;

const add = ({ shop, bowId }: Case, part: Partial<LimbSetFields> = {}) =>
  addLimbSet(shop.owner, { commandId: newCommandId(), bowId, ...limbs, ...part });

async function nameLimbs(
  { shop, flow }: Case,
  limbSetId: string | null,
  cameAs: 'whole-bow' | 'limbs-only',
) {
  const { rowVersion } = (await flow.order()).card;
  const commandId = newCommandId();
  return setLimbSet(shop.owner, { commandId, id: flow.orderId, rowVersion, limbSetId, cameAs });
}

const pull = (
  { shop, flow, scaleId }: Case,
  more: { limbSetId: string | null; riserNote?: string; drawIn?: number },
) =>
  addReading(shop.owner, {
    commandId: newCommandId(),
    orderId: flow.orderId,
    phase: 'arrival',
    drawReference: 'amo',
    limbSetId: more.limbSetId,
    riserNote: more.riserNote ?? '',
    scaleId,
    rigZeroLbf: 0,
    braceIn: 7.5,
    stringNote: 'shop string',
    stringTrack: 'centred on both limbs',
    supportPoint: '',
    pullPoint: '',
    tillerIn: null,
    temperatureF: null,
    moisturePct: null,
    strungMinutes: 45,
    flexedFirst: true,
    note: '',
    pulls: [46, 45].map((forceLbf) => ({ drawIn: more.drawIn ?? 28, forceLbf })),
  });

test('limb sets are kept with their take-down bow, as they were given', async () => {
  const job = await takeDownOrder(await testShop(), 'bolted three-piece');
  const { id } = await add(job);
  await add(job, {
    name: 'short limbs',
    amoLengthIn: 58,
    markedWeightLbf: null,
    markedDrawIn: null,
  });
  const change = { ...limbs, name: 'longs', riserPadDeg: null };
  await editLimbSet(job.shop.owner, { commandId: newCommandId(), id, rowVersion: 1, ...change });
  const { limbSets } = await getBow(job.shop.owner, job.bowId);
  expect(limbSets.map((set) => set.name)).toEqual(['longs', 'short limbs']);
  expect(limbSets[0]).toMatchObject({ ...change, bowId: job.bowId, rowVersion: 2 });
});

test('a one-piece bow has none, and one with limbs does not become one-piece', async () => {
  const shop = await testShop();
  const onePiece = await takeDownOrder(shop, 'one-piece');
  await expect(add(onePiece)).rejects.toMatchObject({
    message: 'A one-piece bow has no limbs that come off.',
  });
  const job = await takeDownOrder(shop, 'bolted three-piece');
  await add(job);
  const back = { ...bowFields, takeDown: 'one-piece' as const };
  await expect(
    editBow(shop.owner, { commandId: newCommandId(), id: job.bowId, rowVersion: 2, ...back }),
  ).rejects.toMatchObject({ code: 'CONFLICT', details: { takeDown: expect.any(String) } });
});

test('two sets of a bow do not share a name, and a marked draw needs its weight', async () => {
  const job = await takeDownOrder(await testShop(), 'bolted three-piece');
  await add(job);
  await expect(add(job, { name: 'Long Limbs' })).rejects.toMatchObject({
    details: { name: expect.any(String) },
  });
  await expect(add(job, { name: 'x', markedWeightLbf: null })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    details: { markedWeightLbf: expect.any(String) },
  });
});

test('an order names its limbs, shows them and prints them', async () => {
  const job = await takeDownOrder(await testShop(), 'bolted three-piece');
  const { id: limbSetId } = await add(job);
  await nameLimbs(job, limbSetId, 'limbs-only');
  await pull(job, { limbSetId, riserNote: 'shop riser 17' });
  const order = await job.flow.order();
  expect(order.limbSet?.name).toBe('long limbs');
  expect(order.cameAs).toBe('limbs-only');
  expect(order.weighedOnRisers).toEqual(['shop riser 17']);
  expect(order.readings[0]).toMatchObject({
    limbSetId,
    limbSetName: 'long limbs',
    riserNote: 'shop riser 17',
    stringTrack: 'centred on both limbs',
    strungMinutes: 45,
    moisturePct: null,
  });
  const choice = {
    format: 'letter',
    copy: 'bench',
    printedAt: '2026-03-02T09:00:00.000Z',
  } as const;
  const paper = workOrderData(order, await getShop(job.shop.owner), null, choice);
  expect(paper.bow?.facts).toContainEqual([
    'Limbs',
    'long limbs, upper U-7, lower L-7, AMO 62", marked 48# @ 28" on Heron 17',
  ]);
  expect(paper.bow?.facts).toContainEqual(['Came as', 'limbs only; weighed on shop riser 17']);
});

test('limbs of another bow, and limbs alone without a name, are refused', async () => {
  const shop = await testShop();
  const job = await takeDownOrder(shop, 'bolted three-piece');
  const other = await takeDownOrder(shop, 'bolted three-piece');
  const { id } = await add(other);
  await expect(nameLimbs(job, id, 'whole-bow')).rejects.toMatchObject({
    message: 'These limbs belong to another bow.',
  });
  await expect(nameLimbs(job, null, 'limbs-only')).rejects.toMatchObject({
    message: 'Say which limbs came.',
  });
});

test('limbs alone are weighed only with the riser said, and only those on the order', async () => {
  const job = await takeDownOrder(await testShop(), 'bolted three-piece');
  const { id: limbSetId } = await add(job);
  const { id: others } = await add(job, { name: 'short limbs' });
  await nameLimbs(job, limbSetId, 'limbs-only');
  await expect(pull(job, { limbSetId })).rejects.toMatchObject({
    code: 'BAD_INPUT',
    message: 'Say which riser they were weighed on.',
    details: { riserNote: expect.any(String) },
  });
  for (const wrong of [others, null]) {
    await expect(pull(job, { limbSetId: wrong, riserNote: 'r' })).rejects.toMatchObject({
      details: { limbSetId: expect.any(String) },
    });
  }
});

test('weighed limbs are exchanged on an order only once their weighings are struck out', async () => {
  const job = await takeDownOrder(await testShop(), 'bolted three-piece');
  const { id: limbSetId } = await add(job);
  const { id: others } = await add(job, { name: 'short limbs' });
  await nameLimbs(job, limbSetId, 'whole-bow');
  const reading = await pull(job, { limbSetId });
  await expect(nameLimbs(job, others, 'whole-bow')).rejects.toMatchObject({ code: 'CONFLICT' });
  await nameLimbs(job, limbSetId, 'limbs-only');
  await strikeOutReading(job.shop.owner, {
    commandId: newCommandId(),
    ...reading,
    reason: 'other limbs',
  });
  await nameLimbs(job, others, 'whole-bow');
  expect((await job.flow.order()).limbSet?.name).toBe('short limbs');
});

test('an open stop and the safe draw hold for limbs on any riser', async () => {
  const job = await takeDownOrder(await testShop(), 'bolted three-piece');
  const { id: limbSetId } = await add(job);
  await nameLimbs(job, limbSetId, 'limbs-only');
  const on = { limbSetId, riserNote: 'shop riser' };
  await expect(pull(job, { ...on, drawIn: 30.5 })).rejects.toMatchObject({ code: 'BAD_INPUT' });
  await addFinding(job.shop.owner, {
    commandId: newCommandId(),
    orderId: job.flow.orderId,
    grade: 'stop',
    place: 'upper limb',
    note: 'glass lifting',
  });
  await expect(pull(job, on)).rejects.toMatchObject({
    message: expect.stringContaining('a stop finding is open'),
  });
});

test('moisture is taken only of a bow that shows wood or bamboo', async () => {
  const job = await takeDownOrder(await testShop(), 'one-piece');
  const weigh = (moisturePct: number) =>
    addReading(job.shop.owner, {
      commandId: newCommandId(),
      orderId: job.flow.orderId,
      phase: 'arrival',
      drawReference: 'amo',
      limbSetId: null,
      riserNote: '',
      scaleId: job.scaleId,
      rigZeroLbf: 0,
      braceIn: 6.5,
      stringNote: 'own string',
      stringTrack: '',
      supportPoint: '',
      pullPoint: '',
      tillerIn: null,
      temperatureF: null,
      moisturePct,
      strungMinutes: null,
      flexedFirst: true,
      note: '',
      pulls: [46, 45].map((forceLbf) => ({ drawIn: 28, forceLbf })),
    });
  await expect(weigh(9)).rejects.toMatchObject({ details: { moisturePct: expect.any(String) } });
  const { back } = bowFields.faces;
  const bamboo = {
    facing: 'bamboo',
    glassMadeIn: null,
    glassNowIn: null,
    glassHow: 'not-measured',
  } as const;
  await editBow(job.shop.owner, {
    commandId: newCommandId(),
    id: job.bowId,
    rowVersion: 2,
    ...bowFields,
    faces: { back: bamboo, belly: back },
  });
  await weigh(9);
  expect((await job.flow.order()).readings[0]?.moisturePct).toBe(9);
});

test('limbs named on an order go with the bow they belong to', async () => {
  const shop = await testShop();
  const job = await takeDownOrder(shop, 'bolted three-piece');
  const { id: limbSetId } = await add(job);
  await nameLimbs(job, limbSetId, 'limbs-only');
  const { card } = await job.flow.order();
  const customerId = card.customerId ?? '';
  const other = await addBow(shop.owner, { commandId: newCommandId(), customerId, ...bowFields });
  await identifyBow(shop.owner, {
    commandId: newCommandId(),
    id: card.id,
    rowVersion: card.rowVersion,
    bowId: other.id,
  });
  expect(await job.flow.order()).toMatchObject({ limbSet: null, cameAs: 'whole-bow' });
});

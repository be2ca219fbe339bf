import { expect, test } from 'vitest';
import { editBow } from '../../../core/shop/bows/bows.ts';
import { setLayout } from '../../../core/shop/inscriptions/layout.ts';
import { markingPolicy, setMarkingPolicy } from '../../../core/shop/inscriptions/policy.ts';
import { suggestLines } from '../../../core/shop/inscriptions/suggest.ts';
import { setInscription } from '../../../core/shop/orders/orders.ts';
import { bowLabelData } from '../../../core/shop/papers/bow-label-data.ts';
import { inscriptionProofData } from '../../../core/shop/papers/inscription-proof-data.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import type { InscriptionLayout } from '../../../shared/contract/inscriptions.ts';
import { biteOnRecord } from '../../support/bite-on-record.ts';
import { bowFields } from '../../support/fixtures.ts';
import { checkedScale, newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

const layout: InscriptionLayout = {
  position: 'Upper limb, belly, 3 in from the grip',
  makerMark: 'stays where it is',
  surface: 'sealed',
  manner: 'hand',
  ink: 'black archival pen',
  letterHeightIn: 0.1875,
  oldMarking: '52# @ 28"',
  note: '',
};

async function weighed(forceLbf = 45.2, customer: 'new' | 'shop' = 'new') {
  const shop = await testShop();
  const { id } = await takeIn(shop, {}, customer);
  const flow = new Flow(shop, id);
  const scaleId = await checkedScale(shop);
  await flow.weigh(scaleId, 'after-sanding', forceLbf);
  return { shop, flow, scaleId };
}

const suggest = (flow: Flow, more: { masterStringIn?: number } = {}) =>
  suggestLines(flow.shop.owner, { orderId: flow.orderId, ...more });
const weights = async (flow: Flow) =>
  (await suggest(flow)).lines.filter(({ kind }) => kind === 'weight').map(({ text }) => text);

async function letter(flow: Flow, change: Partial<InscriptionLayout> = {}) {
  const { inscriptionLayout } = await flow.order();
  return setLayout(flow.shop.as('office'), {
    commandId: newCommandId(),
    orderId: flow.orderId,
    rowVersion: inscriptionLayout?.rowVersion ?? null,
    ...layout,
    ...change,
  });
}

async function write(flow: Flow, inscription: string) {
  const { rowVersion } = (await flow.order()).card;
  const commandId = newCommandId();
  await setInscription(flow.shop.owner, { commandId, id: flow.orderId, rowVersion, inscription });
}

/** A bite that got on record: the way through its gates is tested with them. */
async function biteIn(flow: Flow) {
  await flow.readTiller();
  await biteOnRecord(flow.shop, flow.orderId);
}

async function roundTo(flow: Flow, markingRoundLbf: 1 | 0.5) {
  const { rowVersion } = await markingPolicy(flow.shop.owner.read);
  const commandId = newCommandId();
  await setMarkingPolicy(flow.shop.owner, { commandId, rowVersion, markingRoundLbf });
}

const approval = async (flow: Flow) =>
  (await flow.order()).consents.find(({ kind }) => kind === 'marking-approval')?.state;

test('the weight comes from the latest AMO weighing at its own draw, rounded by policy', async () => {
  const { flow, scaleId } = await weighed(45.3);
  expect(await weights(flow)).toEqual(['45# @ 28"']);
  await roundTo(flow, 0.5);
  expect(await weights(flow)).toEqual(['45.5# @ 28"']);
  const [line] = (await suggest(flow)).lines;
  expect(line?.from).toContain('measured 45.3 lb at AMO 28"');
  await flow.weigh(scaleId, 'final', 41.2, { drawIn: 26.5 });
  await flow.weigh(scaleId, 'final', 44.1, { drawIn: 28 });
  expect(await weights(flow)).toEqual(['44# @ 28"', '41# @ 26 1/2"']);
});

test('a weighing to another reference, or before the last bite, is never suggested', async () => {
  const { flow, scaleId } = await weighed();
  await biteIn(flow);
  expect(await weights(flow)).toEqual([]);
  await flow.weigh(scaleId, 'final', 45, { drawReference: 'to-back' });
  const { lines, missing } = await suggest(flow);
  expect(lines.filter(({ kind }) => kind === 'weight')).toEqual([]);
  expect(missing.map(({ kind }) => kind)).toContain('weight');
});

test('the AMO length is the one marked, or a measured master string and three inches', async () => {
  const { flow } = await weighed();
  const lengthOf = async (more = {}) =>
    (await suggest(flow, more)).lines.filter(({ kind }) => kind === 'amo-length');
  expect((await lengthOf())[0]).toMatchObject({ text: `AMO ${bowFields.amoLengthIn}"` });
  expect((await suggest(flow)).masterStringIn).toBe((bowFields.amoLengthIn ?? 0) - 3);
  expect((await lengthOf({ masterStringIn: 61.5 }))[0]).toMatchObject({ text: 'AMO 64 1/2"' });
  const { bow } = await flow.order();
  await editBow(flow.shop.owner, {
    commandId: newCommandId(),
    id: bow?.id ?? '',
    rowVersion: bow?.rowVersion ?? 0,
    ...bowFields,
    amoLengthIn: null,
    serial: '',
  });
  const { lines, missing } = await suggest(flow);
  expect(missing.map(({ kind }) => kind)).toEqual(['amo-length', 'serial']);
  expect(missing[0]?.why).toContain('never from the string that came');
  expect(lines.map(({ kind }) => kind)).toEqual(['weight', 'date', 'owner', 'reworked-by']);
});

test('without a layout the approval reads as it always did', async () => {
  const { flow } = await weighed();
  await write(flow, '45# @ 28"');
  const { id } = await flow.ask('marking-approval');
  const asked = (await flow.order()).consents.find((consent) => consent.id === id);
  expect(asked?.subject).toBe('To be written on the bow:\n45# @ 28"');
});

test("position and maker's mark are part of the approval; ink and height are not", async () => {
  const { flow } = await weighed();
  await write(flow, '45# @ 28"');
  await letter(flow);
  await flow.grant('marking-approval');
  const [granted] = (await flow.order()).consents;
  expect(granted?.subject).toBe(
    'Where on the bow: Upper limb, belly, 3 in from the grip\nMaker\'s own mark: stays where it is\nTo be written on the bow:\n45# @ 28"',
  );
  await letter(flow, {
    ink: 'white',
    letterHeightIn: 0.25,
    surface: 'bare',
    manner: 'label',
    oldMarking: '',
    note: 'pen 2',
  });
  expect(await approval(flow)).toBe('granted');
  for (const change of [{ position: 'Riser, belly' }, { makerMark: 'covered by the new label' }]) {
    await letter(flow, change);
    expect(await approval(flow)).toBe('outdated');
    await letter(flow);
    expect(await approval(flow)).toBe('granted');
  }
});

test('lines that only look like a place are not taken for one', async () => {
  const { flow } = await weighed();
  await write(flow, '45# @ 28"');
  await letter(flow, { makerMark: '' });
  await flow.grant('marking-approval');
  await write(flow, 'Where on the bow: Riser\nTo be written on the bow:\n45# @ 28"');
  expect(await approval(flow)).toBe('outdated');
});

test('a layout is changed over the one that was read, never unseen', async () => {
  const { flow } = await weighed();
  const again = { commandId: newCommandId(), orderId: flow.orderId, ...layout };
  await letter(flow);
  for (const rowVersion of [null, 7]) {
    await expect(setLayout(flow.shop.owner, { ...again, rowVersion })).rejects.toMatchObject({
      code: 'STALE',
    });
  }
  expect((await flow.order()).inscriptionLayout).toMatchObject(layout);
  expect((await flow.order()).history[0]?.summary).toContain('black archival pen');
});

test('the rounding of the shop decides what the lettering gate lets through', async () => {
  const { flow } = await weighed(45.4);
  await write(flow, '45# @ 28"');
  const trouble = async () =>
    bowLabelData(flow.shop.owner.read, await flow.order(), await getShop(flow.shop.owner), {
      format: 'letter',
      printedAt: '2026-03-02T09:00:00.000Z',
    });
  await flow.grant('marking-approval');
  expect(await trouble()).toMatchObject({ lines: ['45# @ 28"'] });
  await roundTo(flow, 0.5);
  await expect(trouble()).rejects.toMatchObject({
    code: 'UNPRINTABLE',
    message: expect.stringContaining('45.4 lb'),
  });
});

test('the label waits for the approval, and the proof does not', async () => {
  const { flow } = await weighed();
  const choice = { format: 'letter', printedAt: '2026-03-02T09:00:00.000Z' } as const;
  const shopNow = await getShop(flow.shop.owner);
  const { read } = flow.shop.owner;
  const label = async () => bowLabelData(read, await flow.order(), shopNow, choice);
  const proof = async () => inscriptionProofData(read, await flow.order(), shopNow, choice);
  await expect(proof()).rejects.toMatchObject({ code: 'UNPRINTABLE' });
  await write(flow, '45# @ 28"\nAMO 66"\n\n');
  await letter(flow);
  expect(await proof()).toMatchObject({
    lines: ['45# @ 28"', 'AMO 66"'],
    answer: 'Not asked yet.',
    oldMarking: '52# @ 28"',
  });
  await expect(label()).rejects.toMatchObject({ code: 'UNPRINTABLE' });
  const asked = await flow.ask('marking-approval');
  expect((await proof()).answer).toContain('waiting');
  await expect(label()).rejects.toMatchObject({ code: 'UNPRINTABLE' });
  await flow.answer(asked, 'granted');
  expect(await label()).toMatchObject({ lines: ['45# @ 28"', 'AMO 66"'], letterHeightIn: 0.1875 });
  expect((await label()).approval).toContain('Nora Hale');
  await write(flow, '45# @ 28"');
  await expect(label()).rejects.toMatchObject({ code: 'UNPRINTABLE' });
});

test("the shop's own bow needs nobody's approval, but its weight is still measured", async () => {
  const { flow } = await weighed(45.2, 'shop');
  const choice = { format: 'label', printedAt: '2026-03-02T09:00:00.000Z' } as const;
  const shopNow = await getShop(flow.shop.owner);
  const label = async () => bowLabelData(flow.shop.owner.read, await flow.order(), shopNow, choice);
  await write(flow, '45# @ 28"');
  expect(await label()).toMatchObject({ approval: "The shop's own bow." });
  await write(flow, '50# @ 28"');
  await expect(label()).rejects.toMatchObject({ code: 'UNPRINTABLE' });
});

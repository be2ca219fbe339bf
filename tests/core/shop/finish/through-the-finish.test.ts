import { expect, test } from 'vitest';
import { addFinishSystem } from '../../../../core/shop/finish/systems.ts';
import type { FinishSheetFields } from '../../../../shared/finish-sheet.ts';
import { dayMs } from '../../../support/clock.ts';
import {
  choose,
  finishKit,
  oilSheet,
  twoPartSheet,
  usableBatch,
} from '../../../support/finish-kit.ts';
import { oldNote } from '../../../support/old-note.ts';
import { checkedScale, newCommandId, takeIn, testShop } from '../../../support/test-shop.ts';
import { Flow } from '../../../support/whole-flow.ts';

const override = { reason: 'only its finish is looked at' };
const ofFinish = ['last-grit', 'finish-system', 'air', 'string-and-flex', 'safe-to-wrap'];

const against = (result: Awaited<ReturnType<Flow['move']>>) =>
  result.outcome === 'refused'
    ? result.missing.filter(({ item }) => ofFinish.includes(item)).map(({ item }) => item)
    : 'moved';

/** A bow of the shop, stripped and sanded, its weight after sanding taken. */
async function sanded() {
  const shop = await testShop();
  const { id } = await takeIn(shop, { services: ['strip-refinish'] }, 'shop');
  const flow = new Flow(shop, id);
  const scaleId = await checkedScale(shop);
  await flow.move('strip-sand', { override });
  await flow.weigh(scaleId, 'after-sanding', 45);
  return { shop, flow };
}

test('a bow that was in the finish when there were no such records yet goes on by its notes', async () => {
  const { flow } = await sanded();
  expect(against(await flow.move('finish'))).toEqual(['last-grit', 'finish-system', 'air']);
  for (const item of ['last-grit', 'finish-system', 'air'] as const) await oldNote(flow, item);
  expect(against(await flow.move('finish'))).toBe('moved');
  for (const item of ['pot-life', 'lots-in-date', 'recoat-window', 'coat'] as const) {
    await oldNote(flow, item);
  }
  await flow.move('cure');
  expect(against(await flow.move('final-check'))).toEqual(['string-and-flex']);
  await oldNote(flow, 'string-and-flex');
  expect(against(await flow.move('final-check'))).toBe('moved');
  expect(against(await flow.move('packed'))).toEqual(['safe-to-wrap']);
  await oldNote(flow, 'safe-to-wrap');
  expect(against(await flow.move('packed'))).toEqual([]);
});

test('the last coat in old words asks for the final check again, as a recorded one does', async () => {
  const { shop, flow } = await sanded();
  await flow.move('final-check', { override });
  await flow.weigh(await checkedScale(shop), 'final', 45);
  await flow.finalCheck();
  const unchecked = async () => {
    const { next } = await flow.order();
    return next?.missing.filter(({ item }) => item.startsWith('check-')).length;
  };
  expect(await unchecked()).toBe(0);
  await oldNote(flow, 'coat');
  expect(await unchecked()).toBeGreaterThan(0);
});

test('a coat recorded since starts its own times: no older note opens them', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  await oldNote(bow, 'string-and-flex');
  await oldNote(bow, 'safe-to-wrap');
  await kit.air();
  await kit.spray([bow], { batchId: await usableBatch(kit) });
  await bow.move('cure');
  expect(against(await bow.move('final-check'))).toEqual(['string-and-flex']);
  kit.shop.clock.advance(2 * dayMs);
  expect(against(await bow.move('final-check'))).toBe('moved');
  expect(against(await bow.move('packed'))).toEqual(['safe-to-wrap']);
});

test('what was noted after the last coat was on, before notes ended, still lets it pass', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  await kit.air();
  await kit.spray([bow], { batchId: await usableBatch(kit) });
  await bow.move('cure');
  await oldNote(bow, 'string-and-flex', 'hard to the nail in a hot room', 'not-ok');
  expect(against(await bow.move('final-check'))).toEqual(['string-and-flex']);
  await oldNote(bow, 'string-and-flex', 'hard to the nail in a hot room');
  expect(against(await bow.move('final-check'))).toBe('moved');
});

test('no older note lets a coat onto the bow', async () => {
  const kit = await finishKit();
  const bow = await kit.bow();
  for (const item of ['pot-life', 'lots-in-date', 'recoat-window', 'air'] as const) {
    await oldNote(bow, item);
  }
  expect(await kit.spray([bow], { batchId: null })).toMatchObject({
    outcome: 'refused',
    session: [{ item: 'pot-life' }],
    orders: [{ missing: [{ item: 'air' }] }],
  });
});

const { potLife: _, ...shared } = twoPartSheet;
const onePartSheet: FinishSheetFields = {
  ...shared,
  kind: 'one-part',
  name: 'Brushing varnish',
  mix: { ...shared.mix, hardenerParts: 0 },
};
const { mix: __, film: ___, ...plain } = shared;
const canSheet: FinishSheetFields = { ...plain, kind: 'aerosol', name: 'Clear from the can' };

test.each([
  ['oil', oilSheet],
  ['clear', onePartSheet],
  ['clear', canSheet],
] as const)(
  'from an own tin, without stores, $1.name needs no batch and no lot: choose it, record its coats',
  async (purpose, sheet) => {
    const { shop, flow } = await sanded();
    const none = { resinId: null, hardenerId: null, thinnerId: null, active: true };
    const own = { commandId: newCommandId(), sheet, ...none };
    const { id: finishSystemId } = await addFinishSystem(shop.owner, own);
    const kit = await finishKit(shop);
    await flow.sand(220);
    await choose(shop, flow.orderId, finishSystemId);
    await kit.air();
    expect(against(await flow.move('finish'))).toBe('moved');
    const coat = await kit.spray([flow], { finishSystemId, purpose });
    expect(coat).toMatchObject({ outcome: 'recorded', warnings: [] });
    await flow.move('cure');
    expect(against(await flow.move('final-check'))).toEqual(['string-and-flex']);
    shop.clock.advance(4 * dayMs);
    expect(against(await flow.move('final-check'))).toBe('moved');
    expect(against(await flow.move('packed'))).toEqual([]);
  },
);

test('a bow that was finished elsewhere, or not at all, the owner lets pass with a reason', async () => {
  const { shop, flow } = await sanded();
  const elsewhere = { reason: 'coated by its owner, cured for a month' };
  expect(against(await flow.move('finish', { override: elsewhere }))).toBe('moved');
  await flow.move('cure');
  const refused = await flow.move('final-check');
  expect(refused.outcome === 'refused' && refused.missing).toMatchObject([
    {
      item: 'string-and-flex',
      section: 'finish',
      override: 'owner',
      sentence: expect.stringContaining('No coat recorded in the finish room'),
    },
  ]);
  await expect(
    flow.move('final-check', { override: elsewhere }, shop.as('bench')),
  ).rejects.toMatchObject({ code: 'NOT_ALLOWED' });
  expect(against(await flow.move('final-check', { override: elsewhere }))).toBe('moved');
  await flow.weigh(await checkedScale(shop), 'final', 45);
  await flow.finalCheck();
  expect(against(await flow.move('packed', { override: elsewhere }))).toBe('moved');
  const { history } = await flow.order();
  expect(history.filter(({ reason }) => reason === elsewhere.reason).length).toBeGreaterThan(4);
});

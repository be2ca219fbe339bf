import { expect, test } from 'vitest';
import { orderFinishNow } from '../../../../core/shop/finish/order-finish.ts';
import { recordGrit, strikeOutGrit } from '../../../../core/shop/finish/sandings.ts';
import type { BowSection, Substrate } from '../../../../shared/finish.ts';
import { choose, finishKit } from '../../../support/finish-kit.ts';
import { newCommandId, type TestShop, takeIn } from '../../../support/test-shop.ts';
import { Flow } from '../../../support/whole-flow.ts';

const limbs: { section: BowSection; substrate: Substrate }[] = [
  { section: 'upper-limb', substrate: 'glass' },
  { section: 'lower-limb', substrate: 'glass' },
];
const riser: { section: BowSection; substrate: Substrate }[] = [
  { section: 'riser', substrate: 'wood' },
];

function sander(shop: TestShop, orderId: string) {
  return (
    parts: typeof limbs,
    grit: number,
    more: { scale?: 'P' | 'CAMI'; isLast?: boolean; wiped?: boolean; at?: string } = {},
  ) =>
    recordGrit(shop.owner, {
      commandId: newCommandId(),
      orderId,
      parts,
      grit: { grit, scale: more.scale ?? 'P' },
      strokes: 20,
      wiped: more.wiped ?? true,
      isLast: more.isLast ?? false,
      note: '',
      at: more.at ?? null,
    });
}

async function stripped() {
  const kit = await finishKit();
  const { id } = await takeIn(kit.shop, { services: ['strip-refinish'] }, 'shop');
  const flow = new Flow(kit.shop, id);
  await flow.move('strip-sand', { override: { reason: 'only its sanding is looked at' } });
  return { kit, flow, sand: sander(kit.shop, id), id };
}

const lastGrit = async (flow: Flow) =>
  (await flow.order()).next?.missing.find((missing) => missing.item === 'last-grit')?.sentence;

test('the gate asks for the last grit of both limbs and of whatever else was begun', async () => {
  const { flow, sand } = await stripped();
  expect(await lastGrit(flow)).toBe('Last grit not recorded.');
  await sand(riser, 180);
  expect(await lastGrit(flow)).toBe('Last grit not recorded: Upper limb, Lower limb, Riser.');
  await sand(limbs, 320, { isLast: true });
  expect(await lastGrit(flow)).toBe('Last grit not recorded: Riser.');
  await sand(riser, 220, { isLast: true });
  expect(await lastGrit(flow)).toBeUndefined();
  await sand(riser, 150);
  expect(await lastGrit(flow)).toBe('Last grit not recorded: Riser.');
});

test('advice goes by micrometres, never by number, and by what the sheet asks for', async () => {
  const { kit, sand, id, flow } = await stripped();
  expect((await sand(limbs, 400, { scale: 'CAMI' })).advice).toEqual([]);
  // P600 has the larger number and the coarser grain: 25.8 after 23 micrometres.
  const back = await sand(limbs, 600, { isLast: true });
  expect(back.advice.join(' ')).toMatch(/P600 \(25\.8 µm\) is coarser than CAMI 400 \(23 µm\)/);
  expect(back.advice.join(' ')).toMatch(/P600 .* is fine for glass before finish/);
  await choose(kit.shop, id, kit.systemId);
  const { lastGrits } = await orderFinishNow(kit.shop.owner, flow.orderId);
  expect(lastGrits[0]).toMatchObject({ section: 'upper-limb', grit: { micrometres: 25.8 } });
  expect(lastGrits[0]?.advice.join(' ')).toMatch(/asks for P320 last; this was P600/);
});

test('a grit that was not wiped off is told', async () => {
  const { sand } = await stripped();
  expect((await sand(riser, 180, { wiped: false })).advice).toEqual([
    'Riser: Not wiped after P180: wipe it before what comes next.',
  ]);
});

test('a struck-out sanding counts for nothing; odd ones are refused', async () => {
  const { kit, flow, sand, id } = await stripped();
  const { recorded } = await sand(limbs, 320, { isLast: true });
  expect(await lastGrit(flow)).toBeUndefined();
  const strike = () =>
    strikeOutGrit(kit.shop.owner, {
      commandId: newCommandId(),
      id: recorded[0]?.id ?? '',
      rowVersion: 1,
      reason: 'the other limb',
    });
  await strike();
  expect(await lastGrit(flow)).toBe('Last grit not recorded: Upper limb.');
  await expect(strike()).rejects.toThrow('already struck out');
  await expect(sand([...riser, ...riser], 180)).rejects.toThrow('named twice');
  await expect(sand(riser, 333)).rejects.toThrow('in no grit table');
  await expect(sand(riser, 180, { at: '2030-01-01T00:00:00Z' })).rejects.toThrow('not come yet');
  await expect(sander(kit.shop, 'nowhere')(riser, 180)).rejects.toMatchObject({
    code: 'NOT_FOUND',
  });
  expect((await orderFinishNow(kit.shop.owner, id)).sandings).toHaveLength(2);
});

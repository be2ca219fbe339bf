import { describe, expect, test } from 'vitest';
import { findAnything } from '../../../../core/shop/find/find.ts';
import { editConsumable, noteOrdered } from '../../../../core/shop/stores/consumables.ts';
import { discardFromLot } from '../../../../core/shop/stores/corrections.ts';
import { getConsumable } from '../../../../core/shop/stores/detail.ts';
import { listGrits, listStores } from '../../../../core/shop/stores/list.ts';
import { editLot, getLot, openLot } from '../../../../core/shop/stores/lots.ts';
import { receiveLots } from '../../../../core/shop/stores/receive.ts';
import { whoDecides } from '../../../../shared/hazards.ts';
import {
  consumableFields,
  received,
  receivedFields,
  stocked,
} from '../../../support/stocked-shop.ts';
import { newCommandId, testShop } from '../../../support/test-shop.ts';

const { unit: _unit, ...editable } = consumableFields;

const abrasive = (grit: number, scale: 'P' | 'CAMI') => ({
  name: scale === 'P' ? `Paper P${grit}` : `Paper ${grit} CAMI`,
  category: 'abrasive' as const,
  unit: 'sheet' as const,
  grit: { grit, scale },
});

describe('abrasives', () => {
  test('stand in the order of their grain: P600 before CAMI 400, whatever the numbers', async () => {
    const { owner } = await testShop();
    for (const [grit, scale] of [
      [400, 'CAMI'],
      [600, 'P'],
      [1000, 'P'],
      [320, 'CAMI'],
      [120, 'P'],
    ] as const) {
      await stocked(owner, abrasive(grit, scale));
    }
    const { consumables } = await listStores(owner);
    expect(consumables.map(({ name, grit }) => [name, grit?.micrometres])).toEqual([
      ['Paper P120', 125],
      ['Paper 320 CAMI', 36],
      ['Paper P600', 25.8],
      ['Paper 400 CAMI', 23],
      ['Paper P1000', 18.3],
    ]);
    expect(consumables[1]?.grit?.source).toContain('ANSI B74.18');
  });

  test('the grits of both scales are listed coarsest first with the print of their size', () => {
    const grits = listGrits();
    const sizes = grits.map(({ micrometres }) => micrometres);
    expect(sizes).toEqual([...sizes].sort((a, b) => b - a));
    expect(new Set(grits.map(({ scale }) => scale))).toEqual(new Set(['P', 'CAMI']));
    expect(grits.every(({ source }) => source !== '')).toBe(true);
  });

  test('a grit that no table prints, and a grit of what is no abrasive, are refused', async () => {
    const { owner } = await testShop();
    await expect(stocked(owner, abrasive(333, 'P'))).rejects.toThrow('P333 is in no grit table.');
    await expect(stocked(owner, { grit: { grit: 320, scale: 'P' } })).rejects.toMatchObject({
      code: 'BAD_INPUT',
      details: { grit: 'Only an abrasive has a grit. Take it out, or choose Abrasives.' },
    });
  });
});

describe('barcodes', () => {
  test('the shop numbers its shelves and lots; what is printed on the goods is kept', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    await stocked(owner, { name: 'Acetone', barcode: '0 12345 67890 5' });
    const third = await stocked(owner, { name: 'Thinner' });
    expect((await getConsumable(owner, id)).barcode).toBe('S0001');
    expect((await getConsumable(owner, third.id)).barcode).toBe('S0002');
    const lots = await receiveLots(owner, {
      commandId: newCommandId(),
      consumableId: id,
      ...receivedFields,
      containers: 3,
    });
    const barcodes = await Promise.all(
      lots.lotIds.map(async (lotId) => (await getLot(owner, lotId)).lot.barcode),
    );
    expect(barcodes).toEqual(['L0001', 'L0002', 'L0003']);
  });

  test('a barcode twice, or one that reads as a lot or an order, is refused', async () => {
    const { owner } = await testShop();
    await stocked(owner, { barcode: '4006381333931' });
    const again = (barcode: string) => stocked(owner, { name: 'Other', barcode });
    await expect(again('4006381333931')).rejects.toThrow('Clear finish, resin already has this');
    await expect(again('L0001')).rejects.toThrow('labels of lots');
    await expect(again('26-0147')).rejects.toThrow('looks like an order number');
    await expect(again('caf\u00e9')).rejects.toThrow('plain letters');
  });

  test('a scanned label leads to its shelf or lot alone; words find the consumable', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    const lotId = await received(owner, id);
    const found = async (text: string) =>
      (await findAnything(owner, text)).map(({ kind, id: what }) => [kind, what]);
    expect(await found('S0001')).toEqual([['shelf', id]]);
    expect(await found(' l0001 ')).toEqual([['lot', lotId]]);
    expect(await found('resin clear')).toEqual([['consumable', id]]);
    expect(await found('cabinet')).toEqual([['consumable', id]]);
    expect(await found('%')).toEqual([]);
  });
});

describe('changing', () => {
  test('two of one name are refused; another version is told', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    await stocked(owner, { name: 'Acetone' });
    const edit = (change: object, rowVersion = 1) =>
      editConsumable(owner, {
        commandId: newCommandId(),
        id,
        rowVersion,
        ...editable,
        active: true,
        ...change,
      });
    await expect(edit({ name: 'Acetone' })).rejects.toThrow('already a consumable named Acetone');
    await edit({ barcode: 'S0001', note: 'keep cool' });
    await expect(edit({ note: 'x' })).rejects.toMatchObject({ code: 'STALE' });
    await expect(edit({ weeklyUseSpread: 2 }, 2)).rejects.toThrow('Give the use in a week');
  });

  test('what still stands on the shelf is not put away; nothing is received of what is', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    const lotId = await received(owner, id);
    const putAway = () =>
      editConsumable(owner, {
        commandId: newCommandId(),
        id,
        rowVersion: 1,
        ...editable,
        active: false,
      });
    await expect(putAway()).rejects.toThrow('There is still some on hand (lot R-118).');
    const all = { quantity: 946, unit: 'mL' as const, reason: 'not bought any more' };
    await discardFromLot(owner, { commandId: newCommandId(), lotId, ...all });
    await putAway();
    await expect(received(owner, id)).rejects.toThrow('is put away. Take it up again first.');
    const { consumables } = await listStores(owner);
    expect(consumables[0]).toMatchObject({ active: false, marks: [] });
  });

  test('what came is no longer on order', async () => {
    const { owner } = await testShop();
    const { id, rowVersion } = await stocked(owner);
    await noteOrdered(owner, { commandId: newCommandId(), id, rowVersion, onOrder: 1500 });
    await received(owner, id, { quantity: 946 });
    expect((await getConsumable(owner, id)).onOrder).toBe(554);
    await received(owner, id, { quantity: 946 });
    expect((await getConsumable(owner, id)).onOrder).toBe(0);
  });

  test('days of a lot that cannot be are refused, by their field', async () => {
    const { owner } = await testShop();
    const { id } = await stocked(owner);
    await expect(received(owner, id, { receivedOn: '2026-03-03' })).rejects.toMatchObject({
      details: { receivedOn: 'This day is still to come.' },
    });
    const lotId = await received(owner, id);
    const open = (openedOn: string, rowVersion = 1) =>
      openLot(owner, { commandId: newCommandId(), id: lotId, rowVersion, openedOn });
    await expect(open('2026-02-27')).rejects.toThrow('it was not opened before');
    await expect(open('2026-03-04')).rejects.toThrow('still to come');
    await open('2026-03-01');
    await expect(open('2026-03-02', 2)).rejects.toThrow('It was opened on 2026-03-01.');
    const { number, receivedOn, costCents, note } = receivedFields;
    await editLot(owner, {
      commandId: newCommandId(),
      id: lotId,
      rowVersion: 2,
      number: `${number}-B`,
      receivedOn,
      expiresOn: null,
      openedOn: null,
      costCents,
      note,
    });
    expect((await getLot(owner, lotId)).lot).toMatchObject({
      number: 'R-118-B',
      lastDay: null,
      openedOn: null,
    });
  });
});

describe('cautions', () => {
  test('what stands there is added up against the rule, with its source and who decides', async () => {
    const { owner } = await testShop();
    const flammable = { hazards: ['flammable-solvent' as const] };
    const { id: resin } = await stocked(owner, flammable);
    const { id: acetone } = await stocked(owner, { name: 'Acetone', unit: 'fl oz', ...flammable });
    await stocked(owner, { name: 'Thinner', ...flammable });
    const { id: can } = await stocked(owner, { name: 'Spray can', unit: 'each', ...flammable });
    await received(owner, resin, { quantity: 1000 });
    await received(owner, acetone, { quantity: 128, unit: 'fl oz' });
    await received(owner, can, { quantity: 2, unit: 'each' });
    const { cautions, whoDecides: last } = await listStores(owner);
    expect(cautions).toHaveLength(1);
    expect(cautions[0]?.about).toEqual(['Clear finish, resin', 'Acetone', 'Spray can']);
    const words = cautions[0]?.sentences.join(' ') ?? '';
    // 1,000 mL are 33.814 fl oz.
    expect(words).toContain('161.8 US fl oz (4.79 L, 1.26 US gal)');
    expect(words).toContain('1 counted by weight or piece');
    expect(words).toContain('29 CFR 1910.106');
    expect(last).toBe(whoDecides);
    const detail = await getConsumable(owner, acetone);
    expect(detail.cautions.at(-1)).toBe(whoDecides);
  });
});

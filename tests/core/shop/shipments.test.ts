import { describe, expect, test } from 'vitest';
import { editCarrier, listCarriers } from '../../../core/shop/carriers/carriers.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { assessShipment } from '../../../core/shop/shipments/assess.ts';
import {
  editShipment,
  recordShipment,
  strikeOutShipment,
} from '../../../core/shop/shipments/shipments.ts';
import type { Shipment } from '../../../shared/contract/shipments.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { newCommandId, type TestShop, takeIn, testShop } from '../../support/test-shop.ts';

type Record = ContractInputs['shipments']['record'];

const bowBox = {
  direction: 'out',
  carrierId: null,
  carrierName: 'Valley courier',
  shape: 'box',
  lengthIn: 66,
  widthIn: 5,
  heightIn: 5,
  weightLb: 6.5,
  declaredCents: 60_000,
  valueEvidence: 'Receipt of 2024, photographs',
  insured: true,
  tracking: '',
  shippedOn: null,
  deliveredOn: null,
  note: '',
} satisfies Omit<Record, 'commandId' | 'orderId'>;

async function carrierNamed(shop: TestShop, name: string) {
  const found = (await listCarriers(shop.owner)).find((carrier) => carrier.name === name);
  if (found === undefined) throw new Error(`no carrier ${name}`);
  return found;
}

async function bench() {
  const shop = await testShop();
  const { id: orderId } = await takeIn(shop);
  const record = (change: Partial<Record> = {}) =>
    recordShipment(shop.as('office'), {
      commandId: newCommandId(),
      orderId,
      ...bowBox,
      ...change,
    });
  const parcels = async () => (await getOrder(shop.owner, orderId)).shipments;
  const latest = async (): Promise<Shipment> => {
    const [first] = await parcels();
    if (first === undefined) throw new Error('no parcel');
    return first;
  };
  const edit = async (change: Partial<Record>) => {
    const { id, rowVersion, direction: _d, assessment: _a, ...rest } = await latest();
    const { recordedAt: _r, personName: _p, struckReason: _s, ...fields } = rest;
    return editShipment(shop.owner, {
      commandId: newCommandId(),
      id,
      rowVersion,
      ...fields,
      ...change,
    });
  };
  const postal = await carrierNamed(shop, 'Postal ground');
  const privateA = await carrierNamed(shop, 'Private carrier A');
  return { shop, orderId, record, parcels, latest, edit, postal, privateA };
}

describe('recording', () => {
  test('a parcel by a known carrier keeps what its limits made of it', async () => {
    const { record, latest, privateA, shop, orderId } = await bench();
    await record({ carrierId: privateA.id });
    const parcel = await latest();
    expect(parcel).toMatchObject({
      carrierId: privateA.id,
      carrierName: 'Private carrier A',
      lengthIn: 66,
      declaredCents: 60_000,
      insured: true,
      personName: 'Otto Reed',
      struckReason: null,
    });
    // 66 x 5 x 5 in: girth 20, length plus girth 86, 1650/139 = 11.9 lb; over 48 in long.
    expect(parcel.assessment).toEqual({
      carrierName: 'Private carrier A',
      asOf: privateA.asOf,
      refusals: [],
      surcharges: ['Additional handling'],
      billableLb: 12,
      dimensionalLb: 12,
      lengthPlusGirthIn: 86,
    });
    const [line] = (await getOrder(shop.owner, orderId)).history;
    expect(line?.summary).toBe('Parcel out, Private carrier A; box 66 x 5 x 5 in, 6.5 lb');
  });

  test('a box over a limit is recorded with the broken limit in words', async () => {
    const { record, latest, postal } = await bench();
    await record({ carrierId: postal.id, lengthIn: 98, widthIn: 10, heightIn: 6.5 });
    expect((await latest()).assessment?.refusals).toEqual([
      'Length plus girth is 131 in, over 130 in.',
    ]);
  });

  test('a carrier in words has no limits to look at', async () => {
    const { record, latest } = await bench();
    await record();
    expect(await latest()).toMatchObject({ carrierName: 'Valley courier', assessment: null });
  });

  test('a parcel not measured yet is kept without an assessment', async () => {
    const { record, latest, postal } = await bench();
    await record({ carrierId: postal.id, heightIn: null, weightLb: null });
    expect((await latest()).assessment).toBeNull();
  });

  test('a tube keeps no height', async () => {
    const { record, latest, postal } = await bench();
    await record({ carrierId: postal.id, shape: 'round-tube', widthIn: 4, heightIn: 9 });
    expect(await latest()).toMatchObject({ heightIn: null });
    expect((await latest()).assessment?.lengthPlusGirthIn).toBeCloseTo(78.57, 2);
  });

  test('one parcel goes out; another needs the first struck out; any number come in', async () => {
    const { record, parcels, latest, shop } = await bench();
    await record();
    await expect(record()).rejects.toMatchObject({ code: 'CONFLICT' });
    await record({ direction: 'in', insured: false, declaredCents: null });
    await record({ direction: 'in', insured: false, declaredCents: null });
    const out = (await parcels()).find((parcel) => parcel.direction === 'out');
    await strikeOutShipment(shop.owner, {
      commandId: newCommandId(),
      id: out?.id ?? '',
      rowVersion: 1,
      reason: 'packed anew in a tube',
    });
    await record({ tracking: 'second' });
    expect(await parcels()).toHaveLength(4);
    expect(await latest()).toMatchObject({ tracking: 'second', struckReason: null });
  });

  test.each([
    ['nobody carries it', { carrierName: '' }, 'carrierName'],
    ['it is insured for no value', { declaredCents: null }, 'declaredCents'],
    [
      'it is delivered before it left',
      { shippedOn: '2026-03-04', deliveredOn: '2026-03-02' },
      'deliveredOn',
    ],
  ])('refused where %s, and nothing is written', async (_what, change, field) => {
    const { record, parcels } = await bench();
    const refused = await record(change).catch((error: unknown) => error);
    expect(refused).toMatchObject({ code: 'BAD_INPUT' });
    expect((refused as { details: object }).details).toHaveProperty(field);
    expect(await parcels()).toEqual([]);
  });
});

describe('changing', () => {
  test('tracking and days leave the assessment as it was; other sizes are assessed by the limits of now', async () => {
    const { record, latest, edit, privateA, shop } = await bench();
    await record({ carrierId: privateA.id });
    await editCarrier(shop.owner, {
      commandId: newCommandId(),
      id: privateA.id,
      rowVersion: privateA.rowVersion,
      profile: { ...privateA.profile, asOf: '2027-01-05', accepted: { longestIn: 60 } },
      claimDays: 60,
      active: true,
    });
    await edit({ tracking: '1Z 999', shippedOn: '2026-03-02', deliveredOn: '2026-03-02' });
    expect(await latest()).toMatchObject({
      tracking: '1Z 999',
      deliveredOn: '2026-03-02',
      assessment: { asOf: privateA.asOf, refusals: [] },
    });
    await edit({ lengthIn: 64 });
    expect((await latest()).assessment).toMatchObject({
      asOf: '2027-01-05',
      refusals: ['The longest side is 64 in, over 60 in.'],
    });
    await edit({ carrierId: null, carrierName: 'By hand' });
    expect(await latest()).toMatchObject({ carrierName: 'By hand', assessment: null });
  });

  test('a struck-out parcel and an older view are refused', async () => {
    const { record, latest, edit, shop } = await bench();
    const { id } = await record();
    await edit({ note: 'padded at the tips' });
    const strike = (rowVersion: number) =>
      strikeOutShipment(shop.owner, {
        commandId: newCommandId(),
        id,
        rowVersion,
        reason: 'wrong box',
      });
    await expect(strike(1)).rejects.toMatchObject({ code: 'STALE' });
    await strike(2);
    expect((await latest()).struckReason).toBe('wrong box');
    await expect(edit({ note: 'again' })).rejects.toMatchObject({ code: 'CONFLICT' });
    await expect(strike(3)).rejects.toMatchObject({ code: 'CONFLICT' });
  });
});

describe('asking before recording', () => {
  const box = { shape: 'box', lengthIn: 48, widthIn: 6, heightIn: 6, weightLb: 5 } as const;

  test('exactly at a limit is inside, and said to be near', async () => {
    const { shop, privateA } = await bench();
    const answer = await assessShipment(shop.owner, { carrierId: privateA.id, ...box });
    expect(answer.surcharges).toEqual([]);
    expect(answer.near).toEqual([
      'The longest side, 48 in, is exactly at 48 in (Additional handling).',
    ]);
  });

  test('a box without its height is refused, an unknown carrier is not found', async () => {
    const { shop, privateA } = await bench();
    const flat = assessShipment(shop.owner, { carrierId: privateA.id, ...box, heightIn: null });
    await expect(flat).rejects.toMatchObject({ code: 'BAD_INPUT' });
    const nobody = assessShipment(shop.owner, { carrierId: 'nobody', ...box });
    await expect(nobody).rejects.toMatchObject({ code: 'NOT_FOUND' });
  });
});

import { expect, test } from 'vitest';
import { notDelivered } from '../../../core/shop/today/shipments.ts';
import { order, shipment } from './rows.ts';

const of = (change: Parameters<typeof shipment>[0], day = '2026-11-26') =>
  notDelivered(shipment(change), order({ stage: 'shipped' }), day);

test('a parcel is looked up ten days after it left', () => {
  expect(of({}, '2026-11-24')).toEqual([]);
  expect(of({}, '2026-11-25')).toMatchObject([{ group: 'today', dueOn: '2026-11-25' }]);
  expect(of({})).toMatchObject([
    {
      group: 'late',
      forRoom: 'shipping',
      what: 'Sent 11 days ago with Postal ground (T 100), not noted as delivered: look it up.',
    },
  ]);
});

test('delivered, struck out, not yet sent or coming in, it is not', () => {
  expect(of({ delivered_on: '2026-11-20' })).toEqual([]);
  expect(of({ struck_reason: 'wrong order' })).toEqual([]);
  expect(of({ shipped_on: null })).toEqual([]);
  expect(of({ direction: 'in' })).toEqual([]);
});

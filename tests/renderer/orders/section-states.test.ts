import { expect, test } from 'vitest';
import { logState } from '../../../renderer/screens/orders/bench-log/entry-groups.ts';
import {
  arrivalState,
  consentsState,
  findingsState,
  geometryState,
  holdState,
  incidentsState,
  inscriptionState,
  photosState,
  shippingState,
  tasksState,
  weightState,
} from '../../../renderer/screens/orders/section-states.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';

const weights = { arrivalLbf: 52.3, nowLbf: 47.8, targetLbf: 45, drawIn: 28 };
const reading = (struckReason: string | null) => ({ struckReason }) as OrderDetail['readings'][0];
const finding = (grade: 'stop' | 'watch', resolvedAt: string | null) =>
  ({ grade, resolvedAt }) as OrderDetail['findings'][0];
const noon = '2026-11-24T12:00:00.000Z';

test('a section with nothing in it says so', () => {
  expect(arrivalState({ arrival: null })).toBe('not unpacked yet');
  expect(findingsState({ findings: [] })).toBe('none so far');
  expect(incidentsState({ incidents: [] })).toBe('none');
  expect(consentsState({ card: { customerId: 'c' }, consents: [] })).toBe('nothing asked yet');
  expect(consentsState({ card: { customerId: null }, consents: [] })).toBe('nobody to ask');
  expect(tasksState({ tasks: [] })).toBe('none');
  expect(holdState({ holds: [] })).toBe('not on hold');
  expect(photosState(0)).toBe('none yet');
  expect(geometryState([])).toBe('not measured yet');
  expect(logState([], [])).toBe('nothing recorded');
});

test('the weight is told once something counts; before that only its target', () => {
  const target = { ...weights, arrivalLbf: null, nowLbf: null };
  expect(weightState({ card: { weights }, readings: [reading(null)] })).toBe(
    '52.3# → now 47.8# → 45# @ 28"',
  );
  expect(weightState({ card: { weights: target }, readings: [reading('slipped')] })).toBe(
    'not weighed yet, target 45# @ 28"',
  );
});

test('open findings are counted by grade, the worst first', () => {
  const findings = [finding('watch', null), finding('stop', null), finding('watch', noon)];
  expect(findingsState({ findings })).toBe('1 stop, 1 watch, 1 resolved');
});

test('consents tell first what has no answer', () => {
  const consents = (['granted', 'waiting', 'granted', 'outdated'] as const).map((state) => ({
    state,
  }));
  expect(consentsState({ card: { customerId: 'c' }, consents })).toBe(
    '1 without an answer, 2 granted, 1 no longer fitting',
  );
});

test('the lines on the bow are read on one line', () => {
  const services: OrderDetail['services'] = ['re-mark'];
  expect(inscriptionState({ inscription: 'AMO 66"\n45# @ 28"\n', services })).toBe(
    'AMO 66" / 45# @ 28"',
  );
  expect(inscriptionState({ inscription: '', services })).toBe('no lines yet');
  expect(inscriptionState({ inscription: '', services: [] })).toBe('no re-marking in this order');
});

test('a parcel that was struck out does not count', () => {
  const parcel = (struckReason: string | null) =>
    ({
      direction: 'out',
      carrierName: 'Postal ground',
      tracking: '9400 1',
      shippedOn: null,
      struckReason,
    }) as OrderDetail['shipments'][0];
  const route: OrderDetail['card']['route'] = ['packed', 'shipped'];
  expect(shippingState({ card: { route }, shipments: [parcel(null)] })).toBe(
    'Postal ground, 9400 1, not shipped yet',
  );
  expect(shippingState({ card: { route }, shipments: [parcel('another box')] })).toBe(
    'parcel not measured yet',
  );
});

test('the log counts what is still to be recorded now', () => {
  const items = ['stations', 'plan-accepted', 'bare-glass', 'air'] as const;
  const groups = [{ gate: 'weight-work', items }] as const;
  const entry = (item: (typeof items)[number], struckReason: string | null = null) => ({
    item,
    struckReason,
  });
  // What is recorded elsewhere by now is nothing to record here.
  expect(logState([entry('stations'), entry('bare-glass', 'wrong day')], groups)).toBe(
    '1 recorded, 2 to record',
  );
});

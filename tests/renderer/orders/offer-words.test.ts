import { expect, test } from 'vitest';
import { offerErrors } from '../../../renderer/screens/orders/undershoot/offer-errors.ts';
import {
  nextStepOf,
  offerText,
  shortfallText,
} from '../../../renderer/screens/orders/undershoot/offer-words.ts';
import type { OrderUndershoot } from '../../../shared/contract/undershoot.ts';

const now = { measuredLbf: 43.25, targetLbf: 45, drawIn: 28 };
const record = {
  id: 'offer-1',
  rowVersion: 1,
  ...now,
  offer: 'price' as const,
  priceChangeCents: -4000,
  words: 'Sorry.',
  proposedAt: '2026-03-02T12:00:00.000Z',
  proposedBy: 'Otto Reed',
  struckReason: null,
};
const offered: OrderUndershoot = { now, isOffered: true, offers: [record] };
const asked = (state: 'waiting' | 'granted' | 'declined' | 'outdated') => [
  { kind: 'undershoot' as const, state },
];

test('the shortfall and an offer in plain words', () => {
  expect(shortfallText(now)).toBe(
    '1.8 lb under the target: 43.3# @ 28" measured, 45# @ 28" asked for',
  );
  expect(offerText(record)).toBe('A lower price, $40 less: Sorry.');
  expect(offerText({ ...record, offer: 'accept', priceChangeCents: 0, words: '' })).toBe(
    'Keep the bow as it is',
  );
});

test('first the offer, then the question, then the answer', () => {
  const none: OrderUndershoot = { now, isOffered: false, offers: [] };
  expect(nextStepOf(none, [], false)).toBe('offer');
  expect(nextStepOf({ ...none, offers: [{ ...record, struckReason: 'wrong' }] }, [], false)).toBe(
    'offer',
  );
  expect(nextStepOf({ ...none, offers: [record] }, asked('granted'), false)).toBe('offer-again');
  expect(nextStepOf(offered, [], false)).toBe('ask');
  expect(nextStepOf(offered, asked('waiting'), false)).toBe('wait');
  expect(nextStepOf(offered, asked('granted'), false)).toBe('done');
  expect(nextStepOf(offered, [...asked('declined'), ...asked('granted')], false)).toBe('ask-again');
  expect(nextStepOf(offered, asked('outdated'), false)).toBe('ask-again');
  expect(nextStepOf(offered, [], true)).toBe('done');
});

test.each([
  [{ offer: null, lowerCents: null, words: '' }, ['offer']],
  [{ offer: 'accept' as const, lowerCents: Number.NaN, words: '' }, []],
  [{ offer: 'price' as const, lowerCents: null, words: '' }, ['lowerCents']],
  [{ offer: 'price' as const, lowerCents: 4000, words: '' }, []],
  [{ offer: 'remedy' as const, lowerCents: null, words: ' ' }, ['words']],
  [{ offer: 'remedy' as const, lowerCents: Number.NaN, words: 'a string' }, ['lowerCents']],
])('an offer that cannot be written down says why: %j', (fields, wrong) => {
  expect(Object.keys(offerErrors(fields))).toEqual(wrong);
});

import { expect, it } from 'vitest';
import { seenOfBench } from '../../../renderer/screens/bench-view/seen-of-bench.ts';
import type { BenchForecast, BenchStep, BenchView } from '../../../shared/contract/bench-work.ts';

const card = { id: 'order-1', number: '26-0147', customerName: 'Nora Hale', bowLine: 'longbow' };
const forecast: BenchForecast = {
  weightLbf: 47.2,
  sdLbf: 0.25,
  bandLbf: [46.88, 47.52],
  endLbf: 45.4,
  tillerIn: 0.1,
};
const view: BenchView = {
  orderId: 'order-1',
  advice: 'abc',
  step: { kind: 'weigh' },
  sentence: 'Weigh it.',
  now: { lbf: 47.81, sdLbf: 0.2, weighed: true },
  lastReading: { id: 'reading-1', lbf: 47.83, expectedLbf: 47.6, at: '2026-03-02T09:00:00.000Z' },
  planId: 'plan-1',
  stopAtLbf: 46.7,
  targetLbf: 45,
  drawIn: 28,
  expected: null,
  bitesTaken: 2,
  effectiveness: { mean: 0.9, sd: 0.1 },
  tiller: { nowIn: 0, targetIn: 0.125, upperTrack: 'left', lowerTrack: 'centre' },
  missing: [],
  log: [],
  cautions: ['Mind the dust.'],
};
const at = (step: BenchStep, change: Partial<BenchView> = {}) =>
  seenOfBench({ ...view, step, ...change }, card);
const limbOff = (limb: 'upper' | 'lower') => ({ limb, cuts: [], bellyThou: 1, backThou: 1 });
const bite: BenchStep = {
  kind: 'bite',
  method: 'thin',
  face: 'belly',
  upper: limbOff('upper'),
  lower: limbOff('lower'),
  step: 0.5,
  isLightPass: false,
  forecast,
};
const missing: BenchView['missing'] = [
  {
    item: 'checked-scale',
    gate: 'bite',
    sentence: 'Check the scale.',
    section: 'weighings',
    opens: null,
    override: 'owner',
  },
];

it('carries over the weights, tiller and cautions, and names whose bow it is', () => {
  expect(at({ kind: 'weigh' })).toMatchObject({
    number: '26-0147',
    customer: 'Nora Hale',
    now: { lbf: 47.81, sdLbf: 0.2, isWeighed: true },
    stopAtLbf: 46.7,
    targetLbf: 45,
    drawIn: 28,
    advice: 'abc',
    cautions: ['Mind the dust.'],
    step: { kind: 'weigh' },
  });
  expect(at({ kind: 'weigh-again', differs: null }).step).toEqual({ kind: 'weigh' });
});

it('tells what was expected only beside a weighing that is saved', () => {
  expect(at({ kind: 'weigh' }).told).toBe('Weighed 47.8 lb, expected 47.6 lb.');
  const now = { lbf: 47, sdLbf: 0.3, weighed: false };
  expect(at({ kind: 'weigh' }, { now }).told).toBeNull();
  const lastReading = { id: 'reading-1', lbf: 52, expectedLbf: null, at: '2026-03-02T09:00:00Z' };
  expect(at({ kind: 'weigh' }, { lastReading }).told).toBeNull();
});

it.each<[BenchStep, string, 'stop' | 'attention']>([
  [{ kind: 'stop-finding', why: ['lower tip: glass lifts'] }, 'DO NOT STRING OR DRAW', 'stop'],
  [{ kind: 'plan-does-not-fit', why: ['The target changed.'] }, 'STOP - PLAN AGAIN', 'attention'],
  [{ kind: 'sand-only', here: false, forecast, why: [] }, 'STOP - SAND ONLY', 'attention'],
  [{ kind: 'at-target', forecast }, 'AT TARGET - STOP', 'attention'],
  [{ kind: 'undershot', byLbf: 0.9, why: [] }, 'STOP - THE CUSTOMER DECIDES', 'attention'],
  [{ kind: 'limit', why: ['Width.'] }, 'STOP - NOTHING MORE OFF', 'attention'],
])('fills the screen: %j', (step, words, tone) => {
  expect(at(step).step).toMatchObject({ kind: 'stop', words, tone });
});

it('bars the hands with the reasons of the records', () => {
  const { step } = at({ kind: 'stop-finding', why: ['lower tip: glass lifts'] });
  expect(step).toMatchObject({ why: ['lower tip: glass lifts', expect.any(String)] });
});

it('records the sanding where it is done', () => {
  expect(at({ kind: 'sand-only', here: true, forecast, why: [] }).step).toEqual({ kind: 'sand' });
});

it('sends a bow without a plan to the desk, and one at another stage to its order', () => {
  expect(at({ kind: 'no-plan' }).step).toEqual({
    kind: 'idle',
    isWeighed: true,
    way: { label: 'Plan at the desk', href: '/weight-bench/order/order-1' },
  });
  expect(at({ kind: 'not-at-bench' }, { now: null }).step).toEqual({
    kind: 'idle',
    isWeighed: false,
    way: { label: 'Open the order', href: '/orders/order-1' },
  });
});

it('shows what a bite still wants at the bite alone', () => {
  expect(at(bite, { missing })).toMatchObject({
    missing,
    step: {
      kind: 'bite',
      step: 0.5,
      band: 'Eight in ten such bites end between 46.9 and 47.5 lb.',
    },
  });
  expect(at({ kind: 'weigh' }, { missing }).missing).toEqual([]);
});

it('asks for the places and faces of the very removal', () => {
  const places = [{ limb: 'upper' as const, fromFadeIn: 6, beforeIn: 1.2, expectedIn: 1.17 }];
  const faces = [{ limb: 'lower' as const, face: 'belly' as const, plannedThou: 2 }];
  const step: BenchStep = {
    kind: 'remeasure',
    removalId: 'removal-1',
    rowVersion: 3,
    method: 'narrow',
    places,
    faces,
  };
  expect(at(step).step).toEqual({
    kind: 'remeasure',
    removalId: 'removal-1',
    rowVersion: 3,
    places,
    faces,
  });
});

it('asks the questions of a reading that does not fit', () => {
  const questions = [{ about: 'brace', question: 'Is the brace height what it was?' }];
  const step: BenchStep = {
    kind: 'questions',
    readingId: 'reading-1',
    rowVersion: 1,
    readLbf: 44,
    expectedLbf: 47,
    questions,
  };
  expect(at(step).step).toEqual({
    kind: 'questions',
    readingId: 'reading-1',
    rowVersion: 1,
    questions,
  });
});

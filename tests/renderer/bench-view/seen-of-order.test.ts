import { expect, it } from 'vitest';
import { barOf, seenOfOrder } from '../../../renderer/screens/bench-view/seen-of-order.ts';
import { cardWith } from '../board/cards.ts';

type Order = Parameters<typeof seenOfOrder>[0];

const order: Order = {
  card: cardWith({
    stage: 'weight-work',
    weights: { arrivalLbf: 52.3, nowLbf: 47.8, targetLbf: 45, drawIn: 28 },
  }),
  findings: [],
  plans: [],
  undershoot: { now: null, isOffered: false, offers: [] },
  targetWeightLbf: 45,
  targetDrawIn: 28,
};
const finding: Order['findings'][number] = {
  id: 'finding-1',
  rowVersion: 1,
  grade: 'stop',
  place: 'lower tip',
  note: 'glass lifts',
  foundAt: '2026-03-02T09:00:00.000Z',
  foundBy: 'Ida Penn',
  resolvedAt: null,
  resolvedHow: null,
};

it('bars everything while a stop finding is open, before anything else', () => {
  const undershot = {
    ...order.undershoot,
    now: { measuredLbf: 44.1, targetLbf: 45, drawIn: 28 },
  };
  expect(barOf({ ...order, findings: [finding], undershoot: undershot })).toMatchObject({
    tone: 'stop',
    words: 'DO NOT STRING OR DRAW',
    why: ['lower tip: glass lifts', expect.any(String)],
    office: '/orders/order-1',
  });
});

it('goes on once the finding is resolved, and never stops for a scratch', () => {
  const resolved = { ...finding, resolvedAt: '2026-03-03T09:00:00.000Z', resolvedHow: 'glued' };
  expect(barOf({ ...order, findings: [resolved, { ...finding, grade: 'cosmetic' }] })).toBeNull();
});

it('leaves an undershot bow to the customer', () => {
  const now = { measuredLbf: 44.1, targetLbf: 45, drawIn: 28 };
  const bar = barOf({ ...order, undershoot: { ...order.undershoot, now } });
  expect(bar).toMatchObject({ tone: 'attention', words: 'STOP - THE CUSTOMER DECIDES' });
});

it('says that a plan is missing and shows no weight to stop at', () => {
  const seen = seenOfOrder(order);
  expect(seen.sentence).toContain('No weight plan is accepted yet');
  expect(seen).toMatchObject({
    stopAtLbf: null,
    targetLbf: 45,
    drawIn: 28,
    step: { kind: 'weigh' },
  });
});

it('names another advice once something else is recorded', () => {
  expect(seenOfOrder(order).advice).toBe(seenOfOrder({ ...order }).advice);
  expect(seenOfOrder({ ...order, findings: [finding] }).advice).not.toBe(seenOfOrder(order).advice);
});

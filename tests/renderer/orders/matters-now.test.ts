import { expect, test } from 'vitest';
import { mattersNow, type Order } from '../../../renderer/screens/orders/matters-now.ts';
import type { FormPlace } from '../../../renderer/screens/orders/open-forms.ts';
import { foldAfter } from '../../../renderer/screens/orders/use-fold.ts';
import type { Section } from '../../../shared/gates.ts';
import type { Stage } from '../../../shared/stages.ts';

const places: readonly FormPlace[] = [
  'arrival',
  'findings',
  'incidents',
  'consents',
  'inscription',
  'weighings',
  'undershoot',
  'geometry',
  'bench-log',
  'final-check',
  'shipping',
  'photos',
  'hold',
  'tasks',
];

interface Change extends Partial<Omit<Order, 'card'>> {
  card?: Partial<Order['card']>;
  missing?: readonly Section[];
}

function order(stage: Stage, { card, missing = [], ...change }: Change = {}): Order {
  const item = { item: 'x', gate: stage, sentence: 'x', opens: null, override: 'never' } as const;
  return {
    card: { stage, goingHome: null, customerId: 'c', route: ['packed', 'shipped'], ...card },
    arrival: null,
    consents: [],
    findings: [],
    holds: [],
    incidents: [],
    next: { stage, missing: missing.map((section) => ({ ...item, section })) },
    services: ['reduce-weight', 're-mark'],
    tasks: [],
    undershoot: { now: null, offers: [], isOffered: false },
    ...change,
  } as Order;
}

const openOf = (one: Order) => places.filter((place) => mattersNow(place, one));

test('each stage opens the sections its work is done in', () => {
  expect(openOf(order('requested'))).toEqual(['inscription', 'photos']);
  expect(openOf(order('weight-work'))).toEqual(['weighings', 'geometry']);
  expect(openOf(order('finish'))).toEqual(['inscription', 'bench-log']);
  expect(openOf(order('final-check'))).toEqual(['final-check']);
  expect(openOf(order('packed'))).toEqual(['shipping', 'photos']);
  expect(openOf(order('shipped'))).toEqual([]);
});

test('what the next step misses is open in any stage', () => {
  expect(openOf(order('cure', { missing: ['final-check', 'consents'] }))).toEqual([
    'consents',
    'final-check',
  ]);
});

test('sections the order has no use for stay folded', () => {
  const services: Order['services'] = ['scuff-recoat'];
  expect(openOf(order('finish', { services }))).toEqual([]);
  expect(openOf(order('arrived', { services }))).toEqual(['consents', 'photos']);
  expect(openOf(order('arrived', { services, card: { customerId: null } }))).toEqual(['photos']);
  expect(openOf(order('weight-work', { card: { goingHome: 'declined' } }))).toEqual(['shipping']);
  expect(openOf(order('packed', { card: { route: ['packed', 'collected'] } }))).toEqual(['photos']);
});

test('what waits is open until the order is closed; damage stays open until it is settled', () => {
  const waiting: Change = {
    findings: [{ resolvedAt: null }] as Order['findings'],
    holds: [{ releasedAt: null }] as Order['holds'],
    incidents: [{ settledAt: null }] as Order['incidents'],
    tasks: [{ doneAt: null }] as Order['tasks'],
  };
  expect(openOf(order('final-check', waiting))).toEqual([
    'findings',
    'incidents',
    'final-check',
    'hold',
    'tasks',
  ]);
  expect(openOf(order('shipped', waiting))).toEqual(['incidents']);
});

test('a section opens by itself and never folds away under the hand in it', () => {
  const now = { stage: 'arrived', matters: false, isBusy: false } as const;
  const folded = foldAfter(null, now);
  expect(folded.open).toBe(false);
  const opened = foldAfter(folded, { ...now, matters: true });
  expect(opened.open).toBe(true);
  expect(foldAfter(opened, now).open).toBe(true);
  expect(foldAfter(opened, { ...now, stage: 'agreed' }).open).toBe(false);
  const byHand = { ...opened, open: false, byHand: true };
  expect(foldAfter(byHand, { ...now, matters: true }).open).toBe(false);
  expect(foldAfter(byHand, { ...now, isBusy: true }).open).toBe(true);
});

test('the finish stands open from the sanding to the cure, on a route that has one', () => {
  const route: Stage[] = ['strip-sand', 'finish', 'cure', 'final-check'];
  const opens = (stage: Stage) => mattersNow('finish', order(stage, { card: { route } }));
  expect(route.map(opens)).toEqual([true, true, true, false]);
  expect(mattersNow('finish', order('cure'))).toBe(false);
  expect(mattersNow('finish', order('final-check', { missing: ['finish'] }))).toBe(true);
});

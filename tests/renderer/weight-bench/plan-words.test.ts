import { describe, expect, it } from 'vitest';
import {
  planFacts,
  planState,
  standingPlan,
  stripOf,
} from '../../../renderer/screens/orders/weight-plan/plan-words.ts';
import type { PlanSummary } from '../../../shared/plan-record.ts';

const plan: PlanSummary = {
  id: 'plan-1',
  rowVersion: 1,
  version: 1,
  method: 'narrowing',
  acceptedAt: '2026-03-03T10:00:00.000Z',
  personName: 'Ben Marsh',
  confirmedBecause: '',
  struckReason: null,
  drawIn: 28,
  weightLbf: 52,
  weightSdLbf: 0.2,
  targetLbf: 45,
  reserveLbf: 0.5,
  stopAtLbf: 47.04,
  forecastLbf: 45.5,
  bandLbf: [44.2, 46.8],
  tillerTargetIn: 1 / 16,
  sanding: 'full strip',
  allowance: { meanThou: 1.4, sdThou: 0.6, jobs: 0 },
  effectiveness: { mean: 1, sd: 0.12, jobs: 0 },
  dropPerThou: 0.01,
  slopeLbfPerIn: 3,
  braceLbfPerIn: 1,
  fits: { ok: true, why: [] },
};

describe('the plan of an order', () => {
  it('is the newest that was not struck out', () => {
    const struck = { ...plan, id: 'plan-2', version: 2, struckReason: 'wrong bow' };
    expect(standingPlan([struck, plan])?.id).toBe('plan-1');
    expect(standingPlan([struck])).toBeNull();
  });

  it('says in a few words how it stands', () => {
    expect(planState({ plans: [] })).toBe('none accepted yet');
    expect(planState({ plans: [plan] })).toBe('narrowing, stop at 47 lb @ 28"');
    const old = { ...plan, fits: { ok: false, why: ['The target was 45 lb and is 44 lb.'] } };
    expect(planState({ plans: [old] })).toBe('narrowing, no longer fits');
    expect(planState({ plans: [{ ...plan, struckReason: 'wrong bow' }] })).toBe(
      'struck out, none accepted',
    );
  });

  it('tells where it stops and what it forecasts', () => {
    const facts = new Map(planFacts({ ...plan, tillerTargetIn: -1 / 8 }));
    expect(facts.get('Stop at')).toBe('47.0 lb @ 28"');
    expect(facts.get('Forecast')).toBe('45.5 lb @ 28" when finished, 80 % between 44.2 and 46.8');
    expect(facts.get('Tiller wanted')).toBe('-1/8"');
  });

  it('puts only weights at its own draw on the strip', () => {
    const weights = { arrivalLbf: 52, nowLbf: 50, targetLbf: 45, drawIn: 28 };
    expect(stripOf(plan, weights)).toMatchObject({ nowLbf: 50, forecastLbf: [44.2, 45.5, 46.8] });
    expect(stripOf(plan, { ...weights, drawIn: 27 }).nowLbf).toBeNull();
    expect(stripOf(plan, weights).stopBandLbf?.[0]).toBeCloseTo(46.54, 9);
  });
});

import { describe, expect, test } from 'vitest';
import type { BowKind } from '../../../../core/limb/plan/bow.ts';
import { planReduction } from '../../../../core/limb/plan/plan.ts';
import type { MethodPlan, ReductionPlan } from '../../../../core/limb/plan/types.ts';
import { seededRandom } from '../../../support/random.ts';
import { mirrored, randomPlan } from '../../../support/random-plan.ts';

const kinds: readonly BowKind[] = ['longbow', 'hybrid', 'recurve'];
const bows = Array.from({ length: 100 }, (_, i) => {
  const kind = kinds[i % 3] ?? 'longbow';
  return { seed: i, kind, ...randomPlan(seededRandom(4200 + i), kind) };
});
type Case = (typeof bows)[number];

function planOf({ bow, wish }: Pick<Case, 'bow' | 'wish'>): ReductionPlan {
  const solved = planReduction(bow, wish);
  if (solved.status !== 'converged') throw new Error(solved.why);
  return solved.value;
}

function methodsOf({ methods }: ReductionPlan): MethodPlan[] {
  return methods.map(({ method, plan }) => {
    if (plan.status !== 'converged') throw new Error(`${method}: ${plan.why}`);
    return plan.value;
  });
}

const plans = bows.map((one) => {
  const plan = planOf(one);
  return { one, plan, methods: methodsOf(plan) };
});
const worked = ({ upper, lower }: MethodPlan) => upper.sharePart + lower.sharePart > 0;
const material = ({ refusals }: MethodPlan) => refusals.some(({ limit }) => limit === 'material');

describe('a hundred bows', () => {
  test('the forecast before finishing is what was asked', () => {
    let cut = 0;
    for (const { one, methods } of plans) {
      for (const plan of methods.filter((method) => worked(method) && !material(method))) {
        cut += 1;
        const miss = plan.afterWork.weightLbf - plan.aimLbf;
        expect(Math.abs(miss), `seed ${one.seed} ${plan.method}`).toBeLessThan(0.05);
        expect(plan.afterFinishing.weightLbf).toBeCloseTo(one.wish.targetLbf + 0.5, 1);
      }
    }
    expect(cut).toBeGreaterThan(200);
  });

  test('tiller comes to its target, or one limb alone is worked and it comes nearer', () => {
    let met = 0;
    for (const { one, methods } of plans) {
      for (const plan of methods.filter((method) => worked(method) && !material(method))) {
        const { afterIn, nowIn, targetIn } = plan.tiller;
        const both = plan.upper.sharePart > 0 && plan.lower.sharePart > 0;
        if (both) {
          met += 1;
          const miss = Math.abs(afterIn - targetIn);
          expect(miss, `seed ${one.seed} ${plan.method}`).toBeLessThan(1 / 64);
        } else {
          expect(Math.abs(afterIn - targetIn)).toBeLessThan(Math.abs(nowIn - targetIn));
        }
      }
    }
    expect(met).toBeGreaterThan(150);
  });

  test('a recommended way breaks no limit, reaches the target and is the first to', () => {
    for (const { plan, methods } of plans) {
      const first = methods.find(
        ({ refusals, reachesTarget }) => reachesTarget && !refusals.length,
      );
      expect(plan.recommended).toBe(first?.method ?? null);
      expect(plan.lowest === null).toBe(plan.recommended !== null);
    }
  });

  test('the sizes of a recommended way bear the limits out, told by other means', () => {
    const leastWidth = { longbow: 0.375, hybrid: 0.4375, recurve: 0.5 };
    const leastRatio = { longbow: 1.5, hybrid: 2, recurve: 3 };
    const leastSide = { longbow: 0.5, hybrid: 0.6, recurve: 0.7 };
    for (const { one, plan, methods } of plans) {
      const chosen = methods.find(({ method }) => method === plan.recommended);
      if (chosen === undefined) continue;
      for (const limb of ['upper', 'lower'] as const) {
        const { stations, glassLeftIn } = chosen[limb];
        const made = one.bow.made?.bellyGlassIn ?? 0;
        expect(glassLeftIn.belly).toBeGreaterThanOrEqual(Math.max(0.03, 0.75 * made) - 1e-9);
        const length = one.bow.measured[limb].profile.lengthIn;
        for (const { fromFadeIn: at, ...station } of stations) {
          if (station.offTotalIn < 0.005) continue;
          const { belly, back } = station.newWidthIn;
          const narrow = Math.min(belly, back);
          expect(narrow).toBeGreaterThan(leastWidth[one.kind] - 1e-9);
          const old = (station.presentWidthIn.belly + station.presentWidthIn.back) / 2;
          expect(((belly + back) / 2 / old) ** 3).toBeGreaterThan(leastSide[one.kind] - 1e-9);
          if (at < 2 || at > length - 4) continue;
          const finished = station.newThicknessIn - (2 * one.wish.finishing.meanThou) / 1000;
          expect(narrow / finished).toBeGreaterThan(leastRatio[one.kind] - 1e-9);
        }
      }
    }
  });

  test('a bow held upside down gets the plan upside down', () => {
    for (const { one, plan, methods } of plans.slice(0, 30)) {
      const turned = planOf(mirrored(one.bow, one.wish));
      expect(turned.recommended).toBe(plan.recommended);
      for (const [i, there] of methodsOf(turned).entries()) {
        const here = methods[i];
        expect(there.upper.offTotalIn).toBeCloseTo(here?.lower.offTotalIn ?? Number.NaN, 4);
        expect(there.lower.offThou.back).toBeCloseTo(here?.upper.offThou.back ?? Number.NaN, 2);
        expect(there.tiller.afterIn).toBeCloseTo(-(here?.tiller.afterIn ?? Number.NaN), 3);
        expect(there.afterWork.weightLbf).toBeCloseTo(here?.afterWork.weightLbf ?? 0, 2);
      }
    }
  });

  test('a lower target never takes less', () => {
    const whole = ({ upper, lower }: MethodPlan) =>
      upper.offTotalIn + lower.offTotalIn + (upper.offThou.belly + lower.offThou.belly) / 1000;
    let compared = 0;
    for (const { one, methods } of plans.slice(0, 30)) {
      const wish = { ...one.wish, targetLbf: one.wish.targetLbf - 0.5 };
      for (const [i, lower] of methodsOf(planOf({ ...one, wish })).entries()) {
        const here = methods[i];
        if (here === undefined || !worked(lower) || material(lower)) continue;
        compared += 1;
        expect(whole(lower), `seed ${one.seed} ${lower.method}`).toBeGreaterThan(whole(here));
        expect(lower.afterWork.weightLbf).toBeLessThan(here.afterWork.weightLbf);
      }
    }
    expect(compared).toBeGreaterThan(60);
  });
});

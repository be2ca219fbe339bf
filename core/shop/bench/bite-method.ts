import type { RemovalMethod } from '../../../shared/bench.ts';
import type { BenchPolicy } from '../../../shared/bench-policy.ts';
import { type Limb, limbs } from '../../../shared/bows.ts';
import type { PlanInput } from '../../../shared/plan-input.ts';
import type { PlanMethod } from '../../../shared/weight-plan.ts';
import {
  type BiteMethod,
  type BowResponse,
  evenCut,
  monotoneCubic,
  sandingThatFits,
} from '../../limb/index.ts';
import { inputOf, methodOf } from '../plans/stored.ts';
import { type StrokesSoFar, sandingStillToCome } from './strokes-so-far.ts';
import { farOutFromPart } from './taken-so-far.ts';
import type { Workdown } from './workdown-of.ts';

/** How the removals of a bite are recorded. */
export const recordedAs: Record<BiteMethod['kind'], RemovalMethod> = {
  narrow: 'narrow',
  'thin both faces': 'thin',
  'belly scrape': 'scrape',
  'sanding strokes': 'strokes',
};

/** Part of the full cut at each place of the response, 0 to 1, as the plan's cut runs. */
function cutParts({ bow, choices }: PlanInput, response: BowResponse): Record<Limb, number[]> {
  const parts = (limb: Limb) => {
    const cuts = evenCut(bow[limb].lengthIn, 1, choices.cutShape);
    const curve = monotoneCubic(
      cuts.map(({ fromFadeIn, leftIn }) => ({ x: fromFadeIn, y: leftIn })),
    );
    return response[limb].stations.map(({ fromFadeIn }) =>
      fromFadeIn < curve.fromX || fromFadeIn > curve.toX
        ? 0
        : Math.min(1, Math.max(0, curve.at(fromFadeIn))),
    );
  };
  return { upper: parts('upper'), lower: parts('lower') };
}

function narrowing(work: Workdown, { smallestSteps }: BenchPolicy): BiteMethod {
  const { sideIn } = smallestSteps;
  const steps = (limb: Limb) => work.narrowedIn[limb] / sideIn;
  return {
    kind: 'narrow',
    parts: cutParts(inputOf(work.plan), work.response),
    stepIn: sideIn,
    stepsDone: { upper: steps('upper'), lower: steps('lower') },
  };
}

/** How a cut far out runs, part of the limb's length and part of the full cut (common practice). */
const farOut = [
  { at: farOutFromPart, part: 0 },
  { at: 0.5, part: 0.5 },
  { at: 0.65, part: 1 },
  { at: 0.8, part: 1 },
  { at: 1, part: 0 },
];

function farOutPart(at: number): number {
  const next = farOut.findIndex((one) => one.at >= at);
  const [inner, outer] = [farOut[next - 1], farOut[next]];
  if (inner === undefined || outer === undefined) return 0;
  return inner.part + ((at - inner.at) / (outer.at - inner.at)) * (outer.part - inner.part);
}

/** Far out an inch of width moves tiller much and weight little. */
function narrowingFarOut(work: Workdown, { smallestSteps }: BenchPolicy): BiteMethod {
  const { sideIn } = smallestSteps;
  const { bow } = inputOf(work.plan);
  const parts = (limb: Limb) =>
    work.response[limb].stations.map(({ fromFadeIn }) =>
      farOutPart(fromFadeIn / bow[limb].lengthIn),
    );
  const steps = (limb: Limb) => work.narrowedFarOutIn[limb] / sideIn;
  return {
    kind: 'narrow',
    parts: { upper: parts('upper'), lower: parts('lower') },
    stepIn: sideIn,
    stepsDone: { upper: steps('upper'), lower: steps('lower') },
  };
}

/** Tiller may stand off its target by half of what is tolerable before it costs a cut of its own, inches. */
const tillerOffIn = 1 / 32;

/** Whether so little weight is left that bringing tiller in along the limb would take most of it. */
function isTillerDear({ plan, replay, response, tiller }: Workdown, toComeThou: number): boolean {
  if (inputOf(plan).bow.kind === 'recurve') return false;
  const [nowIn, targetIn] = [tiller.nowIn, plan.tiller_target_in];
  if (Math.abs(nowIn - targetIn) <= tillerOffIn) return false;
  const { leftLbf, tillerLbf } = sandingThatFits({
    response,
    weightLbf: replay.state.weightLbf,
    targetLbf: plan.target_lbf,
    tiller: { nowIn, targetIn },
    reserveLbf: plan.reserve_lbf,
    stripThou: toComeThou,
  });
  return leftLbf < 2 * tillerLbf;
}

export interface Way {
  method: BiteMethod;
  wanted: 'weight and tiller' | 'tiller';
}

/** Narrowing and thinning: what the plan narrows comes first, thinning takes the rest. */
export function narrowingLeftIn(work: Workdown): Record<Limb, number> {
  const planned = methodOf(work.plan);
  const left = (limb: Limb) => planned[limb].offPerSideIn - work.narrowedIn[limb];
  return { upper: left('upper'), lower: left('lower') };
}

/**
 * The ways of the plan's own bites, in the order they are tried. Empty: sanding does it all.
 * @param toComeThou what sanding still takes off each face, thousandths
 */
export function waysOf(work: Workdown, policy: BenchPolicy, toComeThou: number): Way[] {
  const way = (method: BiteMethod): Way => ({ method, wanted: 'weight and tiller' });
  const thin = way({ kind: 'thin both faces', stepThou: policy.smallestSteps.faceThou });
  const { method } = work.plan;
  switch (method as PlanMethod) {
    case 'sanding':
      return [];
    case 'narrowing': {
      const along = way(narrowing(work, policy));
      if (!isTillerDear(work, toComeThou)) return [along];
      return [{ method: narrowingFarOut(work, policy), wanted: 'tiller' }, along];
    }
    case 'thinning':
      return [thin];
    case 'mixed': {
      const left = narrowingLeftIn(work);
      const more = limbs.some((limb) => left[limb] >= policy.smallestSteps.sideIn / 2);
      return more ? [way(narrowing(work, policy)), thin] : [thin];
    }
    case 'belly-scrape':
      return [way({ kind: 'belly scrape', stepThou: policy.smallestSteps.faceThou })];
  }
}

/** Light passes with paper, once nothing is to come after them. */
export const lightPasses = ({ smallestSteps }: BenchPolicy): BiteMethod => ({
  kind: 'sanding strokes',
  stepThou: smallestSteps.strokeThou,
});

export interface Sandings {
  /** Off each face, thousandths; null once nothing is to come. */
  toCome: { mean: number; sd: number } | null;
  /** The same before any stroke on record was reckoned in. */
  allowance: { mean: number; sd: number } | null;
  /** Of the sanding that is under way; null where none was counted. */
  strokes: StrokesSoFar | null;
  /** Stripped, and the weight work is still to come. */
  betweenSandings: boolean;
}

const sanded: Sandings = { toCome: null, allowance: null, strokes: null, betweenSandings: false };

/**
 * What sanding still takes. A bow that is stripped before its weight work is sanded once more
 * after it, by the shop's figure for final sanding.
 */
export function sandingsOf(
  { plan, strips }: Pick<Workdown, 'plan' | 'strips'>,
  { stripsFirst, strokes }: { stripsFirst: boolean; strokes: StrokesSoFar | null },
  { allowances }: BenchPolicy,
): Sandings {
  const twice = stripsFirst && plan.sanding === 'full strip';
  if (strips > (twice ? 1 : 0)) return sanded;
  const { meanThou, sdThou } = allowances['final sanding only'];
  const allowance =
    strips === 0
      ? { mean: plan.allowance_mean_thou, sd: plan.allowance_sd_thou }
      : { mean: meanThou, sd: sdThou };
  const toCome = strokes === null ? allowance : sandingStillToCome(allowance, strokes);
  return { toCome, allowance, strokes, betweenSandings: strips > 0 };
}

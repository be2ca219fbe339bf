import type { StringTrack } from '../../../shared/bench.ts';
import type { BenchPolicy, TrackRule } from '../../../shared/bench-policy.ts';
import { limbs } from '../../../shared/bows.ts';
import { type BiteMethod, type NextBite, nextBite, type Tracking } from '../../limb/index.ts';
import { limitsOf } from './bite-limits.ts';
import { lightPasses, narrowingLeftIn, type Sandings, type Way, waysOf } from './bite-method.ts';
import type { Workdown } from './workdown-of.ts';

/** What comes next by the figures alone, and how it is done where it is a bite. */
export interface Outcome {
  next: NextBite;
  method: BiteMethod;
}

/** Which side of a limb gets a step more, seen from the belly: by the shop's rule. */
function tracksTo(track: StringTrack | null, rule: TrackRule): Tracking['upper'] {
  if (track === null || track === 'centre' || rule === 'off') return null;
  if (rule === 'same-side') return track;
  return track === 'left' ? 'right' : 'left';
}

type Removal = Extract<NextBite, { stop: null }>['removal'];

/** A plan of narrowing and thinning narrows no further than it says. */
function pastNarrowing(work: Workdown, stepIn: number): (removal: Removal) => string | null {
  const left = narrowingLeftIn(work);
  return (removal) => {
    for (const limb of limbs) {
      const sides = removal[limb].cuts.map(({ leftIn, rightIn }) => (leftIn + rightIn) / 2);
      if (Math.max(0, ...sides) > Math.max(0, left[limb]) + stepIn / 2) {
        return `The plan narrows the ${limb} limb no further.`;
      }
    }
    return null;
  };
}

const noBite = 'Sanding alone takes it from here.';

/**
 * The next bite or why there is none, from where the work stands.
 * @param weighingSdLbf spread of one more weighing, lbf
 */
export function outcomeOf(
  work: Workdown,
  policy: BenchPolicy,
  { toCome }: Sandings,
  weighingSdLbf: number,
): Outcome {
  const { plan, replay, response, bitesTaken, tiller } = work;
  const within = limitsOf(work, policy, toCome);
  const reckon = ({ method, wanted }: Way, refusedBecause: (removal: Removal) => string | null) =>
    nextBite({
      response,
      state: replay.state,
      targetLbf: plan.target_lbf,
      bitesTaken,
      method,
      wanted,
      sandingThou: toCome,
      tiller: { nowIn: tiller.nowIn, targetIn: plan.tiller_target_in },
      tracking: {
        upper: tracksTo(tiller.upperTrack, policy.trackRule),
        lower: tracksTo(tiller.lowerTrack, policy.trackRule),
      },
      ...(toCome === null ? { weighingSdLbf } : {}),
      refusedBecause,
      rules: { reserveLbf: plan.reserve_lbf },
    });
  const strokes = lightPasses(policy);
  const strokesWay: Way = { method: strokes, wanted: 'weight and tiller' };
  if (toCome === null) return { next: reckon(strokesWay, within), method: strokes };
  let last: Outcome | null = null;
  for (const way of waysOf(work, policy, toCome.mean)) {
    const { method } = way;
    const narrows = method.kind === 'narrow' && plan.method === 'mixed';
    const past = narrows ? pastNarrowing(work, policy.smallestSteps.sideIn) : () => null;
    const next = reckon(way, (removal) => past(removal) ?? within(removal));
    last = { next, method };
    // What no more narrowing does, thinning may still do.
    if (next.stop === null || next.stop === 'undershot') return last;
  }
  if (last !== null) return last;
  const next = reckon(strokesWay, () => noBite);
  const { forecast } = next;
  return next.stop === 'undershot'
    ? { next, method: strokes }
    : { next: { stop: 'sand only', forecast, because: null }, method: strokes };
}

import type { Limb } from '../../../shared/bows.ts';
import { newton, type Pair } from '../newton.ts';
import type { Amounts } from './work.ts';

/** What a trial of two amounts gives: modelled weight and tiller. Null where the model has no answer. */
export interface TrialResult {
  /** Over the weight of the bow as it is. */
  weightPart: number;
  /** Moved from the bow as it is, inches; positive: the upper limb is weaker. */
  tillerMoveIn: number;
}

export interface ShareGoal {
  weightPart: number;
  tillerMoveIn: number;
}

export interface ShareProblem {
  /** At no amounts: finishing alone. */
  atNone: TrialResult;
  /** Largest amounts that there is material for. */
  most: Amounts;
  trial(amounts: Amounts): TrialResult | null;
}

/**
 * `both`: weight and tiller are met. `weight-only`: the tiller would ask for material back, so one
 * limb alone is worked and the weight is met. `out-of-material`: not even all there is meets it.
 */
export type ShareOutcome = 'both' | 'weight-only' | 'out-of-material';

export interface TillerShare {
  amounts: Amounts;
  outcome: ShareOutcome;
}

/** An inch of tiller counts as much as this part of the weight: 1/64 in like a tenth of a percent. */
const tillerScale = 0.064;
/** Parts in a million of the weight; 1e-5 in of tiller. */
const tolerance = 1e-6;
/** Difference quotient of the first step: a whole unit; near the answer a little. */
const trialStep = 1;
const laterStep: Pair = [0.02, 0.02];

type Slopes = readonly [Pair, Pair];

/** Both misses, in parts of the weight. Outside what can be cut they go on as straight lines. */
class Misses {
  readonly #problem: ShareProblem;
  readonly #goal: ShareGoal;
  readonly #none: Pair;
  readonly #known = new Map<string, Pair>();
  #slopes: Slopes | null = null;
  failed = false;

  constructor(problem: ShareProblem, goal: ShareGoal) {
    this.#problem = problem;
    this.#goal = goal;
    this.#none = this.#miss(problem.atNone);
  }

  #miss({ weightPart, tillerMoveIn }: TrialResult): Pair {
    return [
      weightPart - this.#goal.weightPart,
      (tillerMoveIn - this.#goal.tillerMoveIn) * tillerScale,
    ];
  }

  #inside(upper: number, lower: number): Pair {
    if (upper === 0 && lower === 0) return this.#none;
    const key = `${upper} ${lower}`;
    const known = this.#known.get(key);
    if (known !== undefined) return known;
    const result = this.#problem.trial({ upper, lower });
    if (result === null) {
      this.failed = true;
      return this.#none;
    }
    const miss = this.#miss(result);
    this.#known.set(key, miss);
    return miss;
  }

  /** Amounts of the first trials. */
  firstStep(): Pair {
    const { most } = this.#problem;
    const step = (at: number) => Math.min(trialStep, at / 2);
    return [step(most.upper), step(most.lower)];
  }

  /** Change of both misses by one unit on the upper and one on the lower limb, from none. */
  slopes(): Slopes {
    if (this.#slopes !== null) return this.#slopes;
    const [du, dl] = this.firstStep();
    const [u, l] = [this.#inside(du, 0), this.#inside(0, dl)];
    const by = (to: Pair, h: number): Pair => [
      (to[0] - this.#none[0]) / h,
      (to[1] - this.#none[1]) / h,
    ];
    this.#slopes = [by(u, du), by(l, dl)];
    return this.#slopes;
  }

  at([upper, lower]: Pair): Pair {
    const { most } = this.#problem;
    const u = Math.min(Math.max(upper, 0), most.upper);
    const l = Math.min(Math.max(lower, 0), most.lower);
    const miss = this.#inside(u, l);
    const [over, under] = [upper - u, lower - l];
    if (over === 0 && under === 0) return miss;
    const [su, sl] = this.slopes();
    return [miss[0] + over * su[0] + under * sl[0], miss[1] + over * su[1] + under * sl[1]];
  }
}

/** A search outwards never takes longer steps than this factor. */
const growth = 1.6;

/**
 * Amount on one limb, the other left alone, that meets the weight; at most what there is. Searched
 * outwards from none: far out a bow is so lopsided that its weight tells nothing.
 */
function weightAlone(misses: Misses, of: (amount: number) => Pair, most: number, guess: number) {
  const f = (amount: number) => misses.at(of(amount))[0];
  let [low, fLow] = [0, f(0)];
  if (fLow <= 0) return 0;
  let high = Math.min(guess, most);
  let fHigh = f(high);
  while (fHigh > 0 && high < most) {
    [low, fLow] = [high, fHigh];
    high = Math.min(high * growth, most);
    fHigh = f(high);
  }
  if (fHigh >= 0) return most;
  let x = high;
  for (let i = 0; i < 40; i += 1) {
    x = high - (fHigh * (high - low)) / (fHigh - fLow);
    const fx = f(x);
    if (Math.abs(fx) <= tolerance || high - low <= 1e-12) break;
    if (fx > 0) [low, fLow, fHigh] = [x, fx, fHigh / 2];
    else [high, fHigh, fLow] = [x, fx, fLow / 2];
  }
  return x;
}

/** One limb is left alone and the other meets the weight. */
function oneLimbOnly({ most }: ShareProblem, misses: Misses, worked: Limb): TillerShare {
  const pair = (amount: number): Pair => (worked === 'upper' ? [amount, 0] : [0, amount]);
  // Where a straight line from none meets the weight, and a little over.
  const slope = misses.slopes()[worked === 'upper' ? 0 : 1][0];
  const guess = (-1.05 * misses.at([0, 0])[0]) / slope;
  const [upper, lower] = pair(weightAlone(misses, pair, most[worked], guess));
  const met = Math.abs(misses.at([upper, lower])[0]) <= 10 * tolerance;
  return { amounts: { upper, lower }, outcome: met ? 'weight-only' : 'out-of-material' };
}

/**
 * Amounts of one kind of work on both limbs that bring weight and tiller to their goals together.
 * The limb that is to become weaker gets more. Nothing can be put back: where the tiller asks for
 * that, the other limb alone brings the weight down, which still moves the tiller the right way.
 * @returns null where the model finds no answer on the way
 */
export function shareOut(problem: ShareProblem, goal: ShareGoal): TillerShare | null {
  const misses = new Misses(problem, goal);
  const { most } = problem;
  const { at, residual } = newton((pair) => misses.at(pair), [0, 0], {
    // From none the first trials serve, which the straight lines outside have taken already.
    stepFor: ([upper, lower]) => (upper === 0 && lower === 0 ? misses.firstStep() : laterStep),
    tolerance,
    maxIterations: 20,
  });
  if (misses.failed) return null;
  const beyond = at[0] > most.upper || at[1] > most.lower;
  if (beyond && !(at[0] < 0 || at[1] < 0)) {
    const amounts = {
      upper: Math.min(at[0], most.upper),
      lower: Math.min(at[1], most.lower),
    };
    return { amounts, outcome: 'out-of-material' };
  }
  if (at[0] >= 0 && at[1] >= 0) {
    return residual <= 100 * tolerance
      ? { amounts: { upper: at[0], lower: at[1] }, outcome: 'both' }
      : null;
  }
  const share = oneLimbOnly(problem, misses, at[0] < at[1] ? 'lower' : 'upper');
  return misses.failed ? null : share;
}

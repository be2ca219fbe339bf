import { type MeasuredBow, type MeasuredLimb, wholeBowOf } from '../../core/limb/modelled-bow.ts';
import { type BowRemoval, bowAfter } from '../../core/limb/predict-removal.ts';
import { type LimbRemoval, nothingTaken } from '../../core/limb/removal.ts';
import { solveStaticBow } from '../../core/limb/static-bow.ts';
import { weightAndTiller } from '../../core/limb/workdown/next-bite-response.ts';
import type { Sanding } from '../../shared/weight-plan.ts';
import { normal } from './normal.ts';
import { drawIn, type SimulatedBow, segments, spreads, tillerOf } from './simulated-bow.ts';

/** What weighing, cutting and sanding miss by: one standard deviation each. */
export const hands = {
  pullLbf: 0.15,
  scaleBiasLbf: 0.15,
  drawSessionIn: 1 / 16,
  drawPullIn: 1 / 32,
  braceSessionIn: 1 / 16,
  cutIn: 0.01,
  thinThou: 0.3,
  strokePart: 0.3,
  sandingThou: { mean: 1.4, sd: 0.6, least: 0.3 },
  finalSandingThou: { mean: 0.6, sd: 0.3, least: 0.1 },
} as const;

export const pulls = 3;
/** Tiller is read to this, inches. */
const tillerStepIn = 1 / 64;

function forceAt(bow: MeasuredBow, draw: number): number {
  const options = { braceIn: bow.braceIn, drawsIn: [draw], segments };
  const solved = solveStaticBow(wholeBowOf(bow), options);
  if (solved.status !== 'converged') throw new Error(solved.why);
  return solved.value.draws[0]?.forceLbf ?? Number.NaN;
}

/** What an inch of draw and of brace height does to the weight, as part of it. */
export function slopesOf({ upper, braceIn }: MeasuredBow): {
  perDrawIn: number;
  perBraceIn: number;
} {
  // Limbs alike are solved once, and as parts of the weight the slopes of both are the same.
  const bow = { upper, lower: upper, braceIn };
  const at = forceAt(bow, drawIn);
  const raised = { ...bow, braceIn: bow.braceIn + 0.25 };
  return {
    perDrawIn: (forceAt(bow, drawIn + 0.5) - at) / at / 0.5,
    perBraceIn: (forceAt(raised, drawIn) - at) / at / 0.25,
  };
}

/** One bow on one bench. Who plans sees readings only. */
export class JobWorld {
  readonly bow: SimulatedBow;
  readonly #random: () => number;
  readonly #biasLbf: number;
  readonly #slopes: { perDrawIn: number; perBraceIn: number };
  #truth: MeasuredBow;
  #trueLbf: number;
  #tillerIn: number;
  weighings = 0;

  constructor(bow: SimulatedBow, random: () => number) {
    this.bow = bow;
    this.#random = random;
    this.#truth = bow.truth;
    this.#trueLbf = bow.arrivalLbf;
    this.#tillerIn = tillerOf(bow.truth) ?? Number.NaN;
    this.#biasLbf = hands.scaleBiasLbf * this.#normal();
    this.#slopes = slopesOf(bow.truth);
  }

  #normal(): number {
    return normal(this.#random);
  }

  /** For the count at the end only. */
  get trueLbf(): number {
    return this.#trueLbf;
  }
  get truth(): MeasuredBow {
    return this.#truth;
  }
  get trueTillerIn(): number {
    return this.#tillerIn;
  }

  /** Mean of the pulls of one session, lbf. */
  weigh(): number {
    this.weighings += 1;
    const draw = hands.drawSessionIn * this.#normal();
    const brace = hands.braceSessionIn * this.#normal();
    let sum = 0;
    for (let i = 0; i < pulls; i += 1) {
      const drawn = draw + hands.drawPullIn * this.#normal();
      const part = 1 + this.#slopes.perDrawIn * drawn + this.#slopes.perBraceIn * brace;
      sum += this.#trueLbf * part + this.#biasLbf + hands.pullLbf * this.#normal();
    }
    return sum / pulls;
  }

  tiller(): number {
    return Math.round(this.trueTillerIn / tillerStepIn) * tillerStepIn;
  }

  /** Total widths at the places, inches. */
  widthsIn(): { upper: number[]; lower: number[] } {
    const read = ({ profile }: MeasuredLimb) =>
      this.bow.placesIn.map((place) => {
        const at = profile.stations.find(({ fromFadeIn }) => fromFadeIn === place);
        return (at?.bellyWidthIn ?? Number.NaN) + spreads.widthReadingIn * this.#normal();
      });
    return { upper: read(this.#truth.upper), lower: read(this.#truth.lower) };
  }

  #take(removal: BowRemoval): void {
    this.#truth = bowAfter(this.#truth, removal);
    const solved = weightAndTiller(this.#truth, drawIn, segments);
    if (solved.status !== 'converged') throw new Error(solved.why);
    this.#trueLbf = this.bow.scale * solved.value.lbf;
    this.#tillerIn = solved.value.tillerIn;
  }

  #cutBy(limb: LimbRemoval): LimbRemoval {
    const side = (wantedIn: number) =>
      wantedIn === 0 ? 0 : Math.max(0, wantedIn + hands.cutIn * this.#normal());
    const cuts = limb.cuts.map(({ fromFadeIn, leftIn, rightIn }) => ({
      fromFadeIn,
      leftIn: side(leftIn),
      rightIn: side(rightIn),
    }));
    return { ...limb, cuts };
  }

  #thinBy(limb: LimbRemoval, missThou: (thou: number) => number): LimbRemoval {
    const face = (thou: number) =>
      thou === 0 ? 0 : Math.max(0, thou + missThou(thou) * this.#normal());
    return { ...limb, bellyThou: face(limb.bellyThou), backThou: face(limb.backThou) };
  }

  cut({ upper, lower }: BowRemoval): void {
    this.#take({ upper: this.#cutBy(upper), lower: this.#cutBy(lower) });
  }

  thin({ upper, lower }: BowRemoval): void {
    const miss = () => hands.thinThou;
    this.#take({ upper: this.#thinBy(upper, miss), lower: this.#thinBy(lower, miss) });
  }

  stroke({ upper, lower }: BowRemoval): void {
    const miss = (thou: number) => (thou < 1 ? hands.strokePart * thou : hands.thinThou);
    this.#take({ upper: this.#thinBy(upper, miss), lower: this.#thinBy(lower, miss) });
  }

  stripAndSand(sanding: Sanding): void {
    const full = sanding === 'full strip';
    const { mean, sd, least } = full ? hands.sandingThou : hands.finalSandingThou;
    const face = () => Math.max(least, mean + sd * this.#normal());
    const limb = () => ({ ...nothingTaken, bellyThou: face(), backThou: face() });
    this.#take({ upper: limb(), lower: limb() });
  }
}

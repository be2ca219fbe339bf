import { eightTenths } from '../predict-removal.ts';
import type { PlanWish } from './bow.ts';

/** A weight that is still to come. */
export interface WeightForecast {
  weightLbf: number;
  /** Eight in ten such bows end between these, lbf. */
  bandLbf: readonly [number, number];
  sdLbf: number;
}

/** Part of its weight that the bow loses, by the model, work alone and with finishing. */
export interface ModelledDrops {
  work: number;
  finished: number;
}

export interface PlanForecast {
  afterWork: WeightForecast;
  afterFinishing: WeightForecast;
  /** What finishing is expected to take from the worked bow, lbf. */
  finishingTakesLbf: number;
  /** What the bow should weigh before finishing to end at target and reserve, lbf. */
  aimLbf: number;
}

function forecast(weightLbf: number, sdLbf: number): WeightForecast {
  const half = eightTenths * sdLbf;
  return { weightLbf, sdLbf, bandLbf: [weightLbf - half, weightLbf + half] };
}

/**
 * The same law as `predictRemoval`: the model gives the part lost, the measured weight the pounds,
 * the effectiveness of earlier removals the correction. What finishing takes adds its own spread.
 */
export function forecastOf(wish: PlanWish, { work, finished }: ModelledDrops): PlanForecast {
  const { weightLbf, weightSdLbf, effectiveness, finishing } = wish;
  const after = (drop: number) => weightLbf * (1 - drop * effectiveness.mean);
  const spread = (drop: number) =>
    Math.hypot(weightSdLbf * (1 - drop * effectiveness.mean), weightLbf * drop * effectiveness.sd);
  const finishingTakesLbf = after(work) - after(finished);
  const perThouLbf = finishing.meanThou > 0 ? finishingTakesLbf / finishing.meanThou : 0;
  const sdFinished = Math.hypot(spread(finished), perThouLbf * finishing.sdThou);
  return {
    afterWork: forecast(after(work), spread(work)),
    afterFinishing: forecast(after(finished), sdFinished),
    finishingTakesLbf,
    aimLbf: wish.targetLbf + wish.reserveLbf + finishingTakesLbf,
  };
}

/** Tiller after a removal: the measured one, moved as the model moves, inches. */
export function tillerAfter(wish: PlanWish, modelledMoveIn: number): number {
  return wish.tillerIn + wish.effectiveness.mean * modelledMoveIn;
}

/** Modelled weight over the present one that ends at a weight, before the effectiveness. */
export function modelledPartFor(wish: PlanWish, endLbf: number): number {
  return 1 - (1 - endLbf / wish.weightLbf) / wish.effectiveness.mean;
}

import type { Limb } from '../../../shared/bows.ts';
import { ShopError } from '../../../shared/errors.ts';
import { type LimbProfile, type LimbStation, sizesOf } from '../limb-profile.ts';
import type { MeasuredBow } from '../modelled-bow.ts';
import type { BowRemoval } from '../predict-removal.ts';
import { applyRemoval, type LimbRemoval, nothingTaken } from '../removal.ts';
import type { CutFace, SideCut } from '../side-cut.ts';

/** Where a side cut runs along the limb. All common practice. */
export interface CutShape {
  /** Nothing comes off nearer the fade, inches from it. */
  fromIn: number;
  /** The full cut begins here, inches from the fade. */
  fullFromIn: number;
  /** The full cut ends here, part of the limb's length. */
  carriedPart: number;
  /** It has tapered out to nothing this far short of the nock, inches. */
  endsShortIn: number;
}

/** Common practice: blends out 2 to 3 in from the fade, even to half the limb, then tapering out. */
export const defaultCutShape: CutShape = {
  fromIn: 2,
  fullFromIn: 3,
  carriedPart: 0.5,
  endsShortIn: 0,
};

/** @throws ShopError BAD_INPUT where the places of the cut do not follow each other on both limbs */
export function refuseOddShape(shape: CutShape, { upper, lower }: MeasuredBow): void {
  const shortest = Math.min(upper.profile.lengthIn, lower.profile.lengthIn);
  const carriedIn = Math.max(shape.carriedPart * shortest, shape.fullFromIn + 1);
  const places = [0, shape.fromIn, shape.fullFromIn, carriedIn, shortest - shape.endsShortIn];
  const rising = places.every((at, i) => i < 2 || at > (places[i - 1] ?? at));
  if (rising && shape.fromIn >= 0 && shape.endsShortIn >= 0) return;
  const sentence = 'The cut must begin, be full, and taper out in this order along the limb.';
  throw new ShopError('BAD_INPUT', sentence, { cutShape: sentence });
}

/** What one unit of a method takes off a limb. */
export interface UnitOfWork {
  /** Off each side where the cut is full, inches. */
  sideIn: number;
  bellyThou: number;
  backThou: number;
}

/** How many units each limb gets. */
export type Amounts = Record<Limb, number>;
export const noAmounts: Amounts = { upper: 0, lower: 0 };

/** Cuts of both sides alike, rising places, the amount off a side in inches. */
export function evenCut(lengthIn: number, sideIn: number, shape: CutShape): SideCut[] {
  if (sideIn === 0) return [];
  const carriedIn = Math.max(shape.carriedPart * lengthIn, shape.fullFromIn + 1);
  const at = (fromFadeIn: number, offIn: number): SideCut => ({
    fromFadeIn,
    leftIn: offIn,
    rightIn: offIn,
  });
  return [
    at(shape.fromIn, 0),
    at(shape.fullFromIn, sideIn),
    at(carriedIn, sideIn),
    at(lengthIn - shape.endsShortIn, 0),
  ];
}

/** The work on one limb, finishing not included. */
export function workOn(
  { lengthIn }: LimbProfile,
  unit: UnitOfWork,
  amount: number,
  { cutShape, face }: { cutShape: CutShape; face: CutFace },
): LimbRemoval {
  if (amount === 0) return nothingTaken;
  return {
    ...nothingTaken,
    face,
    cuts: evenCut(lengthIn, amount * unit.sideIn, cutShape),
    bellyThou: amount * unit.bellyThou,
    backThou: amount * unit.backThou,
  };
}

/** The same work with so many thousandths more off both faces. */
export function withSanding(removal: LimbRemoval, perFaceThou: number): LimbRemoval {
  return {
    ...removal,
    bellyThou: removal.bellyThou + perFaceThou,
    backThou: removal.backThou + perFaceThou,
  };
}

export const withSandingOf = (removal: BowRemoval, perFaceThou: number): BowRemoval => ({
  upper: withSanding(removal.upper, perFaceThou),
  lower: withSanding(removal.lower, perFaceThou),
});

/** One limb before the work and after all of it, finishing included. */
export interface LimbWork {
  limb: Limb;
  before: LimbProfile;
  finished: LimbProfile;
  /** Sizes before, anywhere along the limb. */
  sizes(fromFadeIn: number): LimbStation;
}

export function limbWork(
  limb: Limb,
  before: LimbProfile,
  removal: LimbRemoval,
  perFaceThou: number,
): LimbWork {
  const finished = applyRemoval(before, withSanding(removal, perFaceThou));
  return { limb, before, finished, sizes: sizesOf(before) };
}

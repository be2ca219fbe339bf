import { ShopError } from '../../../shared/errors.ts';
import type { BowKind } from './bow.ts';

/** How far a reduction may go. All defaults are common practice, none is from print. */
export interface PlanLimits {
  /** Glass of a face is never left thinner, inches. */
  leastGlassIn: number;
  /** Glass of a face is never left under this part of what it was when made. */
  leastGlassPart: number;
  /** Width at a cut station, inches. */
  leastWidthIn: Record<BowKind, number>;
  /** Width over thickness at a cut station, from `inner` past the fade to `outer` short of the nock. */
  leastWidthToThickness: Record<BowKind, number>;
  ratioFromFadeIn: number;
  ratioShortOfNockIn: number;
  /** (New over old width)^3 at the weakest cut station: what is left against bending sideways. */
  leastSideStiffness: Record<BowKind, number>;
  /** A recurve whose hook turns through more than this is not narrowed, degrees. */
  steepRecurveDeg: number;
  /** Less than this off both sides together is no cut, inches: a calliper does not tell it. */
  smallestCutIn: number;
  /** Part of the present weight from which a drop is noted, confirmed, refused. */
  noteDropPart: number;
  confirmDropPart: number;
  confirmDropLbf: number;
  refuseDropPart: number;
}

/** Common practice, every figure a setting of the shop. */
export const defaultLimits: PlanLimits = {
  leastGlassIn: 0.03,
  leastGlassPart: 0.75,
  leastWidthIn: { longbow: 3 / 8, hybrid: 7 / 16, recurve: 1 / 2 },
  leastWidthToThickness: { longbow: 1.5, hybrid: 2, recurve: 3 },
  ratioFromFadeIn: 2,
  ratioShortOfNockIn: 4,
  leastSideStiffness: { longbow: 0.5, hybrid: 0.6, recurve: 0.7 },
  steepRecurveDeg: 60,
  smallestCutIn: 0.005,
  noteDropPart: 0.1,
  confirmDropPart: 0.15,
  confirmDropLbf: 8,
  refuseDropPart: 0.25,
};

/** @throws ShopError BAD_INPUT naming the setting that is not a number over zero */
export function refuseOddLimits(limits: PlanLimits): void {
  for (const [name, value] of Object.entries(limits)) {
    const figures: unknown[] = typeof value === 'number' ? [value] : Object.values(value);
    if (figures.every((one) => typeof one === 'number' && Number.isFinite(one) && one >= 0)) {
      continue;
    }
    const sentence = `The limit "${name}" must be a number, 0 or more.`;
    throw new ShopError('BAD_INPUT', sentence, { [name]: sentence });
  }
}

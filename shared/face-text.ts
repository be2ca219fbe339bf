import { glassHowLabels } from './bows.ts';
import type { BowFields, Face } from './contract/bows.ts';
import { decimal } from './measure.ts';

const thou = (inches: number): string => decimal(inches * 1000, 1);

/** The facing, said once where both faces carry the same: `E-glass`, `bamboo back, E-glass belly`. */
export function facingText(
  { back, belly }: BowFields['faces'],
  nameOf: (facing: Face['facing']) => string = (facing) => facing,
): string {
  return back.facing === belly.facing
    ? nameOf(back.facing)
    : `${nameOf(back.facing)} back, ${nameOf(belly.facing)} belly`;
}

/** Glass of one face in thousandths of an inch: `48 of 50 thou, loupe at the limb edge`. Empty where unknown. */
export function glassText({ glassMadeIn, glassNowIn, glassHow }: Face): string {
  if (glassMadeIn === null && glassNowIn === null) return '';
  const made = glassMadeIn === null ? '' : thou(glassMadeIn);
  const left = glassNowIn === null ? '' : thou(glassNowIn);
  const size = left === '' ? `made ${made} thou` : `${left}${made && ` of ${made}`} thou`;
  return `${size}, ${glassHowLabels[glassHow]}`;
}

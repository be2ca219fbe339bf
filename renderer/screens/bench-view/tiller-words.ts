import { difference, inchFraction } from '../../../shared/measure.ts';

const parts = 32;

/** A tiller as it is read: upper minus lower string distance at the fades. */
export function tillerSaid(tillerIn: number): string {
  const size = inchFraction(Math.abs(tillerIn), parts);
  if (size === '0') return 'Even';
  return tillerIn > 0 ? `Upper ${size} in more` : `Upper ${size} in less`;
}

/**
 * Which limb is too strong for the tiller that is wanted, and where more has to come off. Positive
 * tiller means a weaker upper limb, so one below its target has a strong upper limb.
 */
export function tillerAdvice(
  nowIn: number,
  targetIn: number,
): { said: string; more: string | null } {
  const off = difference(nowIn, targetIn);
  const size = inchFraction(Math.abs(off), parts);
  if (size === '0') return { said: 'as wanted', more: null };
  const limb = off < 0 ? 'upper' : 'lower';
  return { said: `${limb} strong ${size} in`, more: `more from ${limb}` };
}

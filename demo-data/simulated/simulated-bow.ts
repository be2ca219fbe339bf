import { braceTiller } from '../../core/limb/brace-tiller.ts';
import { type MeasuredBow, wholeBowOf } from '../../core/limb/modelled-bow.ts';

export type BowKind = 'longbow' | 'hybrid' | 'recurve';
/** All simulated bows are weighed here, inches AMO. */
export const drawIn = 28;
/** From fade to tip. */
export const segments = 30;

/** What nobody knows of a bow, and what a calliper misreads: one standard deviation each. */
export const spreads = {
  glassModulus: 0.1,
  coreModulus: 0.15,
  riserIn: 0.5,
  thicknessBetween: 0.02,
  widthReadingIn: 0.005,
  thicknessReadingIn: 0.003,
} as const;

/** A bow as it is, and as it was measured on the bench. */
export interface SimulatedBow {
  kind: BowKind;
  contact: boolean;
  truth: MeasuredBow;
  /** The model's pounds times this are the bow's own. */
  scale: number;
  measured: MeasuredBow;
  /** Places that are measured and cut, inches from the fade. */
  placesIn: readonly number[];
  arrivalLbf: number;
  targetTillerIn: number;
}

/** Upper minus lower string distance at the fades, inches; null where the bow cannot be strung. */
export function tillerOf(bow: MeasuredBow): number | null {
  const solved = braceTiller(wholeBowOf(bow), bow.braceIn, segments);
  return solved.status === 'converged' ? solved.value.tillerIn : null;
}

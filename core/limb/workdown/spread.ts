import { refuseField } from '../../../shared/errors.ts';

/** What a weighing may be off by, each as one standard deviation unless said. */
export interface WeighingSources {
  /** Smallest step that the scale shows, lbf. */
  resolutionLbf: number;
  /** What the last check of the scale leaves unknown, lbf. */
  checkSdLbf: number;
  /** From pull to pull, lbf, and how many pulls the weight is the mean of. */
  perPullSdLbf: number;
  pulls: number;
  /** Draw length of the session, inches; 1/16 in with a marked arrow (common practice). */
  drawSdIn?: number;
  /** Weight gained by an inch of draw here, lbf/in. */
  slopeLbfPerIn: number;
  /** Brace height of the session, inches, and what an inch of it does to the weight, lbf/in. */
  braceSdIn?: number;
  braceLbfPerIn?: number;
}

/** The parts of a weighing's spread, lbf, one standard deviation each. */
export interface WeighingSpread {
  resolutionLbf: number;
  repeatLbf: number;
  drawLbf: number;
  braceLbf: number;
  checkLbf: number;
  /** New with every weighing: all but the check of the scale, which stays for the whole job. */
  sessionLbf: number;
  /** Everything. */
  totalLbf: number;
}

function refuseNegative(values: Record<string, number>, sentence: string): void {
  for (const [field, value] of Object.entries(values)) {
    if (!(value >= 0 && Number.isFinite(value))) refuseField(field, sentence);
  }
}

/**
 * Standard deviation of a weighing, part by part: root sum of squares. A scale that shows steps of
 * r is off by r / sqrt 12 (even spread over one step; JCGM 100:2008, "Guide to the expression of
 * uncertainty in measurement", 4.3.7).
 * @throws ShopError BAD_INPUT for a negative part or no pull
 */
export function weighingSd(sources: WeighingSources): WeighingSpread {
  const { drawSdIn = 1 / 16, braceSdIn = 1 / 16, braceLbfPerIn = 0, pulls } = sources;
  const { resolutionLbf, checkSdLbf, perPullSdLbf, slopeLbfPerIn } = sources;
  if (!(Number.isInteger(pulls) && pulls >= 1)) refuseField('pulls', 'Keep one pull at least.');
  refuseNegative(
    { resolutionLbf, checkSdLbf, perPullSdLbf, drawSdIn, braceSdIn, slopeLbfPerIn },
    'No part of the spread of a weighing can be negative.',
  );
  if (!Number.isFinite(braceLbfPerIn)) {
    refuseField('braceLbfPerIn', 'Say what an inch of brace height does to the weight.');
  }
  const parts = {
    resolutionLbf: resolutionLbf / Math.sqrt(12),
    repeatLbf: perPullSdLbf / Math.sqrt(pulls),
    drawLbf: drawSdIn * slopeLbfPerIn,
    braceLbf: braceSdIn * Math.abs(braceLbfPerIn),
  };
  const sessionLbf = Math.hypot(...Object.values(parts));
  return {
    ...parts,
    checkLbf: checkSdLbf,
    sessionLbf,
    totalLbf: Math.hypot(sessionLbf, checkSdLbf),
  };
}

/** How far a width or a thickness may be off that a removal is reckoned from, by one place. */
export interface RemovalPlace {
  /** Part of the weight that an inch of total width at this place carries, 1/in. */
  dropPerIn: number;
  /** One standard deviation of the width taken off there as far as it is known, inches. */
  sdIn: number;
}

/** Each width is read twice, before and after: the root of two readings. */
export function remeasuredSdIn(calliperSdIn: number): number {
  return Math.SQRT2 * calliperSdIn;
}

/**
 * What cutting and measuring leave unknown of a removal, in pounds: root sum of squares over the
 * places, independent of each other.
 * @throws ShopError BAD_INPUT for a negative spread
 */
export function removalSdLbf(weightLbf: number, places: readonly RemovalPlace[]): number {
  refuseNegative({ weightLbf }, 'The weight cannot be negative.');
  for (const { sdIn } of places) {
    refuseNegative({ sdIn }, 'The spread of a cut cannot be negative.');
  }
  return weightLbf * Math.hypot(...places.map(({ dropPerIn, sdIn }) => dropPerIn * sdIn));
}

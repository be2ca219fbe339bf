/**
 * AMO draw is measured from the throat of the grip (the pivot point) to the nock, plus 1 3/4 in.
 * Source: AMO Standards, Field Publication FP-3, 2000: 26 1/4 in from the pivot point is a draw of
 * 28 in.
 */
export const amoAllowanceIn = 1.75;

/** Throat to nock, inches, at an AMO draw length. */
export function nockAtAmo(drawIn: number): number {
  return drawIn - amoAllowanceIn;
}

/** AMO draw length, inches, with the nock that far from the throat. */
export function amoAtNock(nockIn: number): number {
  return nockIn + amoAllowanceIn;
}

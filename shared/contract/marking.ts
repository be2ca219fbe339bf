import { drawReference } from '../bows.ts';
import { between } from '../fields.ts';

/** What is written on a bow or a pair of limbs. A weight alone says little: its draw belongs to it. */
export const marking = {
  markedWeightLbf: between(1, 250, 'A marked weight is between 1 and 250 pounds.').nullable(),
  markedDrawIn: between(5, 40, 'A marked draw is between 5 and 40 inches.').nullable(),
  markedDrawReference: drawReference,
};

import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { facingText, glassText } from '../../../shared/face-text.ts';
import { limbSetText } from '../../../shared/limb-set-text.ts';
import { decimal } from '../../../shared/measure.ts';
import { weightText } from '../../../shared/weight-text.ts';

/** Left out where nobody knows: a blank fact teaches nothing. */
function glassFacts({ faces }: NonNullable<OrderDetail['bow']>): [string, string][] {
  const rows: [string, string][] = [
    ['Glass, back', glassText(faces.back)],
    ['Glass, belly', glassText(faces.belly)],
  ];
  return rows.filter(([, value]) => value !== '');
}

/** The bow as it was built and marked, as name and value. */
export function bowFacts(bow: NonNullable<OrderDetail['bow']>): [string, string][] {
  const marked =
    bow.markedWeightLbf === null
      ? 'not marked'
      : bow.markedDrawIn === null
        ? `${decimal(bow.markedWeightLbf)}#, draw not marked`
        : weightText(bow.markedWeightLbf, bow.markedDrawIn, bow.markedDrawReference);
  return [
    ['Marked', marked],
    ['Serial', bow.serial || 'none'],
    ['Built', `${bow.construction}, facing ${facingText(bow.faces)}, ${bow.hand} hand`],
    ...glassFacts(bow),
    [
      'Maximum safe draw',
      bow.maxSafeDrawIn === null
        ? 'not known: never past the marked draw'
        : `${decimal(bow.maxSafeDrawIn, 2)}"`,
    ],
  ];
}

/** The limbs an order is about, and on what they were weighed where their riser stayed at home. */
export function limbFacts({ limbSet, cameAs, weighedOnRisers }: OrderDetail): [string, string][] {
  const rows: [string, string][] = [];
  if (limbSet !== null) rows.push(['Limbs', limbSetText(limbSet)]);
  if (cameAs === 'limbs-only') {
    const risers = weighedOnRisers.join('; ');
    rows.push([
      'Came as',
      `limbs only; ${risers === '' ? 'not weighed yet' : `weighed on ${risers}`}`,
    ]);
  }
  return rows;
}

import type { CarePolicy } from '../../../shared/contract/care.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { ShopError } from '../../../shared/errors.ts';
import { decimal, inchFraction, weightAtDraw } from '../../../shared/measure.ts';
import { serviceLabels } from '../../../shared/stages.ts';
import type { CareCardData } from '../../papers/care-card.ts';
import { careWeights, farthestDraw, leavingReading } from './care-weights.ts';
import { type FinishFacts, finishFacts } from './finish-facts.ts';
import { isUnsafe, shopHead } from './shop-head.ts';

function refuseUnsafe({ card }: OrderDetail): void {
  if (!isUnsafe(card)) return;
  const sentence =
    'A care card tells how to string and shoot this bow, and a stop finding stands or it is broken. Print the shipping tag: it says so.';
  throw new ShopError('UNPRINTABLE', sentence, { findings: sentence });
}

const withWords = ({ on, words }: { on: string; words: string }) =>
  words === '' ? on : `${on} (${words})`;

function finishRows(facts: FinishFacts): [string, string][] {
  if (facts.finish === null && facts.lastCoatOn === null) return [];
  const coat =
    facts.lastCoatOn === null ? '' : `, counted from the last coat on ${facts.lastCoatOn}`;
  return [
    ['Finish', facts.finish ?? 'not recorded'],
    [
      'Safe to wrap or case',
      facts.safeToWrap === null
        ? 'not yet recorded: do not wrap it or lay it in a case until we say so'
        : `from ${withWords(facts.safeToWrap)}`,
    ],
    [
      'Fully cured',
      facts.cured === null
        ? `when the data sheet of the finish says so${coat}; until then keep it dry, cool and unpressed`
        : `from ${withWords(facts.cured)}`,
    ],
  ];
}

function braceText(order: OrderDetail): string {
  const low = order.bow?.braceLowIn ?? null;
  const high = order.bow?.braceHighIn ?? null;
  if (low !== null && high !== null) return `${inchFraction(low)}" to ${inchFraction(high)}"`;
  const braced = leavingReading(order)?.braceIn ?? order.arrival?.braceIn ?? null;
  if (braced === null) return "not known here: keep to the bow maker's figure";
  const limit =
    low !== null
      ? `; not under ${inchFraction(low)}"`
      : high !== null
        ? `; not over ${inchFraction(high)}"`
        : '';
  return `as it was braced here: ${inchFraction(braced)}"${limit}`;
}

const stringTexts = {
  yes: 'low-stretch strings may be used: the tips are rated for them',
  no: 'polyester string of the stretching kind; low-stretch strings only where the tips are rated for them: yours are not',
  unknown:
    'polyester string of the stretching kind; low-stretch strings only where the tips are rated for them: yours are not known to be',
};

function stringRows(order: OrderDetail): [string, string][] {
  const farthest = farthestDraw(order);
  return [
    ['Brace height', braceText(order)],
    ['String', stringTexts[order.bow?.lowStretchTips ?? 'unknown']],
    [
      'Never draw past',
      farthest === null
        ? "the draw the bow's maker marked or stated: its maximum is not known here"
        : `${decimal(farthest, 4)}" AMO`,
    ],
  ];
}

/** Whole grains, up: an arrow a grain under the rule is under it. */
export function leastArrowGrains(forceLbf: number, grainsPerLb: number): number {
  return Math.ceil(Number((forceLbf * grainsPerLb).toFixed(6)));
}

function arrowLines(order: OrderDetail, { arrowGrainsPerLb }: CarePolicy): string[] {
  const { forArrows } = careWeights(order);
  const rule = `${decimal(arrowGrainsPerLb, 2)} grains a pound`;
  const first =
    forArrows === null
      ? `Arrows of at least ${rule} of draw weight at your own draw.`
      : `Arrows of at least ${leastArrowGrains(forArrows.forceLbf, arrowGrainsPerLb)} grains in all: ${rule} at ${weightAtDraw(forArrows.forceLbf, forArrows.drawIn)}.`;
  const lines = [
    `${first} That is this shop's rule; where the maker of the bow or of the arrows asks for more, that counts. If you draw farther, the arrows must be heavier.`,
  ];
  if (order.services.includes('reduce-weight')) {
    lines.push(
      'The bow draws less than before: shafts that suited it may now be too stiff in spine. Try them at a short distance, or ask.',
    );
  }
  return lines;
}

const useLines = [
  'String it with a stringer, and look along both limbs that the string runs down the middle before you draw.',
  'Unstring it after shooting.',
  'Never let go of the drawn string without an arrow on it, and never draw it for another person to a longer draw.',
  'Keep it out of a hot car, off a heater and out of rain and damp. Hang it, or lay it flat, unstrung.',
  'Wear eye protection the first times, and look over limbs, tips and string before every use.',
  'A crack, a line that lifts, a click or a change of tiller: unstring it, do not draw it again, and call us.',
];

/** @throws ShopError UNPRINTABLE for a bow that may not be strung */
export function careCardData(
  order: OrderDetail,
  shop: ShopDetails,
  policy: CarePolicy,
  choice: Pick<CareCardData, 'format' | 'copy' | 'printedAt'>,
): CareCardData {
  refuseUnsafe(order);
  const { card } = order;
  const watched = order.findings.filter(
    ({ grade, resolvedAt }) => grade === 'watch' && resolvedAt === null,
  );
  return {
    ...choice,
    shop: shopHead(shop),
    number: card.number,
    customerName: order.customer?.name ?? '',
    bowLine: order.bow === null ? 'Bow not identified' : card.bowLine,
    work: order.services.map((service) => serviceLabels[service]).join(', '),
    weights: careWeights(order).lines.map(({ label, text }) => [label, text]),
    string: stringRows(order),
    arrows: arrowLines(order, policy),
    finish: finishRows(finishFacts(order)),
    use: useLines,
    watch: watched.map(({ place, note }) => (note === '' ? place : `${place}: ${note}`)),
    terms: policy.careTerms.trim(),
  };
}

import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { decimal } from '../../../shared/measure.ts';
import { stageLabels } from '../../../shared/stages.ts';
import type { Seen, SeenStep } from './seen.ts';

type Order = Pick<
  OrderDetail,
  'card' | 'findings' | 'plans' | 'undershoot' | 'targetWeightLbf' | 'targetDrawIn'
>;

const standingPlan = ({ plans }: Order) =>
  plans.find(({ struckReason }) => struckReason === null) ?? null;

/** What bars the hands or ends the cutting, as the order's own records tell it; null where nothing does. */
export function barOf(order: Order): SeenStep | null {
  const office = `/orders/${order.card.id}`;
  const open = order.findings.filter(
    ({ grade, resolvedAt }) => grade === 'stop' && resolvedAt === null,
  );
  if (open.length > 0) {
    return {
      kind: 'stop',
      tone: 'stop',
      words: 'DO NOT STRING OR DRAW',
      why: [
        ...open.map(({ place, note }) => (note === '' ? `${place}.` : `${place}: ${note}`)),
        'Nothing is strung, weighed or cut until it is repaired and looked at again.',
      ],
      office,
    };
  }
  const { now } = order.undershoot;
  if (now !== null) {
    return {
      kind: 'stop',
      tone: 'attention',
      words: 'STOP - THE CUSTOMER DECIDES',
      why: [
        `${decimal(now.measuredLbf)} lb was weighed at ${decimal(now.drawIn, 2)} in, under the target of ${decimal(now.targetLbf)} lb.`,
        'Nothing more comes off. The office makes an offer and asks.',
      ],
      office,
    };
  }
  return null;
}

function sentenceOf(order: Order): string {
  const plan = standingPlan(order);
  if (plan === null) {
    return 'No weight plan is accepted yet. Weigh the bow; the plan is made at the desk.';
  }
  if (!plan.fits.ok) return `The plan does not fit any more. ${plan.fits.why.join(' ')}`;
  return `${stageLabels[order.card.stage]}: weigh the bow.`;
}

/** The bench view of an order from its own records, before anything is advised. */
export function seenOfOrder(order: Order): Seen {
  const { card } = order;
  const plan = standingPlan(order);
  const { nowLbf, drawIn } = card.weights;
  const sentence = sentenceOf(order);
  const step = barOf(order) ?? { kind: 'weigh' };
  return {
    orderId: card.id,
    number: card.number,
    customer: card.customerName,
    bow: card.bowLine,
    advice: JSON.stringify([step, sentence, nowLbf]),
    step,
    sentence,
    now: nowLbf === null ? null : { lbf: nowLbf, sdLbf: null, isWeighed: true },
    stopAtLbf: plan?.fits.ok === true ? plan.stopAtLbf : null,
    targetLbf: order.targetWeightLbf,
    drawIn: order.targetDrawIn ?? drawIn,
    tiller: null,
    cautions: [],
  };
}

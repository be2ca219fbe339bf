import type { BenchForecast, BenchStep, BenchView } from '../../../shared/contract/bench-work.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { Seen, SeenStep, Way } from './seen.ts';

type Card = Pick<OrderDetail['card'], 'id' | 'number' | 'customerName' | 'bowLine'>;

/** Where the rest is done: the order page, or the desk view of its plan. */
const waysOf = (orderId: string): { order: Way; desk: Way } => ({
  order: { label: 'Open the order', href: `/orders/${orderId}` },
  desk: { label: 'Plan at the desk', href: `/weight-bench/order/${orderId}` },
});

/** `Eight in ten such bites end between 47.1 and 47.9 lb.` */
const bandText = ({ bandLbf: [low, high] }: BenchForecast): string =>
  `Eight in ten such bites end between ${low.toFixed(1)} and ${high.toFixed(1)} lb.`;

const attention = (words: string, why: string[], way: Way): SeenStep => ({
  kind: 'stop',
  tone: 'attention',
  words,
  why,
  way,
});

/** What bars the hands or ends the cutting fills the screen; null for every other step. */
function stopOf(step: BenchStep, { order, desk }: ReturnType<typeof waysOf>): SeenStep | null {
  switch (step.kind) {
    case 'stop-finding':
      return {
        kind: 'stop',
        tone: 'stop',
        words: 'DO NOT STRING OR DRAW',
        why: [
          ...step.why,
          'Nothing is strung, weighed or cut until it is repaired and looked at again.',
        ],
        way: order,
      };
    case 'plan-does-not-fit':
      return attention('STOP - PLAN AGAIN', step.why, desk);
    case 'sand-only':
      return step.here ? { kind: 'sand' } : attention('STOP - SAND ONLY', step.why, order);
    case 'at-target':
      return attention('AT TARGET - STOP', [], order);
    case 'undershot':
      return attention('STOP - THE CUSTOMER DECIDES', step.why, order);
    case 'limit':
      return attention('STOP - NOTHING MORE OFF', step.why, order);
    default:
      return null;
  }
}

function handsOf(step: BenchStep, isWeighed: boolean, ways: ReturnType<typeof waysOf>): SeenStep {
  switch (step.kind) {
    case 'questions': {
      const { readingId, rowVersion, questions } = step;
      return { kind: 'questions', readingId, rowVersion, questions };
    }
    case 'remeasure': {
      const { removalId, rowVersion, places, faces } = step;
      return { kind: 'remeasure', removalId, rowVersion, places, faces };
    }
    case 'bite': {
      const { upper, lower, isLightPass } = step;
      const band = bandText(step.forecast);
      return { kind: 'bite', upper, lower, step: step.step, isLightPass, band };
    }
    case 'glass-check':
      return { kind: 'glass' };
    case 'read-tiller':
      return { kind: 'tiller' };
    case 'weigh':
    case 'weigh-again':
      return { kind: 'weigh' };
    default:
      return {
        kind: 'idle',
        isWeighed,
        way: step.kind === 'no-plan' ? ways.desk : ways.order,
      };
  }
}

/** What the scale said beside what was forecast, once it is saved: nobody is led before it. */
function toldOf({ now, lastReading }: BenchView): string | null {
  const expectedLbf = lastReading?.expectedLbf ?? null;
  if (lastReading === null || expectedLbf === null || now?.weighed !== true) return null;
  return `Weighed ${lastReading.lbf.toFixed(1)} lb, expected ${expectedLbf.toFixed(1)} lb.`;
}

/** The bench view of an order in the terms of its screen. */
export function seenOfBench(view: BenchView, card: Card): Seen {
  const ways = waysOf(card.id);
  const { now, tiller } = view;
  return {
    orderId: card.id,
    number: card.number,
    customer: card.customerName,
    bow: card.bowLine,
    advice: view.advice,
    step: stopOf(view.step, ways) ?? handsOf(view.step, now !== null, ways),
    sentence: view.sentence,
    now: now === null ? null : { lbf: now.lbf, sdLbf: now.sdLbf, isWeighed: now.weighed },
    told: toldOf(view),
    stopAtLbf: view.stopAtLbf,
    targetLbf: view.targetLbf,
    drawIn: view.drawIn,
    tiller,
    missing: view.step.kind === 'bite' ? view.missing : [],
    cautions: view.cautions,
  };
}

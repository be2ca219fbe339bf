import type { UnderTarget } from '../../../shared/contract/order-card.ts';
import type { TodayItem } from '../../../shared/contract/today.ts';
import { weightAtDraw } from '../../../shared/measure.ts';
import { dayOf } from '../day.ts';
import { about, inWork, type TodayOrder } from './item.ts';

/**
 * A bow under its target while weight is still to come off.
 * @param isOffered an offer that fits is written down: then the asking is what waits.
 */
export function underTarget(
  under: UnderTarget | null,
  isOffered: boolean,
  order: TodayOrder,
): TodayItem[] {
  if (under === null || isOffered || !inWork(order)) return [];
  const now = weightAtDraw(under.nowLbf, under.drawIn);
  const target = weightAtDraw(under.targetLbf, under.drawIn);
  const next = under.isSanded
    ? 'Write down what is offered, and ask the customer.'
    : 'Sand no more than it needs, weigh it after sanding, and let the customer decide.';
  return [
    about(order, {
      kind: 'undershoot',
      group: 'today',
      what: `Under its target: ${now}, the target is ${target}. Take nothing more off. ${next}`,
      since: dayOf(under.since),
      opens: under.isSanded ? 'undershoot' : 'weighings:after-sanding',
    }),
  ];
}

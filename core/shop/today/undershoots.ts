import type { TodayItem } from '../../../shared/contract/today.ts';
import { weightAtDraw } from '../../../shared/measure.ts';
import type { UndershootRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { about, inWork, type TodayOrder } from './item.ts';

/**
 * A weight below the target whose offer is written down and which the customer has not been asked
 * about. Once asked, the unanswered consent is what waits.
 * @param askedAt instant of the last asking about such a weight, which may have been an older offer.
 */
export function unaskedUndershoot(
  offer: UndershootRow,
  askedAt: string | null,
  order: TodayOrder,
): TodayItem[] {
  if (offer.struck_reason !== null || !inWork(order)) return [];
  if (askedAt !== null && askedAt >= offer.proposed_at) return [];
  const measured = weightAtDraw(offer.measured_lbf, offer.draw_in);
  const target = weightAtDraw(offer.target_lbf, offer.draw_in);
  return [
    about(order, {
      kind: 'undershoot',
      group: 'today',
      what: `Came out at ${measured}, the target was ${target}. The offer is written: ask the customer.`,
      since: dayOf(offer.proposed_at),
      room: 'office',
      opens: 'undershoot',
    }),
  ];
}

import type { TodayItem } from '../../../shared/contract/today.ts';
import { dayOf } from '../day.ts';
import type { OpenStop } from '../findings/open-stops.ts';
import { about, inWork, type TodayOrder } from './item.ts';

/**
 * Open stop findings about which nobody has decided: not on hold, and not going home. Every one is
 * due until it is: repaired and looked at again, or sent home.
 */
export function undecidedStops(stops: readonly OpenStop[], order: TodayOrder): TodayItem[] {
  const [first] = stops.toSorted((a, b) => (a.foundAt < b.foundAt ? -1 : 1));
  if (first === undefined || !inWork(order) || order.held || order.goingHome) return [];
  const more = stops.length === 1 ? '' : ` and ${stops.length - 1} more`;
  return [
    about(order, {
      kind: 'stop-finding',
      group: 'today',
      what: `Do not string or draw it. Stop finding, ${first.place}${more}: decide, repair it or send it home.`,
      since: dayOf(first.foundAt),
      opens: 'findings',
    }),
  ];
}

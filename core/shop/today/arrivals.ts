import type { TodayItem } from '../../../shared/contract/today.ts';
import type { ArrivalRow } from '../../storage/tables.ts';
import { addDays } from '../day.ts';
import { daysBetween, daysText, onceDue } from './calendar.ts';
import { about, inWork, type TodayOrder } from './item.ts';

/** Days in the mail after which somebody asks where the bow is; common practice. */
export const mailDays = 14;
/** Days after opening the box within which the arrival check is done; common practice. */
export const checkDays = 2;

/** A bow that was announced and has not come. */
export function notArrived(order: TodayOrder, day: string): TodayItem[] {
  if (order.stage !== 'in-mail' || order.held) return [];
  const dueOn = addDays(order.stageSince, mailDays);
  const group = onceDue(dueOn, day);
  if (group === null) return [];
  const what = `In the mail for ${daysText(daysBetween(order.stageSince, day))} and not here: ask the customer for the tracking.`;
  return [
    about(order, { kind: 'in-mail', group, what, dueOn, since: order.stageSince, room: 'office' }),
  ];
}

/** A box that was opened, with the arrival check left unfinished. */
export function checkUnfinished(arrival: ArrivalRow, order: TodayOrder, day: string): TodayItem[] {
  if (arrival.completed_at !== null || !inWork(order) || order.held) return [];
  const dueOn = addDays(arrival.opened_on, checkDays);
  const group = onceDue(dueOn, day);
  if (group === null) return [];
  const what = 'The box is open and the arrival check is not complete.';
  return [
    about(order, {
      kind: 'arrival-check',
      group,
      what,
      dueOn,
      since: arrival.opened_on,
      opens: 'arrival',
    }),
  ];
}

import type { TodayItem } from '../../../shared/contract/today.ts';
import { stageLabels } from '../../../shared/stages.ts';
import { dueGroup } from './calendar.ts';
import { about, inWork, type TodayOrder } from './item.ts';

/** What was promised to a customer for today, for the coming week, or for a day that has passed. */
export function promised(order: TodayOrder, day: string): TodayItem[] {
  if (order.promisedOn === null || !inWork(order)) return [];
  const group = dueGroup(order.promisedOn, day);
  if (group === null) return [];
  const where = `it stands in "${stageLabels[order.stage]}"`;
  const held = order.held ? ' and is on hold: tell the customer, or agree on another day' : '';
  const what = `Promised; ${where}${held}.`;
  return [about(order, { kind: 'promised', group, what, dueOn: order.promisedOn })];
}

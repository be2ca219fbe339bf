import type { TodayItem } from '../../../shared/contract/today.ts';
import { roomOf } from '../../../shared/stages.ts';
import type { ScaleCheckRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { oneLine } from '../orders/history.ts';
import { scaleTrouble } from '../scales/scale-check.ts';
import { inWork, type TodayOrder } from './item.ts';

export interface ScaleInUse {
  name: string;
  lastCheck: ScaleCheckRow | null;
}

/** Scales in use that nobody may weigh with now, while some bow is at the bench. */
export function uncheckedScales(
  scales: readonly ScaleInUse[],
  orders: readonly TodayOrder[],
  now: string,
): TodayItem[] {
  const atBench = orders.some(
    (order) => inWork(order) && !order.held && roomOf[order.stage] === 'bench',
  );
  if (!atBench) return [];
  return scales.flatMap(({ name, lastCheck }) => {
    const trouble = scaleTrouble(lastCheck, now);
    if (trouble === null) return [];
    return [
      {
        kind: 'scale' as const,
        group: 'today' as const,
        orderId: null,
        number: null,
        who: '',
        what: oneLine(`Scale "${name}": ${trouble}`, 600),
        dueOn: null,
        since: lastCheck === null ? null : dayOf(lastCheck.checked_at),
        forRoom: 'bench' as const,
        forPersonId: null,
        forPersonName: null,
        taskId: null,
        taskRowVersion: null,
        consumableId: null,
        opens: null,
      },
    ];
  });
}

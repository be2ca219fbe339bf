import type { OrderDetail } from '../../../../shared/contract/orders.ts';
import type { Stage } from '../../../../shared/stages.ts';

export interface TimelineStage {
  stage: Stage;
  state: 'passed' | 'current' | 'ahead';
  /** Instant it was last entered on the way to where the order stands now; null when it was not. */
  enteredAt: string | null;
}

/**
 * The route with the day each stage was entered. A stage that lies ahead again after a step back
 * shows no day: the order has to enter it anew.
 */
export function timelineOf(order: Pick<OrderDetail, 'card' | 'history'>): TimelineStage[] {
  const { route, stage: now, stageSince } = order.card;
  const at = route.indexOf(now);
  return route.map((stage, index) => {
    const entered = order.history.find((item) => item.toStage === stage)?.at ?? null;
    if (index > at) return { stage, state: 'ahead', enteredAt: null };
    return index === at
      ? { stage, state: 'current', enteredAt: stageSince }
      : { stage, state: 'passed', enteredAt: entered };
  });
}

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
  const enteredAt = (stage: Stage) =>
    order.history.find((item) => item.toStage === stage)?.at ?? null;
  // A cancelled request stands beside its route, after what it went through.
  if (at === -1) {
    const passed = route.filter((stage) => enteredAt(stage) !== null);
    return [
      ...passed.map((stage) => ({ stage, state: 'passed' as const, enteredAt: enteredAt(stage) })),
      { stage: now, state: 'current', enteredAt: stageSince },
    ];
  }
  return route.map((stage, index) => {
    const entered = enteredAt(stage);
    if (index > at) return { stage, state: 'ahead', enteredAt: null };
    return index === at
      ? { stage, state: 'current', enteredAt: stageSince }
      : { stage, state: 'passed', enteredAt: entered };
  });
}

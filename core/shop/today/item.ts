import type { TodayGroup, TodayItem, TodayKind } from '../../../shared/contract/today.ts';
import { closedStages, type Room, roomOf, type Stage } from '../../../shared/stages.ts';
import { oneLine } from '../orders/history.ts';

/** What the rules know of an order. */
export interface TodayOrder {
  id: string;
  number: string;
  who: string;
  stage: Stage;
  /** Calendar day since when it stands there. */
  stageSince: string;
  promisedOn: string | null;
  /** It waits for somebody, and its hold says for whom. */
  held: boolean;
  goingHome: boolean;
}

/** Nothing is asked of an order whose bow has left, or never came. */
export const inWork = (order: TodayOrder) => !closedStages.includes(order.stage);

interface Said {
  kind: TodayKind;
  group: TodayGroup;
  what: string;
  dueOn?: string | null;
  since?: string | null;
  /** Where it is not the room that the order's stage belongs to. */
  room?: Room;
  opens?: string;
}

/** An item about one order. */
export function about(order: TodayOrder, said: Said): TodayItem {
  return {
    kind: said.kind,
    group: said.group,
    orderId: order.id,
    number: order.number,
    who: order.who,
    what: oneLine(said.what, 600),
    dueOn: said.dueOn ?? null,
    since: said.since ?? null,
    forRoom: said.room ?? roomOf[order.stage],
    forPersonId: null,
    forPersonName: null,
    taskId: null,
    taskRowVersion: null,
    consumableId: null,
    opens: said.opens ?? null,
  };
}

import type { TodayItem } from '../../../shared/contract/today.ts';
import { unpackingPath } from '../orders/open-forms.ts';

/** Where the item is put right; null for a task that is of no order. */
export function hrefOf({ kind, orderId, consumableId, opens }: TodayItem): string | null {
  if (kind === 'scale') return '/settings?tab=scales';
  if (consumableId !== null) return `/stores/${consumableId}`;
  if (orderId === null) return null;
  if (opens === 'arrival') return unpackingPath(orderId);
  return opens === null ? `/orders/${orderId}` : `/orders/${orderId}?open=${opens}`;
}

/** One item as React tells it from the others; the list is read anew with every change. */
export function keyOf({ kind, orderId, consumableId, taskId, what, dueOn }: TodayItem): string {
  return `${kind} ${orderId ?? consumableId} ${taskId ?? what} ${dueOn}`;
}

import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';

type Subject = Pick<OrderRow, 'id' | 'bow_id'>;

export interface OpenStop {
  id: string;
  place: string;
  foundAt: string;
  orderId: string;
  /** The bow it was found on, and the bow its order has now: they differ where a box was opened first. */
  bowIds: readonly (string | null)[];
}

/** Every stop finding that nobody has resolved yet. */
export async function openStops(db: OpenShop['read']): Promise<OpenStop[]> {
  const rows = await db
    .selectFrom('finding')
    .innerJoin('shop_order', 'shop_order.id', 'finding.order_id')
    .select(['finding.id', 'finding.place', 'finding.found_at', 'finding.order_id'])
    .select(['finding.bow_id as found_on', 'shop_order.bow_id as order_bow'])
    .where('finding.grade', '=', 'stop')
    .where('finding.resolved_at', 'is', null)
    .orderBy('finding.id')
    .execute();
  return rows.map((row) => ({
    id: row.id,
    place: row.place,
    foundAt: row.found_at,
    orderId: row.order_id,
    bowIds: [row.found_on, row.order_bow],
  }));
}

/** A stop finding stays with its bow: it stops every order of it, not only the one it was noted on. */
export function stopsOf(stops: readonly OpenStop[], order: Subject): OpenStop[] {
  return stops.filter(
    (stop) =>
      stop.orderId === order.id || (order.bow_id !== null && stop.bowIds.includes(order.bow_id)),
  );
}

import type { Paper } from '../../../shared/contract/papers.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';

/** Instant of the last thing that happened to the order and was not itself a paper; empty where there is none. */
async function lastChangeAt(shop: OpenShop, orderId: string): Promise<string> {
  const row = await shop.read
    .selectFrom('order_history')
    .select((eb) => eb.fn.max('at').as('at'))
    .where('order_id', '=', orderId)
    .where('kind', 'not in', ['paper', 'file', 'belonging-back', 'task'])
    .executeTakeFirst();
  return row?.at ?? '';
}

/** Instant of the last stop finding that keeps the bow of this order, noted on any of its orders. */
async function lastStopAt(shop: OpenShop, order: OrderRow): Promise<string> {
  const stops = stopsOf(await openStops(shop.read), order);
  return (
    stops
      .map((stop) => stop.foundAt)
      .sort()
      .at(-1) ?? ''
  );
}

/** Papers handed out for an order, newest first; marked where anything about it has changed since. */
export async function papersOf(shop: OpenShop, order: OrderRow): Promise<Paper[]> {
  const changedAt =
    [await lastChangeAt(shop, order.id), await lastStopAt(shop, order)].sort().at(-1) ?? '';
  const rows = await shop.read
    .selectFrom('paper')
    .innerJoin('person', 'person.id', 'paper.person_id')
    .selectAll('paper')
    .select('person.name as person_name')
    .where('order_id', '=', order.id)
    .orderBy('made_at', 'desc')
    .orderBy('paper.id', 'desc')
    .limit(1000)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    kind: row.kind,
    format: row.format as Paper['format'],
    copy: row.copy as Paper['copy'],
    action: row.action,
    fileName: row.file_name,
    pages: row.pages,
    madeAt: row.made_at,
    personName: row.person_name,
    outdated: row.order_row_version !== order.row_version || changedAt > row.made_at,
  }));
}

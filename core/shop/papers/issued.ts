import type { Paper } from '../../../shared/contract/papers.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';

/** Instant of the last command about the order that was not itself a paper; empty where there is none. */
async function lastChangeAt(shop: OpenShop, orderId: string): Promise<string> {
  const row = await shop.read
    .selectFrom('command')
    .select((eb) => eb.fn.max('at').as('at'))
    .where('order_id', '=', orderId)
    .where('name', '!=', 'papers.issue')
    .executeTakeFirst();
  return row?.at ?? '';
}

/** Papers handed out for an order, newest first; marked where anything about it has changed since. */
export async function papersOf(shop: OpenShop, order: OrderRow): Promise<Paper[]> {
  const changedAt = await lastChangeAt(shop, order.id);
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

import type { HistoryItem } from '../../../shared/contract/orders.ts';
import { closedStages, type Stage } from '../../../shared/stages.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';

export interface HistoryNote {
  kind: string;
  summary: string;
  from?: Stage;
  to?: Stage;
  reason?: string | null;
}

/** History is told in single lines; notes and answers may be typed in several. */
export function oneLine(text: string, max: number): string {
  return text
    .replaceAll(/\p{Cc}+/gu, ' ')
    .slice(0, max)
    .trim();
}

/** Adds a line to what happened to an order. Lines are never changed. */
export async function note(
  trx: CommandTransaction,
  ctx: ShopContext,
  orderId: string,
  line: HistoryNote,
): Promise<void> {
  await trx.insert('order_history', {
    id: ctx.newId(),
    order_id: orderId,
    at: trx.at,
    person_id: ctx.actor.personId,
    kind: line.kind,
    summary: oneLine(line.summary, 1000),
    from_stage: line.from ?? null,
    to_stage: line.to ?? null,
    reason: typeof line.reason === 'string' ? oneLine(line.reason, 400) : null,
  });
}

/** Tells every order in work of this customer or bow that what its papers print has changed. */
export async function noteOnOpenOrders(
  trx: CommandTransaction,
  ctx: ShopContext,
  of: { customerId: string } | { bowId: string },
  line: HistoryNote,
): Promise<void> {
  const orders = await trx.db
    .selectFrom('shop_order')
    .select('id')
    .where('stage', 'not in', closedStages)
    .where((eb) =>
      'bowId' in of ? eb('bow_id', '=', of.bowId) : eb('customer_id', '=', of.customerId),
    )
    .execute();
  for (const order of orders) await note(trx, ctx, order.id, line);
}

/** What happened to an order, newest first. */
export async function historyOf(shop: OpenShop, orderId: string): Promise<HistoryItem[]> {
  const rows = await shop.read
    .selectFrom('order_history')
    .innerJoin('person', 'person.id', 'order_history.person_id')
    .selectAll('order_history')
    .select('person.name as person_name')
    .where('order_id', '=', orderId)
    .orderBy('order_history.at', 'desc')
    .orderBy('order_history.id', 'desc')
    .limit(5000)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    at: row.at,
    personName: row.person_name,
    kind: row.kind,
    summary: row.summary,
    fromStage: row.from_stage,
    toStage: row.to_stage,
    reason: row.reason,
  }));
}

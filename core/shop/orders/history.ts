import type { HistoryItem } from '../../../shared/contract/orders.ts';
import type { Stage } from '../../../shared/stages.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';

export interface HistoryNote {
  kind: string;
  summary: string;
  from?: Stage;
  to?: Stage;
  reason?: string | null;
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
    summary: line.summary,
    from_stage: line.from ?? null,
    to_stage: line.to ?? null,
    reason: line.reason ?? null,
  });
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

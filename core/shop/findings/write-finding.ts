import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { FindingRow, OrderRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';

/** Writes a finding on an order inside a running command, with its line of history. */
export async function writeFinding(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  fields: Pick<FindingRow, 'grade' | 'place' | 'note'>,
): Promise<FindingRow> {
  const row = await trx.insert('finding', {
    id: ctx.newId(),
    order_id: order.id,
    bow_id: order.bow_id,
    grade: fields.grade,
    place: fields.place,
    note: fields.note,
    found_at: trx.at,
    found_by: ctx.actor.personId,
    resolved_at: null,
    resolved_how: null,
  });
  // Whoever is about to move the order on an older view must look again first.
  if (fields.grade === 'stop') await trx.update('shop_order', order.id, null, {});
  await note(trx, ctx, order.id, {
    kind: 'finding',
    summary: `Finding (${fields.grade}): ${fields.place}`,
  });
  return row;
}

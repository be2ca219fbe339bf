import type { CommandTransaction } from '../../storage/commands.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { refuseOddTarget } from './order-row.ts';

/** Draw past which the bow of an order is never drawn, inches AMO; null where nobody knows. */
export async function safeDrawOf(
  trx: CommandTransaction,
  order: Pick<OrderRow, 'bow_id'>,
): Promise<number | null> {
  if (order.bow_id === null) return null;
  const bow = await trx.db
    .selectFrom('bow')
    .select('max_safe_draw_in')
    .where('id', '=', order.bow_id)
    .executeTakeFirstOrThrow();
  return bow.max_safe_draw_in;
}

/** A bow's safe draw may have shrunk while its order was closed, when nobody asked for the target. */
export async function refuseUnsafeTarget(trx: CommandTransaction, order: OrderRow): Promise<void> {
  refuseOddTarget(
    { targetWeightLbf: order.target_weight_lbf, targetDrawIn: order.target_draw_in },
    await safeDrawOf(trx, order),
  );
}

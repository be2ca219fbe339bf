import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { HoldRow } from '../../storage/tables.ts';
import { note } from './history.ts';

/** The hold an order stands on now; it has at most one. */
export async function openHold(
  trx: CommandTransaction,
  orderId: string,
): Promise<HoldRow | undefined> {
  return trx.db
    .selectFrom('hold')
    .selectAll()
    .where('order_id', '=', orderId)
    .where('released_at', 'is', null)
    .executeTakeFirst();
}

export async function releaseHold(
  trx: CommandTransaction,
  ctx: ShopContext,
  hold: HoldRow,
): Promise<void> {
  await trx.update('hold', hold.id, hold.row_version, { released_at: trx.at });
  await note(trx, ctx, hold.order_id, { kind: 'release', summary: 'Hold released' });
}

import { closedStages, type Stage } from '../../../shared/stages.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { note } from '../orders/history.ts';
import type { Done } from './done.ts';
import { stagesOf, whatOf } from './words.ts';

/** Lines of these kinds outdate what was asked before them; taking them back does so again. */
const outdating: readonly string[] = ['bow', 'owner'];

/** Orders whose page or papers say something else now. */
async function ordersTold(trx: CommandTransaction, done: Done): Promise<Set<string>> {
  const told = new Set(done.lines.map((line) => line.order_id));
  if (done.orderId !== null) told.add(done.orderId);
  const rows = done.writes.filter(({ table }) => table === 'bow' || table === 'customer');
  for (const { table, id } of rows) {
    const orders = await trx.db
      .selectFrom('shop_order')
      .select('id')
      .where(table === 'bow' ? 'bow_id' : 'customer_id', '=', id)
      .where('stage', 'not in', closedStages)
      .execute();
    for (const order of orders) told.add(order.id);
  }
  return told;
}

function moveBack(done: Done, orderId: string): { from?: Stage; to?: Stage } {
  const write = done.writes.find(({ table, id }) => table === 'shop_order' && id === orderId);
  const stages = write === undefined ? null : stagesOf(write);
  return stages === null ? {} : { from: stages.to, to: stages.from };
}

/** One line of history on every order that what was undone had told something. */
export async function tellUndone(
  trx: CommandTransaction,
  ctx: ShopContext,
  done: Done,
): Promise<void> {
  const kind = done.lines.find((line) => outdating.includes(line.kind))?.kind ?? 'undo';
  for (const orderId of await ordersTold(trx, done)) {
    await note(trx, ctx, orderId, {
      kind,
      summary: `Undone: ${whatOf(done)}`,
      ...moveBack(done, orderId),
    });
  }
}

import { ShopError } from '../../../shared/errors.ts';
import { closedStages, stageLabels } from '../../../shared/stages.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { gatesAhead } from '../orders/forward.ts';
import { refuseLate, refuseSharedBow } from '../orders/identify-customer.ts';
import { refuseWeighed } from '../orders/limb-set.ts';
import { refuseReopening, refuseWhileHeld } from '../orders/move.ts';
import { readOrder } from '../orders/order-row.ts';
import { refuseExchange } from '../orders/orders.ts';
import { refuseUnsafeTarget } from '../orders/safe-target.ts';
import { changes, type Done, type RowWrite } from './done.ts';
import { refuseUnsafeRow } from './safe-rows.ts';
import { stagesOf } from './words.ts';

const changed = (done: Done, table: RowWrite['table']) =>
  done.writes.filter((write) => write.table === table && write.before !== null);

/** A stop noted before the bow was known stops the bow that was put on the order. */
async function refuseLosingStop(trx: CommandTransaction, order: OrderRow): Promise<void> {
  const stop = await trx.db
    .selectFrom('finding')
    .select('place')
    .where('order_id', '=', order.id)
    .where('bow_id', 'is', null)
    .where('grade', '=', 'stop')
    .where('resolved_at', 'is', null)
    .executeTakeFirst();
  if (stop === undefined) return;
  throw new ShopError('CONFLICT', `A stop finding stands on this bow: ${stop.place}.`, {
    bowId: 'Put the right bow on the order instead.',
  });
}

/** What must hold before any row goes back: asked of the order as it stands now. */
export async function refuseBefore(
  trx: CommandTransaction,
  ctx: ShopContext,
  done: Done,
): Promise<void> {
  for (const write of changed(done, 'shop_order')) {
    const order = await readOrder(trx.db, write.id);
    if (changes(write, 'bow_id')) {
      await refuseExchange(trx, order);
      await refuseLosingStop(trx, order);
    }
    if (changes(write, 'limb_set_id')) {
      await refuseWeighed(trx, order, (write.before?.limb_set_id ?? null) as string | null);
    }
    if (changes(write, 'customer_id')) {
      await refuseLate(trx, order);
      await refuseSharedBow(trx, order);
    }
    // A cancelled request never left the shop: anybody may take it up again.
    if (stagesOf(write) !== null && order.stage !== 'cancelled') refuseReopening(ctx, order);
  }
}

/** A step back is taken back like any move forward: held orders stand, and every gate looks anew. */
async function refuseSkippedGates(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  write: RowWrite,
): Promise<void> {
  const stages = stagesOf(write);
  if (stages === null) return;
  const route = JSON.parse(order.route_json) as string[];
  if (route.indexOf(stages.from) < route.indexOf(stages.to)) return;
  await refuseWhileHeld(trx, order);
  const standing = { ...order, stage: stages.to };
  const verdict = await gatesAhead(trx, ctx, standing, stages.from);
  if (verdict.open) return;
  const [first] = verdict.missing;
  throw new ShopError(
    'CONFLICT',
    `Order ${order.number} cannot go back to "${stageLabels[stages.from]}": ${first?.sentence ?? ''}`,
    Object.fromEntries(verdict.missing.map(({ item, sentence }) => [item, sentence])),
  );
}

async function refuseUnsafeOrder(
  trx: CommandTransaction,
  ctx: ShopContext,
  write: RowWrite,
): Promise<void> {
  const order = await readOrder(trx.db, write.id);
  const reopens = changes(write, 'stage') && !closedStages.includes(order.stage);
  if (reopens || changes(write, 'target_draw_in', 'target_weight_lbf', 'bow_id')) {
    await refuseUnsafeTarget(trx, order);
  }
  await refuseSkippedGates(trx, ctx, order, write);
}

/** What must hold once every row is back: else the whole undo is given up. */
export async function refuseAfter(
  trx: CommandTransaction,
  ctx: ShopContext,
  done: Done,
): Promise<void> {
  for (const write of done.writes) await refuseUnsafeRow(trx, write);
  for (const write of changed(done, 'shop_order')) await refuseUnsafeOrder(trx, ctx, write);
}

import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { HoldRow } from '../../storage/tables.ts';
import { changedOf } from '../record.ts';
import { note } from './history.ts';
import { readOrder } from './order-row.ts';

async function openHold(trx: CommandTransaction, orderId: string): Promise<HoldRow | undefined> {
  return trx.db
    .selectFrom('hold')
    .selectAll()
    .where('order_id', '=', orderId)
    .where('released_at', 'is', null)
    .executeTakeFirst();
}

/** Touches the order, so that a second person acting on the older version is told. */
async function touch(
  trx: CommandTransaction,
  orderId: string,
  rowVersion: number,
): Promise<Changed> {
  return changedOf(await trx.update('shop_order', orderId, rowVersion, {}));
}

export function holdOrder(
  ctx: ShopContext,
  input: ContractInputs['orders']['hold'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.hold' }, async (trx) => {
    trx.about({ orderId: input.id });
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    if ((await openHold(trx, order.id)) !== undefined) {
      throw new ShopError('CONFLICT', `Order ${order.number} is already on hold.`, {
        hold: 'Release the present hold first.',
      });
    }
    await trx.insert('hold', {
      id: ctx.newId(),
      order_id: order.id,
      kind: input.kind,
      reason: input.reason,
      since: trx.at,
      remind_on: input.remindOn,
      released_at: null,
      storage_fee_on: null,
      abandoned_on: null,
    });
    await note(trx, ctx, order.id, { kind: 'hold', summary: 'Put on hold', reason: input.reason });
    return touch(trx, order.id, input.rowVersion);
  });
}

export function releaseOrder(
  ctx: ShopContext,
  input: ContractInputs['orders']['release'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.release' }, async (trx) => {
    trx.about({ orderId: input.id });
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    const hold = await openHold(trx, order.id);
    if (hold === undefined) {
      throw new ShopError('CONFLICT', `Order ${order.number} is not on hold.`);
    }
    await trx.update('hold', hold.id, hold.row_version, { released_at: trx.at });
    await note(trx, ctx, order.id, { kind: 'release', summary: 'Hold released' });
    return touch(trx, order.id, input.rowVersion);
  });
}

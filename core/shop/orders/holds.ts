import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { HoldRow, OrderRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { changedOf } from '../record.ts';
import { note } from './history.ts';
import { firstDays, nextReminder } from './hold-days.ts';
import { waitingPolicyNow } from './hold-rows.ts';
import { openHold, releaseHold } from './open-hold.ts';
import { readOrder } from './order-row.ts';

type Inputs = ContractInputs['orders'];

/** Touches the order, so that a second person acting on the older version is told. */
async function touch(trx: CommandTransaction, order: OrderRow): Promise<Changed> {
  return changedOf(await trx.update('shop_order', order.id, order.row_version, {}));
}

/** @throws ShopError CONFLICT where the order is not on hold. */
async function heldOrder(
  trx: CommandTransaction,
  input: { id: string; rowVersion: number },
): Promise<{ order: OrderRow; hold: HoldRow }> {
  trx.about({ orderId: input.id });
  const order = await readOrder(trx.db, input.id, input.rowVersion);
  const hold = await openHold(trx, order.id);
  if (hold === undefined) {
    throw new ShopError('CONFLICT', `Order ${order.number} is not on hold.`);
  }
  return { order, hold };
}

/** @see contract.orders.hold */
export function holdOrder(ctx: ShopContext, input: Inputs['hold']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.hold' }, async (trx) => {
    trx.about({ orderId: input.id });
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    if (order.stage === 'cancelled') {
      throw new ShopError('CONFLICT', `Order ${order.number} was cancelled.`, {
        hold: 'Take the request up again first.',
      });
    }
    if ((await openHold(trx, order.id)) !== undefined) {
      throw new ShopError('CONFLICT', `Order ${order.number} is already on hold.`, {
        hold: 'Release the present hold first.',
      });
    }
    const hold = { kind: input.kind, since: trx.at };
    await trx.insert('hold', {
      id: ctx.newId(),
      order_id: order.id,
      ...hold,
      reason: input.reason,
      released_at: null,
      ...firstDays(hold, input.remindOn, await waitingPolicyNow(trx.db)),
    });
    await note(trx, ctx, order.id, { kind: 'hold', summary: 'Put on hold', reason: input.reason });
    return touch(trx, order);
  });
}

/** @see contract.orders.changeHold */
export function changeHold(ctx: ShopContext, input: Inputs['changeHold']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.changeHold' }, async (trx) => {
    const { order, hold } = await heldOrder(trx, input);
    await trx.update('hold', hold.id, hold.row_version, {
      remind_on: input.remindOn,
      storage_fee_on: input.storageFeeOn,
      abandoned_on: input.abandonedOn,
    });
    const words = [
      ['remind', input.remindOn],
      ['storage fee', input.storageFeeOn],
      ['unclaimed', input.abandonedOn],
    ].map(([what, on]) => `${what} ${on ?? 'never'}`);
    await note(trx, ctx, order.id, { kind: 'hold', summary: `Days set: ${words.join(', ')}` });
    return touch(trx, order);
  });
}

/** @see contract.orders.remind */
export function remind(ctx: ShopContext, input: Inputs['remind']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.remind' }, async (trx) => {
    const { order, hold } = await heldOrder(trx, input);
    await trx.insert('reminder', {
      id: ctx.newId(),
      hold_id: hold.id,
      sent_at: trx.at,
      how: input.how,
      note: input.note,
      person_id: ctx.actor.personId,
    });
    const next = input.nextOn ?? nextReminder(hold, dayOf(trx.at), await waitingPolicyNow(trx.db));
    await trx.update('hold', hold.id, hold.row_version, { remind_on: next });
    await note(trx, ctx, order.id, {
      kind: 'hold',
      summary: `Reminded ${input.how}${input.note === '' ? '' : `: ${input.note}`}`,
    });
    return touch(trx, order);
  });
}

/** @see contract.orders.release */
export function releaseOrder(ctx: ShopContext, input: Inputs['release']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.release' }, async (trx) => {
    const { order, hold } = await heldOrder(trx, input);
    await releaseHold(trx, ctx, hold);
    return touch(trx, order);
  });
}

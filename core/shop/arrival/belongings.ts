import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { BelongingRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { arrivalRowOf } from './arrival-row.ts';

type Inputs = ContractInputs['arrival'];

export async function countBelongings(db: OpenShop['read'], orderId: string): Promise<number> {
  const { count } = await db
    .selectFrom('belonging')
    .select((eb) => eb.fn.countAll<number>().as('count'))
    .where('order_id', '=', orderId)
    .executeTakeFirstOrThrow();
  return count;
}

/** Lists things for a command that writes more than these; ids rise, so the list keeps its order. */
export async function insertBelongings(
  trx: CommandTransaction,
  ctx: ShopContext,
  orderId: string,
  things: readonly string[],
): Promise<BelongingRow[]> {
  const rows: BelongingRow[] = [];
  for (const what of things) {
    rows.push(
      await trx.insert('belonging', {
        id: ctx.newId(),
        order_id: orderId,
        what,
        back_at: null,
        back_by: null,
        back_note: '',
      }),
    );
  }
  return rows;
}

/** @see contract.arrival.addBelongings */
export function addBelongings(
  ctx: ShopContext,
  input: Inputs['addBelongings'],
): Promise<ContractOutputs['arrival']['addBelongings']> {
  return runCommand(ctx, { id: input.commandId, name: 'arrival.addBelongings' }, async (trx) => {
    trx.about({ orderId: input.orderId });
    const order = await readOrder(trx.db, input.orderId);
    const rows = await insertBelongings(trx, ctx, order.id, input.what);
    const arrival = await arrivalRowOf(trx.db, order.id);
    // "Nothing came along" was wrong, then; the list answers the same question.
    if (arrival?.nothing_came_along === 1) {
      await trx.update('arrival', arrival.id, null, { nothing_came_along: 0 });
    }
    await note(trx, ctx, order.id, {
      kind: 'belongings',
      summary: `Came along: ${input.what.join(', ')}`,
    });
    return { added: rows.map(changedOf) };
  });
}

async function readBelonging(trx: CommandTransaction, id: string): Promise<BelongingRow> {
  const row = await trx.db
    .selectFrom('belonging')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('belonging', id);
  trx.about({ orderId: row.order_id });
  return row;
}

/** @see contract.arrival.correctBelonging */
export function correctBelonging(
  ctx: ShopContext,
  input: Inputs['correctBelonging'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'arrival.correctBelonging' }, async (trx) => {
    const before = await readBelonging(trx, input.id);
    const row = await trx.update('belonging', before.id, input.rowVersion, { what: input.what });
    await note(trx, ctx, before.order_id, {
      kind: 'belongings',
      summary: `List corrected: "${before.what}" now reads "${input.what}"`,
    });
    return changedOf(row);
  });
}

/** @see contract.arrival.tickBack */
export function tickBack(ctx: ShopContext, input: Inputs['tickBack']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'arrival.tickBack' }, async (trx) => {
    const before = await readBelonging(trx, input.id);
    if (before.back_at !== null) {
      throw new ShopError('CONFLICT', `${before.what} is ticked already.`);
    }
    const row = await trx.update('belonging', before.id, input.rowVersion, {
      back_at: trx.at,
      back_by: ctx.actor.personId,
      back_note: input.note,
    });
    await note(trx, ctx, before.order_id, {
      kind: 'belonging-back',
      summary: `Back in the box: ${before.what}${input.note === '' ? '' : ` (${input.note})`}`,
    });
    return changedOf(row);
  });
}

/** @see contract.arrival.untick */
export function untick(ctx: ShopContext, input: Inputs['untick']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'arrival.untick' }, async (trx) => {
    const before = await readBelonging(trx, input.id);
    if (before.back_at === null) {
      throw new ShopError('CONFLICT', `${before.what} is not ticked.`);
    }
    const row = await trx.update('belonging', before.id, input.rowVersion, {
      back_at: null,
      back_by: null,
      back_note: '',
    });
    await note(trx, ctx, before.order_id, {
      kind: 'belonging-back',
      summary: `Not in the box after all: ${before.what}`,
    });
    return changedOf(row);
  });
}

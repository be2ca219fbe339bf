import type { PriceLineFields } from '../../../shared/contract/prices.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow, PriceLineRow } from '../../storage/tables.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { nextPosition, settlePrice } from './line-writing.ts';
import { agreedChangesOf } from './price-of.ts';

type Inputs = ContractInputs['prices'];

function lineColumns(fields: PriceLineFields) {
  if (fields.discountBp !== null && fields.kind !== 'discount') {
    refuseField('discountBp', 'Only a discount is given in percent.');
  }
  if (fields.kind === 'discount' && fields.discountBp === null && fields.unitCents === 0) {
    refuseField('unitCents', 'Say how much comes off, as an amount or in percent.');
  }
  const isPart = fields.discountBp !== null;
  return {
    kind: fields.kind,
    what: fields.what,
    quantity: fields.kind === 'discount' ? 1 : fields.quantity,
    unit_cents: isPart ? 0 : fields.unitCents,
    discount_bp: fields.discountBp,
    taxable: fields.taxable ? (1 as const) : (0 as const),
    minutes: fields.minutes,
  };
}

/** The order a line is put on, if nobody changed it since the caller saw it. */
export async function orderOfLines(
  trx: CommandTransaction,
  orderId: string,
  rowVersion: number | undefined,
): Promise<OrderRow> {
  const order = await readOrder(trx.db, orderId, rowVersion);
  trx.about({ orderId: order.id, bowId: order.bow_id, customerId: order.customer_id });
  return order;
}

/** @throws ShopError NOT_FOUND, or CONFLICT where it was removed */
export async function standingLine(trx: CommandTransaction, id: string): Promise<PriceLineRow> {
  const row = await trx.db
    .selectFrom('price_line')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('price line', id);
  if (row.removed_at !== null) throw new ShopError('CONFLICT', 'This line was already removed.');
  return row;
}

/** @see contract.prices.addFromList */
export function addPriceLines(ctx: ShopContext, input: Inputs['addFromList']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.addFromList' }, async (trx) => {
    const order = await orderOfLines(trx, input.orderId, input.rowVersion);
    const listed = await trx.db
      .selectFrom('price_service')
      .selectAll()
      .where('id', 'in', input.serviceIds)
      .orderBy('position')
      .orderBy('id')
      .execute();
    const known = new Set(listed.filter((row) => row.active === 1).map((row) => row.id));
    const unknown = input.serviceIds.find((id) => !known.has(id));
    if (unknown !== undefined) {
      throw new ShopError('CONFLICT', 'One of these is no longer on the price list.', {
        serviceIds: unknown,
      });
    }
    let position = await nextPosition(trx, order.id);
    for (const service of listed) {
      await trx.insert('price_line', {
        id: ctx.newId(),
        order_id: order.id,
        price_service_id: service.id,
        position,
        kind: 'service',
        what: service.name,
        quantity: 1,
        unit_cents: service.price_cents,
        discount_bp: null,
        taxable: service.taxable,
        minutes: service.minutes,
        consent_answer_id: null,
        removed_at: null,
      });
      position += 1;
    }
    const names = listed.map((service) => service.name).join(', ');
    return changedOf(await settlePrice(trx, ctx, order, `Price: ${names} added`));
  });
}

/** A change of cost is taken up once, and only one the customer agreed to. */
async function refuseUnagreed(trx: CommandTransaction, orderId: string, answerId: string | null) {
  if (answerId === null) return;
  const open = await agreedChangesOf(trx.db, orderId);
  if (open.some((change) => change.answerId === answerId)) return;
  throw new ShopError('CONFLICT', 'This change of cost is already in the lines, or not agreed.');
}

/** @see contract.prices.addLine */
export function addPriceLine(ctx: ShopContext, input: Inputs['addLine']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.addLine' }, async (trx) => {
    const order = await orderOfLines(trx, input.orderId, input.rowVersion);
    await refuseUnagreed(trx, order.id, input.answerId);
    const row = await trx.insert('price_line', {
      id: ctx.newId(),
      order_id: order.id,
      price_service_id: null,
      position: await nextPosition(trx, order.id),
      ...lineColumns(input),
      consent_answer_id: input.answerId,
      removed_at: null,
    });
    await settlePrice(trx, ctx, order, `Price: ${row.what} added`);
    return changedOf(row);
  });
}

/** @see contract.prices.editLine */
export function editPriceLine(ctx: ShopContext, input: Inputs['editLine']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.editLine' }, async (trx) => {
    const line = await standingLine(trx, input.id);
    const order = await orderOfLines(trx, line.order_id, undefined);
    const row = await trx.update('price_line', line.id, input.rowVersion, lineColumns(input));
    await settlePrice(trx, ctx, order, `Price: ${row.what} changed`);
    return changedOf(row);
  });
}

import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type Stage, stageLabels } from '../../../shared/stages.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { changedOf, notFound } from '../record.ts';
import { note } from './history.ts';
import { readOrder } from './order-row.ts';

const beforeAgreement: readonly Stage[] = ['requested', 'in-mail', 'arrived'];

/** What was agreed was agreed with somebody: from then on the order stays with that customer. */
export async function refuseLate(trx: CommandTransaction, order: OrderRow): Promise<void> {
  if (order.customer_id === null) {
    throw new ShopError('CONFLICT', `Order ${order.number} is the shop's own.`, {
      customerId: "Take the customer's bow in as an order of its own.",
    });
  }
  if (!beforeAgreement.includes(order.stage)) {
    throw new ShopError('CONFLICT', 'Work was agreed with the customer on this order.', {
      customerId: `Move it back to "${stageLabels.arrived}" first.`,
    });
  }
  const answered = await trx.db
    .selectFrom('consent_answer')
    .innerJoin('consent', 'consent.id', 'consent_answer.consent_id')
    .select('consent_answer.id')
    .where('consent.order_id', '=', order.id)
    .executeTakeFirst();
  if (answered !== undefined) {
    throw new ShopError('CONFLICT', 'The customer on this order has answered a consent already.', {
      customerId: 'Correct the name on the customer instead.',
    });
  }
}

/** The bow goes along with its order; where another order holds it, its owner is known after all. */
export async function refuseSharedBow(trx: CommandTransaction, order: OrderRow): Promise<void> {
  if (order.bow_id === null) return;
  const other = await trx.db
    .selectFrom('shop_order')
    .select('number')
    .where('bow_id', '=', order.bow_id)
    .where('id', '!=', order.id)
    .executeTakeFirst();
  if (other === undefined) return;
  throw new ShopError('CONFLICT', `Order ${other.number} has the same bow.`, {
    customerId: 'Look which of the two orders has the wrong bow.',
  });
}

/** @see contract.orders.identifyCustomer */
export function identifyCustomer(
  ctx: ShopContext,
  input: ContractInputs['orders']['identifyCustomer'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.identifyCustomer' }, async (trx) => {
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    trx.about({ orderId: order.id, bowId: order.bow_id, customerId: input.customerId });
    const customer = await trx.db
      .selectFrom('customer')
      .select(['id', 'name'])
      .where('id', '=', input.customerId)
      .executeTakeFirst();
    if (customer === undefined) throw notFound('customer', input.customerId);
    if (order.customer_id === customer.id) return changedOf(order);
    await refuseLate(trx, order);
    await refuseSharedBow(trx, order);
    if (order.bow_id !== null) {
      await trx.update('bow', order.bow_id, null, { customer_id: customer.id });
    }
    const row = await trx.update('shop_order', order.id, order.row_version, {
      customer_id: customer.id,
    });
    await note(trx, ctx, order.id, {
      kind: 'owner',
      summary: `Belongs to ${customer.name}`,
    });
    return changedOf(row);
  });
}

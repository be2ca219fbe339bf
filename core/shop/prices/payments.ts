import type { ContractInputs } from '../../../shared/contract/types.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import {
  dollarText,
  paymentKindLabels,
  paymentMethodLabels,
  paymentSums,
} from '../../../shared/money.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { PaymentRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { storedPayments } from './stored.ts';

type Inputs = ContractInputs['prices'];

/** What is left of the money received, cents. */
async function heldCents(trx: CommandTransaction, orderId: string): Promise<number> {
  const sums = paymentSums(await storedPayments(trx.db, [orderId]));
  return sums.receivedCents - sums.refundedCents;
}

function paymentWords(row: Pick<PaymentRow, 'kind' | 'method' | 'cents'>): string {
  const how = paymentMethodLabels[row.method].toLowerCase();
  return `${paymentKindLabels[row.kind]} ${dollarText(row.cents)}, ${how}`;
}

/** @see contract.prices.recordPayment */
export function recordPayment(ctx: ShopContext, input: Inputs['recordPayment']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.recordPayment' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id, customerId: order.customer_id });
    const held = await heldCents(trx, order.id);
    if (input.kind === 'refund' && input.cents > held) {
      refuseField('cents', `Only ${dollarText(held)} of what was received is left to pay back.`);
    }
    const row = await trx.insert('payment', {
      id: ctx.newId(),
      order_id: order.id,
      kind: input.kind,
      method: input.method,
      cents: input.cents,
      received_on: input.receivedOn,
      reference: input.reference,
      note: input.note,
      recorded_at: trx.at,
      person_id: ctx.actor.personId,
      struck_reason: null,
    });
    await note(trx, ctx, order.id, { kind: 'payment', summary: paymentWords(row) });
    return changedOf(row);
  });
}

/** @see contract.prices.strikeOutPayment */
export function strikeOutPayment(
  ctx: ShopContext,
  input: Inputs['strikeOutPayment'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'prices.strikeOutPayment' }, async (trx) => {
    const payment = await trx.db
      .selectFrom('payment')
      .selectAll()
      .where('id', '=', input.id)
      .executeTakeFirst();
    if (payment === undefined) throw notFound('payment', input.id);
    trx.about({ orderId: payment.order_id });
    if (payment.struck_reason !== null) {
      throw new ShopError('CONFLICT', 'This payment is already struck out.');
    }
    const held = await heldCents(trx, payment.order_id);
    if (payment.kind !== 'refund' && payment.cents > held) {
      throw new ShopError('CONFLICT', 'Part of it was paid back. Strike that out first.');
    }
    const row = await trx.update('payment', payment.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    await note(trx, ctx, payment.order_id, {
      kind: 'strike-out',
      summary: `Struck out: ${paymentWords(payment)}`,
      reason: input.reason,
    });
    return changedOf(row);
  });
}

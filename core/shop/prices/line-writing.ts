import { ShopError } from '../../../shared/errors.ts';
import { dollarText } from '../../../shared/money.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { note } from '../orders/history.ts';
import { storedPriceLines, totalsOf } from './stored.ts';

/** Dearest order that is taken, cents; what the field of the estimate takes too. */
const dearestCents = 100_000_000;
const mostLines = 100;

/** The tax of the day the first line is written; it stays with the order while lines stand. */
async function taxFor(trx: CommandTransaction, order: OrderRow) {
  if (order.tax_rate_ppm !== null) {
    return { tax_name: order.tax_name, tax_rate_ppm: order.tax_rate_ppm };
  }
  return trx.db.selectFrom('shop').select(['tax_name', 'tax_rate_ppm']).executeTakeFirstOrThrow();
}

/**
 * Adds the order's lines up after one of them changed. The one hand that writes the price of an
 * order with lines; the row version rises with it, so that whoever saw the older price is told.
 * @throws ShopError BAD_INPUT where more comes off than there is, or the price is out of reach
 */
export async function settlePrice(
  trx: CommandTransaction,
  ctx: ShopContext,
  order: OrderRow,
  summary: string,
): Promise<OrderRow> {
  const lines = await storedPriceLines(trx.db, [order.id]);
  const tax =
    lines.length === 0 ? { tax_name: null, tax_rate_ppm: null } : await taxFor(trx, order);
  const totals = totalsOf(tax, lines);
  if (lines.length > mostLines) {
    throw new ShopError('CONFLICT', `An order takes at most ${mostLines} lines of price.`);
  }
  const over = totals.tooMuchOff === null ? undefined : lines[totals.tooMuchOff];
  if (over !== undefined) {
    const sentence = `"${over.what}" takes off more than what stands above it. Lower it or move it down first.`;
    throw new ShopError('BAD_INPUT', sentence, { unitCents: sentence });
  }
  const dearest = Math.max(totals.totalCents, ...totals.lineCents.map(Math.abs));
  if (dearest > dearestCents) {
    const sentence = `The price may come to ${dollarText(dearestCents)} at most.`;
    throw new ShopError('BAD_INPUT', sentence, { unitCents: sentence });
  }
  const total = lines.length === 0 ? null : totals.totalCents;
  const row = await trx.update('shop_order', order.id, order.row_version, {
    ...tax,
    estimate_cents: total,
  });
  const now = total === null ? 'no price set' : `the price is ${dollarText(total)}`;
  await note(trx, ctx, order.id, { kind: 'price', summary: `${summary}; ${now}` });
  return row;
}

export async function nextPosition(trx: CommandTransaction, orderId: string): Promise<number> {
  const lines = await storedPriceLines(trx.db, [orderId]);
  return 1 + Math.max(0, ...lines.map((line) => line.position));
}

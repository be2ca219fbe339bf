import {
  balanceOf,
  type PricedLine,
  type PriceTotals,
  paymentSums,
  priceTotals,
} from '../../../shared/money.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow, PaymentRow, PriceLineRow } from '../../storage/tables.ts';

type Db = OpenShop['read'];

/** Lines that stand, in their order. */
export function storedPriceLines(db: Db, orderIds: readonly string[]): Promise<PriceLineRow[]> {
  return db
    .selectFrom('price_line')
    .selectAll()
    .where('order_id', 'in', orderIds)
    .where('removed_at', 'is', null)
    .orderBy('position')
    .orderBy('id')
    .execute();
}

/** Payments that count, as they were recorded. */
export function storedPayments(db: Db, orderIds: readonly string[]): Promise<PaymentRow[]> {
  return db
    .selectFrom('payment')
    .selectAll()
    .where('order_id', 'in', orderIds)
    .where('struck_reason', 'is', null)
    .orderBy('recorded_at')
    .orderBy('id')
    .execute();
}

export function pricedLineOf(row: PriceLineRow): PricedLine {
  return {
    kind: row.kind,
    quantity: row.quantity,
    unitCents: row.unit_cents,
    discountBp: row.discount_bp,
    taxable: row.taxable === 1,
  };
}

export function totalsOf(
  order: Pick<OrderRow, 'tax_rate_ppm'>,
  lines: readonly PriceLineRow[],
): PriceTotals {
  return priceTotals(lines.map(pricedLineOf), order.tax_rate_ppm ?? 0);
}

/** What is still to be paid of an order, cents; null while it has no price. */
export function openBalance(
  order: Pick<OrderRow, 'estimate_cents'>,
  payments: readonly PaymentRow[],
): number | null {
  if (order.estimate_cents === null) return null;
  return balanceOf(order.estimate_cents, paymentSums(payments));
}

import { discountText, dollarText, rateText } from '../../../shared/money.ts';
import type { OrderRow, PriceLineRow } from '../../storage/tables.ts';
import { totalsOf } from './stored.ts';

/** Quantity and unit, where they say more than the amount does. */
export function lineWords(
  line: Pick<PriceLineRow, 'kind' | 'what' | 'quantity' | 'unit_cents' | 'discount_bp'>,
): string {
  if (line.discount_bp !== null) return `${line.what}, ${discountText(line.discount_bp)}`;
  return line.quantity === 1
    ? line.what
    : `${line.what}, ${line.quantity} at ${dollarText(line.unit_cents)}`;
}

/** The price line by line, as the customer is asked to agree to it. */
export function priceLinesText(order: OrderRow, lines: readonly PriceLineRow[]): string {
  const totals = totalsOf(order, lines);
  const each = lines.map((line, i) => {
    const untaxed = line.taxable === 1 || line.kind === 'discount' ? '' : ' (not taxed)';
    return `- ${lineWords(line)}: ${dollarText(totals.lineCents[i] ?? 0)}${untaxed}`;
  });
  const tax = `${order.tax_name ?? 'Tax'} ${rateText(order.tax_rate_ppm ?? 0)} on ${dollarText(totals.taxableCents)}: ${dollarText(totals.taxCents)}`;
  return ['Price:', ...each, tax, `Total: ${dollarText(totals.totalCents)}`].join('\n');
}

import type { OrderPrice } from '../../../../shared/contract/prices.ts';
import { dollarText, rateText } from '../../../../shared/money.ts';
import classes from './price.module.css';

/** Label and amount, top to bottom; what it comes to and what is open are the two that count. */
function rowsOf(price: OrderPrice): [string, number, boolean?][] {
  const rows: [string, number, boolean?][] = [];
  if (price.lines.length > 0) {
    const rate = rateText(price.taxRatePpm ?? 0);
    const tax = `${price.taxName ?? 'Tax'} ${rate} on ${dollarText(price.taxableCents)}`;
    rows.push(['Sum of the lines', price.subtotalCents], [tax, price.taxCents]);
  }
  rows.push(['Total', price.totalCents ?? 0, true]);
  if (price.depositCents > 0) {
    rows.push([`Deposit asked, ${price.depositPercent} %`, price.depositCents]);
  }
  if (price.receivedCents > 0) rows.push(['Received', price.receivedCents]);
  if (price.refundedCents > 0) rows.push(['Paid back', price.refundedCents]);
  const balance = price.balanceCents ?? 0;
  rows.push([
    balance < 0 ? 'Paid too much' : balance === 0 ? 'Paid, nothing open' : 'Still to be paid',
    Math.abs(balance),
    true,
  ]);
  return rows;
}

/** What the order comes to and what is open of it. */
export function PriceSums({ price }: { price: OrderPrice }) {
  if (price.totalCents === null) return null;
  return (
    <dl className={classes.sums}>
      {rowsOf(price).map(([label, cents, isStrong]) => (
        <div key={label} style={{ display: 'contents' }}>
          <dt className={isStrong === true ? classes.strong : undefined}>{label}</dt>
          <dd className={isStrong === true ? classes.total : undefined}>{dollarText(cents)}</dd>
        </div>
      ))}
    </dl>
  );
}

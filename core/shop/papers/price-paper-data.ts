import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { OrderPrice } from '../../../shared/contract/prices.ts';
import type { ShopDetails } from '../../../shared/contract/setup.ts';
import { ShopError } from '../../../shared/errors.ts';
import {
  discountText,
  dollarText,
  paymentKindLabels,
  paymentMethodLabels,
  rateText,
} from '../../../shared/money.ts';
import { serviceLabels } from '../../../shared/stages.ts';
import type { PricePaperData } from '../../papers/price-paper.ts';
import type { PriceTables } from '../../papers/price-tables.ts';
import { addressLines } from '../setup/address.ts';
import { nameOnPapers } from './shop-name.ts';

/** The lines; where there are none the price stands as one amount for the work asked. */
function lineRows(price: OrderPrice, work: string): PricePaperData['lines'] {
  if (price.lines.length === 0) {
    const amount = dollarText(price.totalCents ?? 0);
    return [{ what: work, quantity: '1', each: amount, amount }];
  }
  return price.lines.map((line) => {
    const isTaxless = !line.taxable && line.kind !== 'discount' && (price.taxRatePpm ?? 0) > 0;
    const isPart = line.discountBp !== null;
    const isDiscount = line.kind === 'discount';
    return {
      what: `${line.what}${isTaxless ? ' (not taxed)' : ''}`,
      quantity: isDiscount ? '' : String(line.quantity),
      each: isPart
        ? discountText(line.discountBp ?? 0)
        : isDiscount
          ? ''
          : dollarText(line.unitCents),
      amount: dollarText(line.cents),
    };
  });
}

function sumRows(price: OrderPrice): PricePaperData['sums'] {
  const total: [string, string] = ['Total', dollarText(price.totalCents ?? 0)];
  if (price.lines.length === 0) return [total];
  const rate = price.taxRatePpm ?? 0;
  const tax = `${price.taxName ?? 'Tax'} ${rateText(rate)} on ${dollarText(price.taxableCents)}`;
  return [
    ['Sum of the lines', dollarText(price.subtotalCents)],
    [tax, dollarText(price.taxCents)],
    total,
  ];
}

function paymentRows(price: OrderPrice): PricePaperData['payments'] {
  return price.payments
    .filter(({ struckReason }) => struckReason === null)
    .toSorted((a, b) => a.receivedOn.localeCompare(b.receivedOn) || a.id.localeCompare(b.id))
    .map((each) => ({
      on: each.receivedOn,
      what: `${paymentKindLabels[each.kind]}, ${paymentMethodLabels[each.method].toLowerCase()}`,
      reference: each.reference,
      amount: dollarText(each.kind === 'refund' ? -each.cents : each.cents),
    }));
}

function openRows(price: OrderPrice): PricePaperData['open'] {
  const balance = price.balanceCents ?? 0;
  const received = price.receivedCents - price.refundedCents;
  const rows: [string, string][] = [];
  if (price.depositCents > 0) {
    const asked = `Deposit asked, ${price.depositPercent} % of the total`;
    rows.push([asked, dollarText(price.depositCents)]);
  }
  rows.push(['Received', dollarText(received)]);
  rows.push(
    balance < 0
      ? ['Paid too much', dollarText(-balance)]
      : ['Still to be paid', dollarText(balance)],
  );
  return rows;
}

const workText = ({ services }: Pick<OrderDetail, 'services'>) =>
  services.map((service) => serviceLabels[service]).join(', ');

/** Lines, sums, payments and what is open, as on every paper that tells the price. */
export function priceTables(order: Pick<OrderDetail, 'price' | 'services'>): PriceTables {
  const { price } = order;
  return {
    lines: lineRows(price, workText(order)),
    sums: sumRows(price),
    payments: paymentRows(price),
    open: openRows(price),
  };
}

const terms = {
  estimate: [
    'This estimate covers the work listed above. Anything beyond it is agreed with you first, with its cost and the new total.',
  ],
  receipt: ['This receipt covers the work listed above and the money received for it.'],
};

/** @throws ShopError CONFLICT while there is nothing to estimate or to give a receipt for */
export function pricePaperData(
  kind: PricePaperData['kind'],
  order: OrderDetail,
  shop: ShopDetails,
  choice: Pick<PricePaperData, 'format' | 'copy' | 'printedAt'>,
): PricePaperData {
  const { card, customer, price } = order;
  if (price.totalCents === null) {
    throw new ShopError('CONFLICT', 'Set the price first.', { price: 'Set the price first.' });
  }
  const isUnpaid = paymentRows(price).length === 0;
  if (kind === 'receipt' && isUnpaid && price.totalCents > 0) {
    const sentence = 'Nothing was paid yet. Record the payment first, or print the estimate.';
    throw new ShopError('CONFLICT', sentence, { price: sentence });
  }
  const work = workText(order);
  return {
    kind,
    ...choice,
    shop: {
      name: nameOnPapers(shop),
      lines: addressLines(shop.address),
      phone: shop.phone,
      email: shop.email,
    },
    number: card.number,
    customer:
      customer === null ? null : { name: customer.name, lines: addressLines(customer.address) },
    bow: order.bow === null ? 'not identified yet' : card.bowLine,
    work,
    ...priceTables(order),
    terms: [...terms[kind], 'It is not a tax invoice.'],
  };
}

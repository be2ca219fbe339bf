import { z } from './zod.ts';

/** What a line of a price is for. A discount is taken off, everything else is added. */
export const priceLineKinds = [
  'service',
  'material',
  'discount',
  'rush',
  'freight',
  'other',
] as const;
export const priceLineKind = z.enum(priceLineKinds);
export type PriceLineKind = (typeof priceLineKinds)[number];

export const priceLineKindLabels: Record<PriceLineKind, string> = {
  service: 'Work',
  material: 'Material',
  discount: 'Discount',
  rush: 'Rush fee',
  freight: 'Return freight',
  other: 'Other',
};

/** What the arithmetic needs of a line, in the order the lines stand. */
export interface PricedLine {
  kind: PriceLineKind;
  quantity: number;
  /** Cents of one; of a discount by amount what comes off, as a positive number. */
  unitCents: number;
  /** Of a discount, hundredths of a percent of what stands above it; null where it is an amount. */
  discountBp: number | null;
  taxable: boolean;
}

/** All in integer cents. */
export interface PriceTotals {
  /** What each line adds, in the order of the lines; discounts are negative. */
  lineCents: readonly number[];
  /** Sum of the lines. */
  subtotalCents: number;
  /** Part of it that is taxed, after its share of the discounts. */
  taxableCents: number;
  taxCents: number;
  totalCents: number;
  /** First discount that is more than what stands above it; it is counted only up to that. */
  tooMuchOff: number | null;
}

/**
 * `amount * part / whole` in whole cents, half a cent up. Exact: the products pass the integers
 * a double can hold.
 */
export function shareOf(amount: number, part: number, whole: number): number {
  const doubled = 2n * BigInt(amount) * BigInt(part) + BigInt(whole);
  return Number(doubled / (2n * BigInt(whole)));
}

/** Parts in a million make a rate exact to four places of a percent. */
const million = 1_000_000;
const allBp = 10_000;

/**
 * The taxed part of a discount that is spread over what stands above it. By largest remainder:
 * the odd cent goes where the larger fraction is, and at a tie to the taxed part, which is to
 * the customer's good. What is left is the untaxed part, so the two always add up.
 */
function taxedPart(off: number, taxable: number, above: number): number {
  return above === 0 ? 0 : shareOf(off, taxable, above);
}

/**
 * The price of an order. The one place where it is added up: screen, consent and papers call it.
 * Tax is rounded once, half a cent up, on the taxed sum of the whole order: rounding each line
 * could be half a cent out on every one of them, and the customer pays one sum (common practice;
 * where the law of the place says otherwise, that decides).
 * @param taxRatePpm parts in a million of the taxed sum
 */
export function priceTotals(lines: readonly PricedLine[], taxRatePpm: number): PriceTotals {
  let taxable = 0;
  let above = 0;
  let tooMuchOff: number | null = null;
  const lineCents = lines.map((line, index) => {
    if (line.kind !== 'discount') {
      const cents = line.quantity * line.unitCents;
      above += cents;
      if (line.taxable) taxable += cents;
      return cents;
    }
    const asked =
      line.discountBp === null
        ? line.quantity * line.unitCents
        : shareOf(above, line.discountBp, allBp);
    if (asked > above) tooMuchOff ??= index;
    const off = Math.min(asked, above);
    taxable -= taxedPart(off, taxable, above);
    above -= off;
    return off === 0 ? 0 : -off;
  });
  const taxCents = shareOf(taxable, taxRatePpm, million);
  return {
    lineCents,
    subtotalCents: above,
    taxableCents: taxable,
    taxCents,
    totalCents: above + taxCents,
    tooMuchOff,
  };
}

export const paymentKinds = ['deposit', 'payment', 'refund'] as const;
export const paymentKind = z.enum(paymentKinds);
export type PaymentKind = (typeof paymentKinds)[number];
export const paymentKindLabels: Record<PaymentKind, string> = {
  deposit: 'Deposit',
  payment: 'Payment',
  refund: 'Paid back',
};

export const paymentMethods = ['cash', 'card', 'cheque', 'transfer', 'other'] as const;
export const paymentMethod = z.enum(paymentMethods);
export type PaymentMethod = (typeof paymentMethods)[number];
export const paymentMethodLabels: Record<PaymentMethod, string> = {
  cash: 'Cash',
  card: 'Card',
  cheque: 'Check',
  transfer: 'Bank transfer',
  other: 'Other',
};

export interface CountedPayment {
  kind: PaymentKind;
  cents: number;
}

/** All in integer cents. */
export interface PaymentSums {
  receivedCents: number;
  refundedCents: number;
}

export function paymentSums(payments: readonly CountedPayment[]): PaymentSums {
  let receivedCents = 0;
  let refundedCents = 0;
  for (const { kind, cents } of payments) {
    if (kind === 'refund') refundedCents += cents;
    else receivedCents += cents;
  }
  return { receivedCents, refundedCents };
}

/** What is still to be paid; negative where more came in than was asked. */
export function balanceOf(totalCents: number, sums: PaymentSums): number {
  return totalCents - sums.receivedCents + sums.refundedCents;
}

/** Deposit asked of a total, to the cent, half a cent up. */
export function depositAsked(totalCents: number, percent: number): number {
  return shareOf(totalCents, percent, 100);
}

/** `$1,250.00`, `-$18.00`: always with cents, so that columns line up. */
export function dollarText(cents: number): string {
  const size = Math.abs(cents);
  const whole = String(Math.floor(size / 100)).replaceAll(/\B(?=(\d{3})+$)/g, ',');
  return `${cents < 0 ? '-' : ''}$${whole}.${String(size % 100).padStart(2, '0')}`;
}

/** `8.875 %` from parts in a million. */
export function rateText(ppm: number): string {
  return `${ppm / allBp} %`;
}

/** `10 %` from hundredths of a percent. */
export function discountText(bp: number): string {
  return `${bp / 100} %`;
}

import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  balanceOf,
  depositAsked,
  dollarText,
  type PricedLine,
  paymentSums,
  priceTotals,
  rateText,
  shareOf,
} from '../../shared/money.ts';

const line = (change: Partial<PricedLine> = {}): PricedLine => ({
  kind: 'service',
  quantity: 1,
  unitCents: 10_000,
  discountBp: null,
  taxable: true,
  ...change,
});
const percentOff = (discountBp: number) => line({ kind: 'discount', unitCents: 0, discountBp });
const amountOff = (unitCents: number) => line({ kind: 'discount', unitCents });

const added = fc.record({
  kind: fc.constantFrom('service' as const, 'material' as const, 'freight' as const),
  quantity: fc.integer({ min: 1, max: 999 }),
  unitCents: fc.integer({ min: 0, max: 90_000 }),
  discountBp: fc.constant(null),
  taxable: fc.boolean(),
});
const discount = fc.oneof(
  fc.integer({ min: 1, max: 10_000 }).map(percentOff),
  fc.integer({ min: 1, max: 50_000 }).map(amountOff),
);
const lines = fc.array(fc.oneof({ weight: 3, arbitrary: added }, discount), { maxLength: 30 });
const rate = fc.integer({ min: 0, max: 500_000 });
const sum = (all: readonly number[]) => all.reduce((a, b) => a + b, 0);

/** The rules again, in exact fractions of a cent and by another way: nothing is shared with the code. */
function byHand(all: readonly PricedLine[], ppm: number) {
  const half = (top: bigint, under: bigint) => (top * 2n + under) / (under * 2n);
  let taxed = 0n;
  let free = 0n;
  for (const each of all) {
    const amount = BigInt(each.quantity) * BigInt(each.unitCents);
    if (each.kind !== 'discount') {
      if (each.taxable) taxed += amount;
      else free += amount;
      continue;
    }
    const above = taxed + free;
    const asked =
      each.discountBp === null ? amount : half(above * BigInt(each.discountBp), 10_000n);
    const off = asked < above ? asked : above;
    if (above === 0n) continue;
    // Largest remainder over two parts: whole cents first, the odd one to the larger fraction.
    const floorTaxed = (off * taxed) / above;
    const floorFree = (off * free) / above;
    const odd = off - floorTaxed - floorFree;
    const toTaxed = (off * taxed) % above >= (off * free) % above ? odd : 0n;
    taxed -= floorTaxed + toTaxed;
    free -= floorFree + (odd - toTaxed);
  }
  const tax = half(taxed * BigInt(ppm), 1_000_000n);
  return { taxed: Number(taxed), tax: Number(tax), total: Number(taxed + free + tax) };
}

test('every total is what the rules say in exact fractions, for any lines and rate', () => {
  fc.assert(
    fc.property(lines, rate, (all, ppm) => {
      const totals = priceTotals(all, ppm);
      const hand = byHand(all, ppm);
      expect(totals.taxableCents).toBe(hand.taxed);
      expect(totals.taxCents).toBe(hand.tax);
      expect(totals.totalCents).toBe(hand.total);
    }),
    { numRuns: 2000 },
  );
});

test('lines and tax add up to the total, in whole cents, and nothing falls below nothing', () => {
  fc.assert(
    fc.property(lines, rate, (all, ppm) => {
      const totals = priceTotals(all, ppm);
      expect(sum(totals.lineCents)).toBe(totals.subtotalCents);
      expect(totals.subtotalCents + totals.taxCents).toBe(totals.totalCents);
      expect([...totals.lineCents, totals.taxCents].every(Number.isSafeInteger)).toBe(true);
      expect(totals.taxableCents).toBeGreaterThanOrEqual(0);
      expect(totals.taxableCents).toBeLessThanOrEqual(totals.subtotalCents);
      expect(Math.abs(totals.taxCents * 1_000_000 - totals.taxableCents * ppm)).toBeLessThanOrEqual(
        500_000,
      );
    }),
  );
});

test('what was added and taken away again leaves the old total, in whatever order', () => {
  const edits = fc.array(fc.tuple(fc.nat(40), fc.oneof(added, discount)), { maxLength: 12 });
  fc.assert(
    fc.property(
      lines,
      edits,
      rate,
      fc.array(fc.nat(), { maxLength: 12 }),
      (all, more, ppm, picks) => {
        const before = priceTotals(all, ppm);
        const now: PricedLine[] = [...all];
        const extra = more.map(([place, each]) => {
          const own = { ...each };
          now.splice(Math.min(place, now.length), 0, own);
          return own;
        });
        priceTotals(now, ppm);
        for (const pick of picks) {
          const [own] = extra.splice(extra.length === 0 ? 0 : pick % extra.length, 1);
          if (own !== undefined) now.splice(now.indexOf(own), 1);
        }
        for (const own of extra) now.splice(now.indexOf(own), 1);
        expect(priceTotals(now, ppm)).toEqual(before);
      },
    ),
  );
});

test('lines without a discount cost the same in any order', () => {
  const shuffled = fc
    .array(added, { maxLength: 20 })
    .chain((all) =>
      fc.tuple(fc.constant(all), fc.shuffledSubarray(all, { minLength: all.length })),
    );
  fc.assert(
    fc.property(shuffled, rate, ([all, other], ppm) => {
      const { lineCents: _, ...one } = priceTotals(all, ppm);
      const { lineCents: __, ...two } = priceTotals(other, ppm);
      expect(two).toEqual(one);
    }),
  );
});

test('tax is rounded once on the sum, half a cent up', () => {
  // Three lines of 33 cents at 5 %: by line 2 + 2 + 2 cents; on the sum of 99 cents, 4.95.
  const three = [1, 2, 3].map(() => line({ unitCents: 33 }));
  expect(priceTotals(three, 50_000).taxCents).toBe(5);
  expect(priceTotals([line({ unitCents: 10 })], 50_000).taxCents).toBe(1);
  expect(priceTotals([line({ unitCents: 9 })], 50_000).taxCents).toBe(0);
});

test('a discount counts on what stands above it and lowers the tax by its share', () => {
  const all = [
    line({ unitCents: 18_000 }),
    line({ unitCents: 6_000, taxable: false }),
    percentOff(1000),
    line({ kind: 'freight', unitCents: 2_500, taxable: false }),
  ];
  expect(priceTotals(all, 62_500)).toEqual({
    lineCents: [18_000, 6_000, -2_400, 2_500],
    subtotalCents: 24_100,
    taxableCents: 16_200,
    taxCents: 1013,
    totalCents: 25_113,
    tooMuchOff: null,
  });
});

test('the odd cent of a discount goes to the larger fraction, and at a tie off the taxed part', () => {
  const even = [line({ unitCents: 100 }), line({ unitCents: 100, taxable: false }), amountOff(1)];
  expect(priceTotals(even, 0).taxableCents).toBe(99);
  const less = [line({ unitCents: 100 }), line({ unitCents: 300, taxable: false }), amountOff(1)];
  expect(priceTotals(less, 0).taxableCents).toBe(100);
});

test('more off than there is, is named and counted only up to nothing', () => {
  const totals = priceTotals([line({ unitCents: 500 }), amountOff(600), amountOff(1)], 100_000);
  expect(totals).toMatchObject({ totalCents: 0, tooMuchOff: 1, lineCents: [500, -500, 0] });
});

test('payments add up to the balance whatever their order, and what is paid back is open again', () => {
  const payments = fc.array(
    fc.record({
      kind: fc.constantFrom('deposit' as const, 'payment' as const, 'refund' as const),
      cents: fc.integer({ min: 1, max: 1_000_000 }),
    }),
  );
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 1_000_000 }), payments, (total, all) => {
      const balance = balanceOf(total, paymentSums(all));
      expect(balanceOf(total, paymentSums(all.toReversed()))).toBe(balance);
      const [first, ...rest] = all;
      if (first === undefined) return;
      const change = first.kind === 'refund' ? first.cents : -first.cents;
      expect(balance - change).toBe(balanceOf(total, paymentSums(rest)));
    }),
  );
});

test('a deposit is a share to the cent, and shares of large sums are exact', () => {
  expect(depositAsked(25_113, 50)).toBe(12_557);
  expect(depositAsked(0, 50)).toBe(0);
  expect(shareOf(99_999_999, 99_999_999, 100_000_000)).toBe(99_999_998);
});

test('amounts and rates read as they are', () => {
  expect([0, 5, -1800, 123_456_789].map(dollarText)).toEqual([
    '$0.00',
    '$0.05',
    '-$18.00',
    '$1,234,567.89',
  ]);
  expect([0, 62_500, 88_750].map(rateText)).toEqual(['0 %', '6.25 %', '8.875 %']);
});

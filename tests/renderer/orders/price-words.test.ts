import { expect, test } from 'vitest';
import {
  draftOf,
  draftOfChange,
  lineErrors,
  lineInput,
  newLine,
} from '../../../renderer/screens/orders/price/line-fields.ts';
import {
  lineWords,
  movedBy,
  priceState,
  suggestedServices,
} from '../../../renderer/screens/orders/price/price-words.ts';
import type { OrderPrice, PriceLine, PriceService } from '../../../shared/contract/prices.ts';

const price: OrderPrice = {
  lines: [],
  taxName: null,
  taxRatePpm: null,
  subtotalCents: 0,
  taxableCents: 0,
  taxCents: 0,
  totalCents: null,
  depositPercent: 0,
  depositCents: 0,
  receivedCents: 0,
  refundedCents: 0,
  balanceCents: null,
  payments: [],
  agreedChanges: [],
};
const line: PriceLine = {
  id: 'a',
  rowVersion: 1,
  kind: 'service',
  what: 'Re-mark',
  quantity: 1,
  unitCents: 3_500,
  discountBp: null,
  taxable: true,
  minutes: 30,
  priceServiceId: 's1',
  cents: 3_500,
};
const listed = (id: string, change: Partial<PriceService>): PriceService => ({
  id,
  rowVersion: 1,
  name: id,
  service: 're-mark',
  priceCents: 0,
  minutes: 0,
  taxable: true,
  active: true,
  position: 1,
  ...change,
});

test.each([
  [null, null, 'not set'],
  [24_000, 24_000, '$240.00, $240.00 still to be paid'],
  [24_000, 0, '$240.00, paid'],
  [24_000, -3_000, '$240.00, $30.00 paid too much'],
])('a total of %s with %s open reads "%s"', (totalCents, balanceCents, words) => {
  expect(priceState({ ...price, totalCents, balanceCents })).toBe(words);
});

test('a line says what its amount does not', () => {
  expect(lineWords(line, true)).toBe('30 min');
  const horn: PriceLine = { ...line, kind: 'material', quantity: 2, taxable: false, minutes: 0 };
  expect(lineWords(horn, true)).toBe('Material, 2 at $35.00, not taxed');
  expect(lineWords(horn, false)).toBe('Material, 2 at $35.00');
  const rush: PriceLine = { ...line, kind: 'rush', what: 'Rush fee' };
  expect(lineWords(rush, true)).toBe('30 min');
  const off: PriceLine = { ...line, kind: 'discount', discountBp: 1250, minutes: 0 };
  expect(lineWords(off, true)).toBe('Discount, 12.5 % of what stands above');
});

test('offered are lines in use of the services asked that are not there yet', () => {
  const list = [
    listed('s1', {}),
    listed('s2', {}),
    listed('s3', { active: false }),
    listed('s4', { service: 'new-string' }),
    listed('s5', { service: null }),
  ];
  expect(suggestedServices(list, ['re-mark'], [line]).map(({ id }) => id)).toEqual(['s2']);
});

test('a line moves by one place and stays at the ends', () => {
  expect(movedBy(['a', 'b', 'c'], 'b', -1)).toEqual(['b', 'a', 'c']);
  expect(movedBy(['a', 'b', 'c'], 'b', 1)).toEqual(['a', 'c', 'b']);
  expect(movedBy(['a', 'b', 'c'], 'a', -1)).toEqual(['a', 'b', 'c']);
  expect(movedBy(['a', 'b', 'c'], 'c', 1)).toEqual(['a', 'b', 'c']);
});

test('what stands on record is what the form sends back', () => {
  const { id, rowVersion, priceServiceId, cents, ...fields } = line;
  expect(lineInput(draftOf(line))).toEqual(fields);
  const off = { ...fields, kind: 'discount' as const, unitCents: 0, discountBp: 833 };
  const onRecord = { id, rowVersion, priceServiceId, cents };
  expect(lineInput(draftOf({ ...off, ...onRecord }))).toEqual(off);
});

test('a form says which field is wrong', () => {
  expect(Object.keys(lineErrors(newLine)).sort()).toEqual(['unitCents', 'what']);
  const off = { ...newLine, kind: 'discount' as const, what: 'Off', percent: 101 };
  expect(lineErrors(off)).toEqual({ discountBp: 'Between 0.01 and 100 percent.' });
  expect(lineErrors({ ...off, percent: 100 })).toEqual({});
  const nothing = { ...off, isPercent: false, unitCents: 0 };
  expect(lineErrors(nothing)).toEqual({ unitCents: 'Say how much comes off.' });
});

test('less cost agreed becomes a discount, more cost a line', () => {
  const change = { answerId: 'x', agreedAt: '2026-03-02T10:00:00.000Z', channel: 'phone' };
  const of = (cents: number) =>
    lineInput(draftOfChange({ ...change, answeredBy: 'Nora Hale', cents }));
  expect(of(4_000)).toMatchObject({
    kind: 'other',
    unitCents: 4_000,
    what: 'Agreed with Nora Hale',
  });
  expect(of(-2_000)).toMatchObject({ kind: 'discount', unitCents: 2_000, discountBp: null });
});

import { expect, test } from 'vitest';
import { plainModule } from '../../../core/papers/plain-head.ts';
import { pricePaperPdf } from '../../../core/papers/price-paper.ts';
import { pricePaperData } from '../../../core/shop/papers/price-paper-data.ts';
import { addPriceLine } from '../../../core/shop/prices/lines.ts';
import { recordPayment } from '../../../core/shop/prices/payments.ts';
import { editPricePolicy, getPricePolicy } from '../../../core/shop/prices/policy.ts';
import { getShop } from '../../../core/shop/setup/shop.ts';
import { newCommandId, takeIn, testShop } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';
import { expectCleanPages } from './layout-checks.ts';
import {
  estimateSample,
  estimateShortest,
  receiptLong,
  receiptSample,
} from './price-paper-samples.ts';
import { figureTexts, pagesOf, placedText, rolesOf, textOf } from './read-back.ts';

const samples = { estimateShortest, estimateSample, receiptSample, receiptLong };
const quietPt = 10 * plainModule;

test.each(
  Object.entries(samples).flatMap(([name, data]) =>
    (['letter', 'a4'] as const).map((format) => [name, format, { ...data, format }] as const),
  ),
)(
  '%s on %s: nothing runs into anything, and every page carries the number',
  async (_, __, data) => {
    const { bytes, fileName } = await pricePaperPdf(data);
    expect(fileName).toBe(`26-0147 ${data.kind}.pdf`);
    for (const codes of await expectCleanPages(bytes, quietPt)) {
      expect(codes.map(({ text }) => text)).toEqual(['26-0147']);
    }
    const text = (await textOf(bytes)).replaceAll(/\s+/g, '');
    const said = [
      ...data.lines.flatMap((line) => [line.what, line.each, line.amount]),
      ...data.sums.flat(),
      ...data.payments.flatMap((each) => [each.what, each.reference, each.amount]),
      ...data.open.flat(),
      ...data.terms,
    ];
    for (const words of said) expect(text).toContain(words.replaceAll(/\s+/g, ''));
  },
);

test('a long price carries the head of its table over every page, amounts at one right edge', async () => {
  const { bytes } = await pricePaperPdf(receiptLong);
  const pages = await pagesOf(bytes);
  expect(pages.length).toBeGreaterThan(3);
  const texts = await Promise.all(pages.map(placedText));
  const withLines = texts.filter((page) => page.some(({ text }) => text === '$1,000,000.00'));
  for (const page of withLines.slice(0, 2)) {
    expect(page.some(({ text }) => text === 'Quantity')).toBe(true);
  }
  const edges = texts
    .flat()
    .filter(({ text }) => /^-?\$[\d,]+\.\d\d$/.test(text))
    .map(({ right }) => right);
  const last = Math.max(...edges);
  const atEdge = edges.filter((edge) => Math.abs(edge - last) < 0.5);
  expect(atEdge.length).toBeGreaterThanOrEqual(60 + 25 + 4);
});

test('a reader without eyes gets headings, tables with heads, and the number', async () => {
  const { bytes } = await pricePaperPdf(receiptSample);
  const roles = await rolesOf(bytes);
  for (const role of ['H1', 'H2', 'Table', 'TR', 'TH', 'TD', 'P']) expect(roles).toContain(role);
  expect(await figureTexts(bytes)).toContain('Barcode of the order number 26-0147');
});

/** The rows of the price as they stand on the paper: everything between its head and what was paid. */
async function priceRows(bytes: Uint8Array): Promise<string[]> {
  const words = (await Promise.all((await pagesOf(bytes)).map(placedText))).flat();
  const from = words.findIndex(({ text }) => text === 'Amount');
  const to = words.findIndex(({ text }) => text.startsWith('Total '));
  return words.slice(from + 1, to + 1).map(({ text }) => text);
}

test('estimate and receipt of one order agree line by line', async () => {
  const shop = await testShop();
  const ctx = shop.owner;
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  const { rowVersion } = await getPricePolicy(ctx);
  const policy = { taxName: 'State tax', taxRatePpm: 62_500, depositPercent: 50 };
  const fees = { rushFeeCents: 0, returnFreightCents: 0 };
  await editPricePolicy(ctx, { commandId: newCommandId(), rowVersion, ...policy, ...fees });
  const given = [
    ['service', 'Reduce weight', 1, 18_000, null, true],
    ['material', 'Overlay horn', 2, 1_250, null, true],
    ['discount', 'Second bow this year', 1, 0, 1000, true],
    ['discount', 'Kept waiting', 1, 500, null, true],
    ['freight', 'Return freight', 1, 2_500, null, false],
  ] as const;
  for (const [kind, what, quantity, unitCents, discountBp, taxable] of given) {
    const { rowVersion } = (await flow.order()).card;
    const line = { kind, what, quantity, unitCents, discountBp, taxable, minutes: 0 };
    const at = { commandId: newCommandId(), orderId: id, rowVersion };
    await addPriceLine(ctx, { ...at, ...line, answerId: null });
  }
  const choice = { format: 'letter', copy: 'customer', printedAt: ctx.now() } as const;
  const paper = async (kind: 'estimate' | 'receipt') =>
    pricePaperPdf(pricePaperData(kind, await flow.order(), await getShop(ctx), choice));
  await expect(paper('receipt')).rejects.toThrow(/Nothing was paid yet/);
  const estimate = await priceRows((await paper('estimate')).bytes);
  await recordPayment(ctx, {
    commandId: newCommandId(),
    orderId: id,
    kind: 'deposit',
    method: 'cheque',
    cents: 10_000,
    receivedOn: '2026-03-02',
    reference: 'no. 118',
    note: '',
  });
  const receipt = await paper('receipt');
  expect(await priceRows(receipt.bytes)).toEqual(estimate);
  expect(estimate.join(' | ')).toBe(
    [
      'Reduce weight | 1 | $180.00 | $180.00',
      'Overlay horn | 2 | $12.50 | $25.00',
      'Second bow this year | 10 % | -$20.50',
      'Kept waiting | -$5.00',
      'Return freight (not taxed) | 1 | $25.00 | $25.00',
      'Sum of the lines | $204.50',
      'State tax 6.25 % on $179.50 | $11.22',
      'Total $215.72',
    ].join(' | '),
  );
  const text = await textOf(receipt.bytes);
  for (const words of ['Deposit, check', 'no. 118', '$100.00', 'Still to be paid $115.72']) {
    expect(text).toContain(words);
  }
});

test('without lines the amount stands for the work asked; without a price there is no paper', async () => {
  const shop = await testShop();
  const print = async (estimateCents: number | null) => {
    const { id } = await takeIn(shop, { estimateCents });
    const order = await new Flow(shop, id).order();
    const choice = { format: 'a4', copy: 'customer', printedAt: shop.owner.now() } as const;
    return pricePaperData('estimate', order, await getShop(shop.owner), choice);
  };
  expect((await print(24_000)).lines).toEqual([
    { what: 'Reduce weight, Re-mark', quantity: '1', each: '$240.00', amount: '$240.00' },
  ]);
  await expect(print(null)).rejects.toThrow('Set the price first.');
});

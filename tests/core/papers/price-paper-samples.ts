import type { PricePaperData } from '../../../core/papers/price-paper.ts';

/** Invented shop and customer. */
export const estimateSample: PricePaperData = {
  kind: 'estimate',
  format: 'letter',
  copy: 'customer',
  printedAt: '2026-03-02T09:00:00.000Z',
  shop: {
    name: 'Fernhill Bow Works',
    lines: ['4 Mill Lane', 'Ashdale, VT 05000'],
    phone: '555 0100',
    email: 'bench@fernhill.example',
  },
  number: '26-0147',
  customer: { name: 'Nora Hale', lines: ['12 Orchard Road', 'Millbrook, OH 44000'] },
  bow: 'longbow 66", Oldfield Heron, marked 52# @ 28"',
  work: 'Reduce weight, Strip & refinish, Re-mark',
  lines: [
    { what: 'Reduce weight to 45# @ 28"', quantity: '1', each: '$180.00', amount: '$180.00' },
    { what: 'Overlay horn', quantity: '2', each: '$12.50', amount: '$25.00' },
    { what: 'Second bow this year', quantity: '', each: '10 %', amount: '-$20.50' },
    { what: 'Return freight (not taxed)', quantity: '1', each: '$25.00', amount: '$25.00' },
  ],
  sums: [
    ['Sum of the lines', '$209.50'],
    ['State tax 6.25 % on $184.50', '$11.53'],
    ['Total', '$221.03'],
  ],
  payments: [],
  open: [
    ['Deposit asked, 50 % of the total', '$110.52'],
    ['Received', '$0.00'],
    ['Still to be paid', '$221.03'],
  ],
  terms: [
    'This estimate covers the work listed above. Anything beyond it is agreed with you first, with its cost and the new total.',
    'It is not a tax invoice.',
  ],
};

export const receiptSample: PricePaperData = {
  ...estimateSample,
  kind: 'receipt',
  payments: [
    { on: '2026-02-20', what: 'Deposit, check', reference: 'no. 118', amount: '$110.52' },
    { on: '2026-03-02', what: 'Payment, card', reference: '', amount: '$110.51' },
  ],
  open: [
    ['Deposit asked, 50 % of the total', '$110.52'],
    ['Received', '$221.03'],
    ['Still to be paid', '$0.00'],
  ],
  terms: [
    'This receipt covers the work listed above and the money received for it.',
    'It is not a tax invoice.',
  ],
};

/** The least there can be: the shop's own bow, one amount, nobody told what the shop is called for. */
export const estimateShortest: PricePaperData = {
  ...estimateSample,
  shop: { name: 'F', lines: [], phone: '', email: '' },
  customer: null,
  bow: 'not identified yet',
  work: 'Re-mark',
  lines: [{ what: 'Re-mark', quantity: '1', each: '$0.05', amount: '$0.05' }],
  sums: [['Total', '$0.05']],
  open: [
    ['Received', '$0.00'],
    ['Still to be paid', '$0.05'],
  ],
};

const longWord = 'Donaudampfschifffahrtsgesellschaftskapitaen'.repeat(3);
const wide = 'Fill, sand level and seal every check along the belly lamination of both limbs';

/** Sixty lines, words without a break, as many payments as anybody makes. */
export const receiptLong: PricePaperData = {
  ...receiptSample,
  format: 'a4',
  customer: {
    name: `Nora ${longWord}`.slice(0, 120),
    lines: [longWord.slice(0, 100), 'Millbrook'],
  },
  bow: `longbow 66", ${longWord}`.slice(0, 200),
  work: 'Reduce weight, Scuff & recoat, Strip & refinish, Re-mark, Overlay or nock work, New string',
  lines: Array.from({ length: 60 }, (_, i) => ({
    what: i % 7 === 3 ? `${i + 1} ${longWord}`.slice(0, 160) : `${i + 1} ${wide}`,
    quantity: '999',
    each: '$1,000,000.00',
    amount: i % 9 === 8 ? '-$999,999.99' : '$1,000,000.00',
  })),
  sums: [
    ['Sum of the lines', '$1,000,000.00'],
    [
      `${'State and county tax of the place'.slice(0, 40)} 49.9999 % on $1,000,000.00`,
      '$499,999.00',
    ],
    ['Total', '$1,000,000.00'],
  ],
  payments: Array.from({ length: 25 }, (_, i) => ({
    on: '2026-03-02',
    what: i % 5 === 4 ? 'Paid back, bank transfer' : 'Payment, bank transfer',
    reference: longWord.slice(0, 120),
    amount: '$40,000.00',
  })),
};

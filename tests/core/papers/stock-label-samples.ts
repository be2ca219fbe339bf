import type { StockLabelData } from '../../../core/papers/stock-label.ts';

const printed = { format: 'label', printedAt: '2026-03-02T09:00:00.000Z' } as const;

export const shelfSample: StockLabelData = {
  ...printed,
  name: 'Paper, open coat',
  facts: ['P320 (46.2 µm)', 'Rack 2, third slot', 'Counted in sheets'],
  barcode: 'S0007',
};

export const shelfShortest: StockLabelData = { ...printed, name: 'X', facts: [], barcode: 'S0001' };

export const shelfLong: StockLabelData = {
  ...printed,
  name: 'Clear two-part finish for limbs, hardener, slow, from the small cans of the second delivery',
  facts: [
    'Cabinet 1 under the window, second board from the top, left of the thinner',
    'Counted in US fl oz',
    'Flammable, isocyanates, rags that heat themselves: see its data sheet',
  ],
  barcode: '00123456789012',
};

export const lotSample: StockLabelData = {
  ...printed,
  name: 'Clear finish, hardener',
  facts: [
    'Use by 2026-09-30',
    'Lot H-2214',
    'Came 2026-03-01',
    'Opened ____________, keeps 90 days',
    'Flammable, isocyanates: see its data sheet',
  ],
  barcode: 'L0012',
};

import { expect, test } from 'vitest';
import { code128Bars, code128BarsOfSymbols } from '../../core/papers/code128.ts';
import { checkSum, patterns, stopValue, valuesOf } from './code128-patterns.ts';

const start = { A: 103, B: 104, C: 105 };
const codeC = 99;

/** Code set A: space to underscore are values 0 to 63 (ISO/IEC 15417). */
const inA = (text: string) => [...text].map((char) => char.charCodeAt(0) - 32);
/** Code set B: space to DEL are values 0 to 95. */
const inB = inA;
/** Code set C: pairs of digits. */
const inC = (digits: string) => (digits.match(/\d\d/g) ?? []).map(Number);

test('the pattern table keeps the rules of ISO/IEC 15417', () => {
  expect(patterns).toHaveLength(107);
  expect(new Set(patterns).size).toBe(107);
  for (const pattern of patterns.slice(0, stopValue)) {
    const widths = [...pattern].map(Number);
    const dark = widths.filter((_, i) => i % 2 === 0).reduce((sum, width) => sum + width, 0);
    expect(widths.reduce((sum, width) => sum + width, 0)).toBe(11);
    expect(dark % 2).toBe(0);
  }
});

/**
 * Worked check characters, each with the sum its source gives.
 * "MOD 13" and "1046 MOD 13" in one widely copied page are misprints of mod 103 and 1406.
 */
const published = [
  {
    name: 'A: PJJ123C',
    symbols: [start.A, ...inA('PJJ123C')],
    sum: 878,
    check: 54,
    source: 'Wikipedia, "Code 128", check digit calculation',
  },
  {
    name: 'A: ABCDEF',
    symbols: [start.A, ...inA('ABCDEF')],
    sum: 866,
    check: 42,
    source: 'Barcode Resource, figure "Code 128 check character"',
  },
  {
    name: 'B: abcdef',
    symbols: [start.B, ...inB('abcdef')],
    sum: 1539,
    check: 97,
    source: 'Barcode Resource, figure "Code 128 check character"',
  },
  {
    name: 'C: 345678',
    symbols: [start.C, ...inC('345678')],
    sum: 485,
    check: 73,
    source: 'Barcode Resource, figure "Code 128 check character"',
  },
  {
    name: 'A: HI, code C, 345678',
    symbols: [start.A, ...inA('HI'), codeC, ...inC('345678')],
    sum: 1406,
    check: 67,
    source: 'Barcode Island, "Code 128 symbology"',
  },
  {
    name: 'B: PJJ123C',
    symbols: [start.B, ...inB('PJJ123C')],
    sum: 879,
    check: 55,
    source: 'derived from the first: the same data after the other start symbol',
  },
];

test.each(published)('the bars of $name carry check symbol $check ($source)', (example) => {
  const values = valuesOf(code128BarsOfSymbols(example.symbols));
  expect(values).toEqual([...example.symbols, example.check, stopValue]);
  expect(checkSum(example.symbols)).toBe(example.sum);
  expect(example.sum % 103).toBe(example.check);
});

test.each(['26-0147', '26-0001', '99-9999', '26-10147', '07-0000'])(
  'the bars drawn for order %s carry their right check symbol',
  (number) => {
    const values = valuesOf(code128Bars(number));
    const symbols = values.slice(0, -2);
    expect(values.at(-2)).toBe(checkSum(symbols) % 103);
    expect(values.at(-1)).toBe(stopValue);
    expect(Object.values(start)).toContain(symbols[0]);
  },
);

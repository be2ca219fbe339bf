import { expect, test } from 'vitest';
import { qrMatrix } from '../../../core/papers/qr.ts';

test('an order number needs the smallest symbol, 21 modules a side (ISO/IEC 18004 version 1)', () => {
  const { size, dark } = qrMatrix('26-0147');
  expect(size).toBe(21);
  expect(dark).toHaveLength(21 * 21);
});

test('the three finder patterns stand in their corners', () => {
  const { size, dark } = qrMatrix('26-0147');
  const ring = (row: number, column: number) =>
    Array.from({ length: 7 }, (_, i) => dark[row * size + column + i]);
  for (const [row, column] of [
    [0, 0],
    [0, 14],
    [14, 0],
  ] as const)
    expect(ring(row, column)).toEqual(Array.from({ length: 7 }, () => true));
});

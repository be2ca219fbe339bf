import { describe, expect, it } from 'vitest';
import { numberFrom } from '../../renderer/parts/numbers.ts';

describe('numbers as people write them', () => {
  it.each([
    ['66', 66],
    ['28.25', 28.25],
    ['28,25', 28.25],
    ['28 1/4', 28.25],
    ['28-1/4', 28.25],
    ['1/8', 0.125],
    ['-1/8', -0.125],
    ['0', 0],
    [' 45 ', 45],
  ])('%s is read', (typed, expected) => {
    expect(numberFrom(typed)).toBe(expected);
  });

  it('knows empty from wrong', () => {
    expect(numberFrom('  ')).toBeNull();
    for (const typed of ['45#', '1/0', '28.5 1/4', '-', '4 5', '1e3']) {
      expect(numberFrom(typed), typed).toBeNaN();
    }
  });
});

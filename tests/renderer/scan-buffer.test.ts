import { describe, expect, it } from 'vitest';
import { ScanBuffer } from '../../renderer/frame/scan-buffer.ts';

function type(buffer: ScanBuffer, keys: readonly string[], gapMs: number, fromMs = 1000) {
  let last: string | null = null;
  keys.forEach((key, i) => {
    last = buffer.press(key, fromMs + i * gapMs);
  });
  return last;
}

describe('scanner bursts', () => {
  it('reads a burst that ends with Enter', () => {
    expect(type(new ScanBuffer(), [...'26-0147', 'Enter'], 8)).toBe('26-0147');
  });

  it('skips Shift inside a burst', () => {
    expect(type(new ScanBuffer(), ['Shift', ...'AB12', 'Enter'], 8)).toBe('AB12');
  });

  it('ignores a hand that types and presses Enter', () => {
    expect(type(new ScanBuffer(), [...'26-0147', 'Enter'], 120)).toBeNull();
  });

  it('forgets what was typed slowly before the burst', () => {
    const buffer = new ScanBuffer();
    type(buffer, ['g', 'b'], 300, 0);
    expect(type(buffer, [...'26-0147', 'Enter'], 8, 5000)).toBe('26-0147');
  });

  it('takes a burst of three keys for chance', () => {
    expect(type(new ScanBuffer(), [...'123', 'Enter'], 8)).toBeNull();
  });

  it('starts anew after each Enter', () => {
    const buffer = new ScanBuffer();
    type(buffer, [...'26-0147', 'Enter'], 8);
    expect(buffer.press('Enter', 1070)).toBeNull();
  });
});

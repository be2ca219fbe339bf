import { describe, expect, test } from 'vitest';
import { instantMs, minutesAfter, minutesBetween, spanText } from '../../../core/finish/instant.ts';

describe('instants', () => {
  test('count real minutes, whatever the hands of the wall do meanwhile', () => {
    // 2:00 became 3:00 in New York at 07:00 UTC on 8 March 2026.
    expect(minutesAfter('at', '2026-03-08T06:30:00Z', 60)).toBe('2026-03-08T07:30:00.000Z');
    expect(minutesBetween('2026-03-08T06:30:00Z', '2026-03-08T07:30:00.000Z')).toBe(60);
    expect(minutesBetween('2026-03-08T07:30:00Z', '2026-03-08T06:30:00Z')).toBe(-60);
  });

  test.each(['2026-03-08T06:30:00', '2026-03-08', '2026-03-08T06:30:00-05:00', 'Z', ''])(
    '"%s" is no instant in UTC and is refused under its field',
    (text) => {
      expect(() => instantMs('mixedAt', text)).toThrow(
        expect.objectContaining({
          code: 'BAD_INPUT',
          details: { mixedAt: 'This time cannot be read. Enter it again.' },
        }),
      );
    },
  );
});

test.each([
  [0, '0 min'],
  [45, '45 min'],
  [60, '1 h'],
  [150, '2 h 30 min'],
  [24 * 60, '24 h'],
  [48 * 60 - 1, '47 h 59 min'],
  [48 * 60, '2 days'],
  [72 * 60, '3 days'],
  [96 * 60 - 1, '3 days 23 h 59 min'],
  [336 * 60 + 60, '14 days 1 h'],
  [365 * 24 * 60 + 1, '365 days 1 min'],
])('%i minutes are said as "%s"', (minutes, text) => {
  expect(spanText(minutes)).toBe(text);
});

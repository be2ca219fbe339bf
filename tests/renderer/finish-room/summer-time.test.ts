import { describe, expect, test } from 'vitest';
import { clockWords } from '../../../renderer/frame/clock-strip/clock-words.ts';
import { cureLines } from '../../../renderer/screens/finish-room/cure-words.ts';
import { instantFrom } from '../../../renderer/screens/finish-room/when.ts';
import type { Clock } from '../../../shared/contract/clocks.ts';
import { inZone } from '../../core/today/in-zone.ts';

// Clocks in New York in 2026: 2:00 became 3:00 on 8 March at 07:00 UTC, and 2:00 became 1:00 again
// on 1 November at 06:00 UTC.

test.each([
  ['2026-03-08T01:30', '2026-03-08T06:30:00.000Z'],
  ['2026-03-08T03:30', '2026-03-08T07:30:00.000Z'],
  ['2026-11-01T00:30', '2026-11-01T04:30:00.000Z'],
  ['2026-11-01T02:30', '2026-11-01T07:30:00.000Z'],
])('%s on the wall is %s', (local, instant) => {
  inZone('America/New_York');
  expect(instantFrom(local)).toBe(instant);
});

describe.each([
  ['forward', '2026-03-08T04:31:00.000Z', '10 Mar 2026, 00:31'],
  ['back', '2026-10-31T04:31:00.000Z', '1 Nov 2026, 23:31'],
])('the night the clocks go %s', (_, coatedAt, strungOn) => {
  const coated = Date.parse(coatedAt);
  const hour = 60 * 60_000;
  const strung = new Date(coated + 48 * hour).toISOString();
  const cure = [{ step: 'stringAndFlex' as const, at: strung }];

  test('what is left is told in real hours, and the day since when on the wall of the shop', () => {
    inZone('America/New_York');
    expect(cureLines({ cure }, coated + 24 * hour)[0]?.text).toMatch(/ in 24 h 00 min$/);
    const [passed] = cureLines({ cure }, coated + 48 * hour);
    expect(passed).toMatchObject({ isPassed: true });
    // The year is left out in the year of the computer's own clock.
    const since = passed?.text.split(' since ')[1] ?? '';
    expect(since.replace(' 2026', '')).toBe(strungOn.replace(' 2026', ''));
  });

  test('a clock of the strip runs as long as its hours', () => {
    inZone('America/New_York');
    const clock: Clock = {
      id: 'string-and-flex o',
      kind: 'string-and-flex',
      orderId: 'o',
      batchId: null,
      label: '26-0001',
      from: coatedAt,
      until: strung,
      state: 'running',
      words: 'Safe to string and flex',
    };
    expect(clockWords(clock, coated).text).toBe('Safe to string and flex in 2 d 0 h');
    expect(clockWords(clock, coated + 47 * hour).text).toBe(
      'Safe to string and flex in 1 h 00 min',
    );
    expect(clockWords(clock, coated + 48 * hour).kind).toBe('done');
  });
});

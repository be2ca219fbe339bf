import { expect, test } from 'vitest';
import { minutesText, restAt } from '../../../renderer/screens/unpacking/rest-clock.ts';

const since = '2026-03-02T09:00:00.000Z';
const at = (time: string) => Date.parse(`2026-03-02T${time}Z`);

test.each([
  ['09:00:00.000', { minutes: 0, minutesLeft: 120, isRested: false }],
  ['09:00:30.000', { minutes: 0, minutesLeft: 120, isRested: false }],
  ['10:20:00.000', { minutes: 80, minutesLeft: 40, isRested: false }],
  ['10:59:59.999', { minutes: 119, minutesLeft: 1, isRested: false }],
  ['11:00:00.000', { minutes: 120, minutesLeft: 0, isRested: true }],
  ['18:00:00.000', { minutes: 540, minutesLeft: 0, isRested: true }],
  // Another computer's clock may be a little ahead.
  ['08:59:00.000', { minutes: 0, minutesLeft: 121, isRested: false }],
])('at %s, out of the box since 09:00', (time, expected) => {
  expect(restAt(since, at(time))).toMatchObject({
    ...expected,
    until: '2026-03-02T11:00:00.000Z',
  });
});

test.each([
  [0, '0 min'],
  [40, '40 min'],
  [65, '1 h 05 min'],
  [120, '2 h 00 min'],
])('%i minutes read %j', (minutes, text) => {
  expect(minutesText(minutes)).toBe(text);
});

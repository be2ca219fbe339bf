import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { centsFrom, dueText, moneyText, sinceText, today } from '../../renderer/parts/days.ts';

beforeEach(() => {
  // Late in the evening of a local Wednesday: the UTC day may already be the next one.
  vi.useFakeTimers({ now: new Date(2026, 10, 25, 23, 30), toFake: ['Date'] });
});
afterEach(() => {
  vi.useRealTimers();
});

describe('days', () => {
  it('counts in local days', () => {
    expect(today()).toBe('2026-11-25');
    expect(sinceText(new Date(2026, 10, 25, 0, 5).toISOString())).toBe('today');
    expect(sinceText(new Date(2026, 10, 23, 23, 59).toISOString())).toBe('2 d');
  });

  it.each([
    ['2026-11-25', 'due today'],
    ['2026-11-26', 'due tomorrow'],
    ['2026-11-27', 'due Fri'],
    ['2026-12-12', 'due 12 Dec'],
    ['2027-01-02', 'due 2 Jan 2027'],
    ['2026-11-24', '1 day late'],
    ['2026-11-20', '5 days late'],
  ])('%s reads %s', (day, text) => {
    expect(dueText(day)).toBe(text);
  });
});

describe('money', () => {
  it('is written and read back to the cent', () => {
    expect(moneyText(125000)).toBe('$1,250');
    expect(moneyText(125050)).toBe('$1,250.50');
    expect(centsFrom('$1,250.50')).toBe(125050);
    expect(centsFrom('19.99')).toBe(1999);
    expect(centsFrom('about 200')).toBeNull();
    expect(centsFrom('')).toBeNull();
  });
});

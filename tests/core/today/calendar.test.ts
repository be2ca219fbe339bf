import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../core/shop/day.ts';
import { daysBetween, daysText, dueGroup, onceDue } from '../../../core/shop/today/calendar.ts';
import { inZone } from './in-zone.ts';

// Zones whose clocks change at midnight, at 2 o'clock, by half an hour, and not at all.
const zones = ['UTC', 'America/New_York', 'America/Santiago', 'Australia/Lord_Howe', 'Asia/Tokyo'];

describe.each(zones)('in %s', (zone) => {
  test('days are counted across clock changes, leap days and the end of the year', () => {
    inZone(zone);
    expect(addDays('2026-03-07', 2)).toBe('2026-03-09');
    expect(addDays('2026-10-31', 2)).toBe('2026-11-02');
    expect(addDays('2026-12-31', 1)).toBe('2027-01-01');
    expect(addDays('2028-02-28', 1)).toBe('2028-02-29');
    expect(addDays('2027-01-01', -1)).toBe('2026-12-31');
    expect(daysBetween('2026-03-07', '2026-03-09')).toBe(2);
    expect(daysBetween('2026-09-05', '2026-09-06')).toBe(1);
    expect(daysBetween('2026-12-30', '2027-01-02')).toBe(3);
    expect(daysBetween('2027-01-02', '2026-12-30')).toBe(-3);
  });

  test('going forth and back comes to the same day', () => {
    inZone(zone);
    const day = fc
      .date({
        min: new Date('2020-01-01T00:00:00.000Z'),
        max: new Date('2040-01-01T00:00:00.000Z'),
        noInvalidDate: true,
      })
      .map((at) => at.toISOString().slice(0, 10));
    fc.assert(
      fc.property(day, fc.integer({ min: -800, max: 800 }), (from, days) => {
        const to = addDays(from, days);
        expect(daysBetween(from, to)).toBe(days);
        expect(addDays(to, -days)).toBe(from);
      }),
    );
  });
});

test.each([
  ['2026-12-29', 'late'],
  ['2026-12-30', 'today'],
  ['2026-12-31', 'soon'],
  ['2027-01-06', 'soon'],
  ['2027-01-07', null],
])('on 30 December something due on %s is %s', (dueOn, group) => {
  expect(dueGroup(dueOn, '2026-12-30')).toBe(group);
});

test('what is asked for once its day has come is silent before', () => {
  expect(onceDue('2026-12-31', '2026-12-30')).toBeNull();
  expect(onceDue('2026-12-30', '2026-12-30')).toBe('today');
  expect(onceDue('2026-12-29', '2026-12-30')).toBe('late');
});

test('one day is one day', () => {
  expect([0, 1, 2].map(daysText)).toEqual(['0 days', '1 day', '2 days']);
});

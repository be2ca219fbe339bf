import { expect, test } from 'vitest';
import {
  arrivalFieldsOf,
  blankArrival,
  clashesOf,
  isUnsaved,
  thingsFrom,
  usualReasons,
  writtenText,
} from '../../../renderer/screens/unpacking/arrival-fields.ts';
import { contract } from '../../../shared/contract/index.ts';
import { z } from '../../../shared/zod.ts';

test('an untouched table is one the contract takes, opened today', () => {
  const schema = contract.arrival.record['~orpc'].inputSchema;
  if (!(schema instanceof z.ZodType)) throw new Error('record has no input');
  const input = { commandId: 'c', orderId: 'o', rowVersion: null, ...blankArrival('2026-03-02') };
  expect(schema.safeParse(input).error?.issues ?? []).toEqual([]);
});

test('a written record comes back as the fields alone', () => {
  const fields = { ...blankArrival('2026-03-02'), condition: 'Dry', braceIn: 7.25 };
  const record = {
    ...fields,
    id: 'a',
    rowVersion: 3,
    personName: 'Ben Marsh',
    completedAt: null,
    completedBy: null,
  };
  expect(arrivalFieldsOf(record, '2026-09-09')).toEqual(fields);
  expect(arrivalFieldsOf(null, '2026-09-09')).toEqual(blankArrival('2026-09-09'));
});

test('only what says something else than what is written counts as unsaved', () => {
  const stored = { ...blankArrival('2026-03-02'), condition: 'Dry' };
  expect(isUnsaved(stored, {})).toBe(false);
  expect(isUnsaved(stored, { condition: 'Dry', lookedOver: false })).toBe(false);
  expect(isUnsaved(stored, { condition: 'Damp' })).toBe(true);
  expect(isUnsaved(stored, { braceIn: Number.NaN })).toBe(true);
});

test('a field that somebody else wrote while it was typed here is told, others are not', () => {
  const base = blankArrival('2026-03-02');
  const typed = { condition: 'Dry', lookedOver: true };
  expect(clashesOf(base, base, typed)).toEqual([]);
  expect(clashesOf(base, { ...base, packaging: 'Tube' }, typed)).toEqual([]);
  expect(clashesOf(base, { ...base, ...typed }, typed)).toEqual([]);
  expect(clashesOf(base, { ...base, condition: 'Damp' }, typed)).toEqual(['condition']);
});

test.each([
  [true, 'yes'],
  [null, 'nothing'],
  ['', 'nothing'],
  [7.25, '7.25'],
  ['Damp', 'Damp'],
])('what is written as %j is read back as %j', (value, text) => {
  expect(writtenText(value)).toBe(text);
});

test.each([
  ['Arrows, a glove', ['Arrows', 'a glove']],
  ['  ', []],
  [', ,x,', ['x']],
  ['tab\there', ['tab here']],
  ['y'.repeat(300), ['y'.repeat(200)]],
])('things typed as %j', (typed, things) => {
  expect(thingsFrom(typed)).toEqual(things);
});

test('a list as long as can be typed is one the contract takes', () => {
  expect(thingsFrom('a,'.repeat(200))).toHaveLength(40);
});

test('the open stop finding is the first reason offered, and only while it is open', () => {
  expect(usualReasons(true)[0]).toBe('a stop finding is open');
  expect(usualReasons(false)).not.toContain('a stop finding is open');
});

import { expect, test } from 'vitest';
import {
  answerErrors,
  costChangeCents,
} from '../../../renderer/screens/orders/consents/answer-fields.ts';

const fields = {
  answer: 'granted',
  channel: 'phone',
  answeredAt: '2026-11-25T10:42',
  answeredBy: 'Hale Ashby',
  contact: '555 0134',
  words: 'Yes, go ahead',
  costChange: '',
} as const;

test('an answer by phone needs the number and the words; in person it does not', () => {
  expect(answerErrors(fields)).toEqual({});
  expect(Object.keys(answerErrors({ ...fields, contact: ' ', words: '' }))).toEqual([
    'contact',
    'words',
  ]);
  expect(answerErrors({ ...fields, channel: 'in-person', contact: '', words: '' })).toEqual({});
});

test('no answer is never taken for a yes', () => {
  expect(answerErrors({ ...fields, answer: null })).toHaveProperty('answer');
});

test.each([
  ['', 0],
  ['25', 2500],
  ['+25', 2500],
  ['-12.50', -1250],
  ['about ten', null],
])('a change of price typed as "%s"', (typed, cents) => {
  expect(costChangeCents(typed)).toBe(cents);
});

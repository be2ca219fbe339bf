import { expect, test } from 'vitest';
import {
  answerErrors,
  costChangeCents,
  signatureToSend,
} from '../../../renderer/screens/orders/consents/answer-fields.ts';
import { pointIn, unsigned } from '../../../renderer/screens/orders/consents/signature-fields.ts';

const fields = {
  answer: 'granted',
  channel: 'phone',
  answeredAt: '2026-11-25T10:42',
  answeredBy: 'Hale Ashby',
  contact: '555 0134',
  words: 'Yes, go ahead',
  costChange: '',
  signed: unsigned,
  attachmentId: null,
} as const;

test('an answer by phone needs the number and the words; in person it does not', () => {
  expect(answerErrors(fields)).toEqual({});
  expect(Object.keys(answerErrors({ ...fields, contact: ' ', words: '' }))).toEqual([
    'contact',
    'words',
  ]);
  const here = { ...fields, channel: 'in-person', contact: '', words: '' } as const;
  expect(Object.keys(answerErrors(here))).toEqual(['signature']);
  expect(answerErrors({ ...here, answer: 'declined' })).toEqual({});
  expect(answerErrors({ ...here, attachmentId: 'scan' })).toEqual({});
});

test('who answers yes in person signs: a line drawn or the own name typed, with the words ticked', () => {
  const here = { ...fields, channel: 'in-person' } as const;
  const drawn = {
    ...unsigned,
    strokes: [
      [
        [0.5, 0.5],
        [2, 0.9],
      ] as [number, number][],
    ],
  };
  const typed = { ...unsigned, manner: 'typed', name: ' hale ashby', agrees: true } as const;
  const errorOf = (signed: typeof unsigned) => answerErrors({ ...here, signed }).signature;
  expect(errorOf(drawn)).toContain('I sign this');
  expect(errorOf({ ...drawn, agrees: true })).toBeUndefined();
  expect(errorOf({ ...unsigned, agrees: true })).toBe('Sign in the box.');
  expect(errorOf({ ...unsigned, strokes: [[[1, 1]]], agrees: true })).toContain('A dot');
  expect(errorOf(typed)).toBeUndefined();
  expect(errorOf({ ...typed, name: 'Somebody Else' })).toContain('the name of who answers');
  expect(signatureToSend({ ...here, signed: { ...drawn, agrees: true } })).toMatchObject({
    manner: 'drawn',
    strokes: drawn.strokes,
  });
  expect(signatureToSend({ ...here, channel: 'phone', signed: typed })).toBeNull();
});

test('a pointer anywhere on the screen becomes inches inside the box', () => {
  const box = { getBoundingClientRect: () => ({ left: 100, top: 50, width: 400, height: 125 }) };
  expect(pointIn(box, { clientX: 300, clientY: 112.5 })).toEqual([2, 0.625]);
  expect(pointIn(box, { clientX: -9, clientY: 900 })).toEqual([0, 1.25]);
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

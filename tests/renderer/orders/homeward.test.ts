import { expect, test } from 'vitest';
import {
  sideStepsOf,
  stepName,
  whatSendingDoes,
} from '../../../renderer/screens/orders/next/homeward.ts';
import type { GoingHome, Stage } from '../../../shared/stages.ts';
import { cardWith, hold } from '../board/cards.ts';

const steps = (stage: Stage, goingHome: GoingHome | null, isOffice = true) =>
  sideStepsOf({ stage, goingHome }, isOffice);

test('a request is cancelled, a bow that is here is sent home', () => {
  expect(steps('requested', null)).toEqual(['cancel']);
  expect(steps('in-mail', null)).toEqual(['cancel']);
  expect(steps('arrived', null)).toEqual(['send-home']);
  expect(steps('packed', null)).toEqual(['send-home']);
});

test('only what goes home or was cancelled is taken up again', () => {
  expect(steps('cure', 'broken')).toEqual(['take-up']);
  expect(steps('requested', 'declined')).toEqual(['take-up', 'cancel']);
  expect(steps('cancelled', null)).toEqual(['take-up']);
  expect(steps('shipped', null)).toEqual([]);
  expect(steps('collected', 'declined')).toEqual([]);
});

test('the bench sends home and does nothing else of this', () => {
  expect(steps('arrived', null, false)).toEqual(['send-home']);
  expect(steps('arrived', 'refused', false)).toEqual([]);
  expect(steps('requested', null, false)).toEqual([]);
  expect(steps('cancelled', null, false)).toEqual([]);
});

test('a bow packed on its way home is named so', () => {
  expect(stepName('packed', 'refused')).toBe('Packed, going home');
  expect(stepName('packed', null)).toBe('Packed');
  expect(stepName('shipped', 'refused')).toBe('Shipped');
});

test('what happens names the hold and the tag only where there are some', () => {
  const plain = whatSendingDoes(cardWith({ stage: 'arrived' }), 'declined');
  expect(plain[0]).toBe(
    'It stays in Arrived; next it is packed and sent by parcel. The rest of the work is left out.',
  );
  expect(plain.join(' ')).not.toMatch(/hold|DO NOT/);
  const held = whatSendingDoes(cardWith({ stage: 'arrived', hold, openStops: 1 }), 'declined');
  expect(held).toContain('The hold is released.');
  expect(held).toContain('The return tag says DO NOT STRING OR DRAW.');
  expect(whatSendingDoes(cardWith({ stage: 'cure' }), 'broken')).toContain(
    'The return tag says DO NOT STRING OR DRAW.',
  );
  expect(
    whatSendingDoes(
      cardWith({ stage: 'packed', route: ['arrived', 'packed', 'collected'] }),
      null,
    )[0],
  ).toBe('It stays packed until it is collected over the counter.');
});

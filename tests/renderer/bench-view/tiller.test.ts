import { expect, it } from 'vitest';
import {
  type TillerEntry,
  tillerReadText,
  waitingField,
} from '../../../renderer/screens/bench-view/tiller-entry.ts';
import { tillerAdvice, tillerSaid } from '../../../renderer/screens/bench-view/tiller-words.ts';

it('says which limb is too strong for the tiller that is wanted', () => {
  expect(tillerAdvice(0, 0.125)).toEqual({ said: 'upper strong 1/8 in', more: 'more from upper' });
  expect(tillerAdvice(0.25, 0.125)).toEqual({
    said: 'lower strong 1/8 in',
    more: 'more from lower',
  });
  expect(tillerAdvice(-0.0625, -0.125).more).toBe('more from lower');
  expect(tillerAdvice(0.13, 0.125)).toEqual({ said: 'as wanted', more: null });
});

it('reads a tiller in thirty-seconds', () => {
  expect(tillerSaid(0.15625)).toBe('Upper 5/32 in more');
  expect(tillerSaid(-0.125)).toBe('Upper 1/8 in less');
  expect(tillerSaid(0)).toBe('Even');
});

const entry: TillerEntry = {
  tillerIn: 0.125,
  isTaken: false,
  upperTrack: null,
  lowerTrack: null,
  isReading: false,
};

it('asks for the number, then the upper and the lower track', () => {
  expect(waitingField(entry)).toBe('tiller');
  expect(waitingField({ ...entry, isTaken: true })).toBe('upperTrack');
  const upper = { ...entry, isTaken: true, upperTrack: 'left' } as const;
  expect(waitingField(upper)).toBe('lowerTrack');
  expect(waitingField({ ...upper, lowerTrack: 'centre' })).toBe('done');
  expect(tillerReadText({ ...upper, lowerTrack: 'centre' })).toBe(
    'Upper 1/8 in more than lower. String left of the middle on the upper, in the middle on the lower limb.',
  );
});

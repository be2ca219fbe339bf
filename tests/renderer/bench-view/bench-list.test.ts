import { expect, it } from 'vitest';
import { bowsToChoose } from '../../../renderer/screens/bench-view/bench-list.ts';
import { cardWith } from '../board/cards.ts';

const cards = [
  cardWith({ number: '26-0150', stage: 'agreed' }),
  cardWith({ number: '26-0147', stage: 'weight-work' }),
  cardWith({ number: '26-0014', stage: 'strip-sand' }),
  cardWith({ number: '26-0247', stage: 'finish' }),
];
const numbers = (digits: string) => bowsToChoose(cards, digits).map(({ number }) => number);

it('lists what is on the bench first, then what comes next, and nothing else', () => {
  expect(numbers('')).toEqual(['26-0014', '26-0147', '26-0150']);
});

it('finds a number by its last digits, wherever the bow stands', () => {
  expect(numbers('147')).toEqual(['26-0147']);
  expect(numbers('14')).toEqual(['26-0014']);
  expect(numbers('47')).toEqual(['26-0147', '26-0247']);
  expect(numbers('260247')).toEqual(['26-0247']);
  expect(numbers('26-0247')).toEqual(['26-0247']);
  expect(numbers('999')).toEqual([]);
});

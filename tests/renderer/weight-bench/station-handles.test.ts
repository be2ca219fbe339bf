import { expect, test } from 'vitest';
import {
  handlePx,
  haveRoom,
  type StationHandle,
} from '../../../renderer/parts/limb-drawing/station-handles.ts';
import { stationText } from '../../../renderer/screens/weight-bench/limb-places.ts';

const lengthIn = 26;
const handlesAt = (places: readonly number[]): StationHandle[] =>
  places.map((fromFadeIn) => ({
    fromFadeIn,
    text: stationText(fromFadeIn),
    label: '',
    isChosen: false,
  }));
const every = (stepIn: number) =>
  handlesAt(Array.from({ length: Math.floor(lengthIn / stepIn) + 1 }, (_, i) => i * stepIn));

test('stations every three or four inches have a button each, one that holds its text', () => {
  expect(haveRoom(every(4), lengthIn)).toBe(true);
  expect(haveRoom(every(3), lengthIn)).toBe(true);
  const [wide] = handlesAt([12.6875]);
  expect(wide?.text).toBe('12 11/16');
  expect(wide === undefined ? 0 : handlePx(wide)).toBeGreaterThan(70);
});

test('closer ones, or two that are close, are chosen from a list', () => {
  expect(haveRoom(every(0.65), lengthIn)).toBe(false);
  expect(haveRoom(handlesAt([0, 4, 8, 12, 13, 16, 20, 26]), lengthIn)).toBe(false);
});

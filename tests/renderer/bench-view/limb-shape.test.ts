import { expect, it } from 'vitest';
import { drawing, limbShape } from '../../../renderer/screens/bench-view/limb-shape.ts';

const plain = { offLeftIn: 0, offRightIn: 0 };
const stations = [
  { fromFadeIn: 12, widthNowIn: 0.9, offLeftIn: 1 / 64, offRightIn: 1 / 64 },
  { fromFadeIn: 0, widthNowIn: 1.25, ...plain },
  { fromFadeIn: 24, widthNowIn: 0.5, ...plain },
];
const scale = { lengthIn: 24, widestIn: 1.25, deepestIn: 1 / 64 };

it('lies with the fade to the left and both edges cut inwards', () => {
  const shape = limbShape(stations, scale);
  expect(shape.stations.map(({ fromFadeIn }) => fromFadeIn)).toEqual([0, 12, 24]);
  expect(shape.stations.map(({ x }) => x)).toEqual([24, 500, 976]);
  expect(shape.cuts).toHaveLength(2);
  const [first, middle] = shape.stations;
  expect(first === undefined ? 0 : first.bottom - first.top).toBeCloseTo(drawing.tallest);
  expect(middle === undefined ? 0 : middle.bottom - middle.top).toBeCloseTo(
    (0.9 / 1.25) * drawing.tallest,
  );
});

it('cuts one edge alone where only one comes off, and nothing where none does', () => {
  const oneSide = stations.map((station) => ({ ...station, offRightIn: 0 }));
  expect(limbShape(oneSide, scale).cuts).toHaveLength(1);
  const none = stations.map((station) => ({ ...station, ...plain }));
  expect(limbShape(none, { ...scale, deepestIn: 0 }).cuts).toEqual([]);
});

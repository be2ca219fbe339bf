import { expect, it } from 'vitest';
import {
  cutText,
  type LimbWork,
  limbSaid,
} from '../../../renderer/screens/bench-view/cut-words.ts';

const station = (fromFadeIn: number, offLeftIn: number, offRightIn = offLeftIn) => ({
  fromFadeIn,
  widthNowIn: 1.2,
  offLeftIn,
  offRightIn,
});
const work = (cuts: LimbWork['cuts'], bellyThou = 0, backThou = 0): LimbWork => ({
  limb: 'upper',
  cuts,
  bellyThou,
  backThou,
});

it('gives a cut both ways and where it is full and blended', () => {
  const said = limbSaid(
    work([station(0, 0), station(4, 1 / 128), station(6, 1 / 64), station(14, 1 / 64)]),
  );
  expect(said).toEqual({
    limb: 'upper',
    title: 'Upper limb, both edges',
    big: '1/64 in per side',
    total: '1/32 in total',
    where: 'full from 6 to 14 in from the fade, blended out over 4 to 14 in',
  });
});

it('names the edge where one alone is cut, and both where they differ', () => {
  expect(limbSaid(work([station(6, 1 / 64, 0)]))).toMatchObject({
    title: 'Upper limb, left edge only',
    big: '1/64 in on the left',
    total: '1/64 in total',
  });
  expect(limbSaid(work([station(6, 1 / 64, 1 / 32)]))).toMatchObject({
    big: '1/64 in left, 1/32 in right',
    total: '3/64 in total',
  });
});

it('names the face where thickness comes off', () => {
  expect(limbSaid(work([], 1, 1))).toMatchObject({
    title: 'Upper limb, both faces',
    big: '1 thou per face',
    total: '2 thou total',
  });
  expect(limbSaid(work([], 2))).toMatchObject({ big: '2 thou off the belly', total: null });
  expect(limbSaid(work([station(6, 0)]))).toMatchObject({ big: 'Nothing', total: null });
});

it('says a cut for the rule, or as it was given where no rule shows it', () => {
  expect(cutText(1 / 64)).toBe('1/64 in');
  expect(cutText(0.0313)).toBe('1/32 in');
  expect(cutText(0.02)).toBe('0.020 in');
});

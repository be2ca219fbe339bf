import { describe, expect, test } from 'vitest';
import { type Knot, monotoneCubic } from '../../../core/limb/monotone-cubic.ts';
import { seededRandom } from '../../support/random.ts';

const knotsOf = (xs: readonly number[], f: (x: number) => number): Knot[] =>
  xs.map((x) => ({ x, y: f(x) }));
const uneven = [0, 0.4, 1.5, 1.75, 3, 5, 5.5];
const between = (from: number, to: number, count: number) =>
  Array.from({ length: count + 1 }, (_, i) => from + ((to - from) * i) / count);

/** Rising data with steps of any size, level stretches among them. */
function randomRising(seed: number): Knot[] {
  const random = seededRandom(seed);
  const count = 2 + Math.floor(random() * 10);
  let [x, y] = [random() * 10, random() * 5];
  return Array.from({ length: count }, () => {
    x += 0.01 + random() ** 3 * 5;
    y += random() < 0.2 ? 0 : random() ** 4 * 20;
    return { x, y };
  });
}

test('passes through its knots', () => {
  for (let seed = 1; seed <= 500; seed += 1) {
    const knots = randomRising(seed);
    const curve = monotoneCubic(knots);
    for (const { x, y } of knots) expect(Math.abs(curve.at(x) - y)).toBeLessThan(1e-12);
  }
});

test('a straight line comes back exactly, its slope and area too', () => {
  const curve = monotoneCubic(knotsOf(uneven, (x) => 3 - 2 * x));
  for (const x of between(0, 5.5, 100)) {
    expect(curve.at(x)).toBeCloseTo(3 - 2 * x, 12);
    expect(curve.slopeAt(x)).toBeCloseTo(-2, 12);
    expect(curve.integralTo(x)).toBeCloseTo(3 * x - x * x, 12);
  }
});

test('two knots give the straight line between them', () => {
  const curve = monotoneCubic([
    { x: 2, y: 1 },
    { x: 4, y: 5 },
  ]);
  expect(curve.at(3)).toBeCloseTo(3, 14);
  expect(curve.slopeAt(2.1)).toBeCloseTo(2, 14);
  expect(curve.integralTo(4)).toBeCloseTo(6, 14);
});

test('a monotone parabola comes back exactly, its slope and area too', () => {
  const even = between(0, 5, 10);
  const curve = monotoneCubic(knotsOf(even, (x) => 1 + x + 0.7 * x * x));
  for (const x of between(0, 5, 100)) {
    expect(curve.at(x)).toBeCloseTo(1 + x + 0.7 * x * x, 11);
    expect(curve.slopeAt(x)).toBeCloseTo(1 + 1.4 * x, 11);
    expect(curve.integralTo(x)).toBeCloseTo(x + x ** 2 / 2 + (0.7 * x ** 3) / 3, 11);
  }
});

test('smooth data: halving the spacing shows an order of at least 2.9, in value and area', () => {
  const errors = (count: number) => {
    const curve = monotoneCubic(knotsOf(between(0, 2, count), Math.exp));
    const misses = between(0, 2, 997).map((x) => Math.abs(curve.at(x) - Math.exp(x)));
    return { value: Math.max(...misses), area: Math.abs(curve.integralTo(2) - Math.exp(2) + 1) };
  };
  const [coarse, fine] = [errors(40), errors(80)];
  expect(Math.log2(coarse.value / fine.value)).toBeGreaterThan(2.9);
  expect(Math.log2(coarse.area / fine.area)).toBeGreaterThan(2.9);
});

test('no overshoot on 500 sets of random rising data, upright and mirrored', () => {
  for (let seed = 1; seed <= 500; seed += 1) {
    const rising = randomRising(seed);
    for (const sign of [1, -1]) {
      const curve = monotoneCubic(rising.map(({ x, y }) => ({ x, y: sign * y })));
      const xs = between(curve.fromX, curve.toX, 400).map((x) => Math.min(x, curve.toX));
      const values = xs.map((x) => sign * curve.at(x));
      const falls = values.slice(1).map((value, i) => (values[i] ?? Number.NaN) - value);
      expect(Math.max(...falls), `seed ${seed}`).toBeLessThan(1e-12);
    }
  }
});

test('data that turn: no overshoot past the turning point', () => {
  const curve = monotoneCubic([
    { x: 0, y: 0 },
    { x: 1, y: 4 },
    { x: 2, y: 5 },
    { x: 4, y: 1 },
  ]);
  for (const x of between(0, 4, 400)) expect(curve.at(x)).toBeLessThanOrEqual(5);
  expect(curve.slopeAt(2)).toBe(0);
});

test('slope and area belong to the curve: differences agree', () => {
  for (let seed = 1; seed <= 50; seed += 1) {
    const curve = monotoneCubic(randomRising(seed));
    const h = (curve.toX - curve.fromX) * 1e-6;
    for (const x of between(curve.fromX + 2 * h, curve.toX - 2 * h, 37)) {
      const scale = 1 + Math.abs(curve.slopeAt(x));
      const slope = (curve.at(x + h) - curve.at(x - h)) / (2 * h);
      expect(Math.abs(slope - curve.slopeAt(x)) / scale).toBeLessThan(1e-3);
      const value = (curve.integralTo(x + h) - curve.integralTo(x - h)) / (2 * h);
      expect(Math.abs(value - curve.at(x)) / (1 + curve.at(x))).toBeLessThan(1e-4);
    }
  }
});

describe('what cannot be is said by name', () => {
  const line = knotsOf([0, 1], (x) => x);
  test.each<[string, readonly Knot[], string]>([
    ['one point', line.slice(0, 1), 'at least two points'],
    ['out of order', [...line, { x: 1, y: 2 }], 'Point 3 at 1 does not lie past'],
    ['not a number', [...line, { x: 2, y: Number.NaN }], 'Point 3 is not a number'],
  ])('%s', (_, knots, sentence) => {
    expect(() => monotoneCubic(knots)).toThrow(sentence);
  });

  test.each([-0.1, 1.1, Number.NaN])('asked at %d', (x) => {
    const curve = monotoneCubic(line);
    for (const ask of [curve.at, curve.slopeAt, curve.integralTo]) {
      expect(() => ask(x)).toThrow('outside the points');
    }
  });
});

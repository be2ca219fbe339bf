import fc from 'fast-check';
import { expect, test } from 'vitest';
import { type StripFacts, weightStrip } from '../../shared/weight-strip.ts';

const nothing: StripFacts = {
  arrivalLbf: null,
  nowLbf: null,
  targetLbf: null,
  stopBandLbf: null,
  forecastLbf: null,
};

test('a job in the middle of its weight work', () => {
  const strip = weightStrip({
    arrivalLbf: 52,
    nowLbf: 47.8,
    targetLbf: 45,
    stopBandLbf: [46, 47],
    forecastLbf: [46, 46.5, 47],
  });
  expect([strip.minLbf, strip.maxLbf]).toEqual([44, 53]);
  expect(strip.marks).toEqual([
    { kind: 'forecast', at: 2 / 9, mid: 2.5 / 9, to: 3 / 9 },
    { kind: 'stop-band', at: 2 / 9, to: 3 / 9 },
    { kind: 'target', at: 1 / 9 },
    { kind: 'arrival', at: 8 / 9 },
    { kind: 'now', at: expect.closeTo(3.8 / 9, 12) },
  ]);
  expect(strip.ticks).toHaveLength(10);
  expect(strip.text).toBe(
    'arrived 52, now 47.8, forecast 46.5 (46 to 47), stop at 46 to 47, target 45 lb',
  );
});

test('the words leave out what is not known', () => {
  const facts = { ...nothing, arrivalLbf: 52, nowLbf: 47.8, targetLbf: 45 };
  expect(weightStrip(facts).text).toBe('arrived 52, now 47.8, target 45 lb');
  expect(weightStrip({ ...nothing, targetLbf: 45 }).text).toBe('not weighed yet, target 45 lb');
});

test('nothing known: a scale without marks', () => {
  const strip = weightStrip(nothing);
  expect(strip).toMatchObject({ minLbf: 40, maxLbf: 50, marks: [], text: 'not weighed yet' });
  expect(strip.ticks).toHaveLength(11);
});

test('equal weights stand in the middle of a scale with room', () => {
  const strip = weightStrip({ ...nothing, arrivalLbf: 45, nowLbf: 45, targetLbf: 45 });
  expect([strip.minLbf, strip.maxLbf]).toEqual([44, 46]);
  for (const mark of strip.marks) expect(mark.at).toBe(0.5);
});

test('a band given heavy end first is turned, a weight that is no number is left out', () => {
  const strip = weightStrip({
    ...nothing,
    nowLbf: Number.NaN,
    stopBandLbf: [47, 46],
    forecastLbf: [47, 46, 45],
    targetLbf: Number.POSITIVE_INFINITY,
  });
  expect(strip.text).toBe('not weighed yet, forecast 46 (45 to 47), stop at 46 to 47 lb');
  expect(strip.marks.map((mark) => mark.kind)).toEqual(['forecast', 'stop-band']);
});

const weight = fc.double({ min: -50, max: 2000, noNaN: true });
const maybe = <T>(value: fc.Arbitrary<T>) => fc.option(value, { nil: null });

test('whatever the weights, marks and ticks stay on the scale', () => {
  fc.assert(
    fc.property(
      fc.record({
        arrivalLbf: maybe(weight),
        nowLbf: maybe(weight),
        targetLbf: maybe(weight),
        stopBandLbf: maybe(fc.tuple(weight, weight)),
        forecastLbf: maybe(fc.tuple(weight, weight, weight)),
      }),
      (facts) => {
        const strip = weightStrip(facts);
        const places = strip.marks.flatMap(({ at, mid = at, to = mid }) => [at, mid, to]);
        for (const place of [...places, ...strip.ticks]) {
          expect(place).toBeGreaterThanOrEqual(0);
          expect(place).toBeLessThanOrEqual(1);
        }
        for (const { at, mid = at, to = mid } of strip.marks)
          expect(at <= mid && mid <= to).toBe(true);
        expect(strip.ticks.length).toBeGreaterThan(0);
        expect(strip.ticks.length).toBeLessThanOrEqual(21);
      },
    ),
  );
});

import fc from 'fast-check';
import { expect, test } from 'vitest';
import { sessionWeights } from '../../../core/shop/readings/weights.ts';
import {
  givenPulls,
  liveWeights,
} from '../../../renderer/screens/orders/weighings/live-weights.ts';

const pull = fc.record({
  drawIn: fc.constantFrom(26, 27, 27.5, 28),
  forceLbf: fc.double({ min: 1, max: 120, noNaN: true }),
});
const reference = fc.constantFrom('amo' as const, 'to-back' as const, 'unknown' as const);

test('the average shown while weighing is the one the core will record', () => {
  fc.assert(
    fc.property(
      fc.array(pull, { maxLength: 12 }),
      fc.double({ min: -2, max: 2, noNaN: true }),
      reference,
      (pulls, zero, ref) => {
        const net = pulls.map((one) => ({ ...one, forceLbf: one.forceLbf - zero }));
        const recorded = sessionWeights(net, ref).map(({ drawIn, pulls: count, text }) => ({
          drawIn,
          pulls: count,
          text,
        }));
        expect(liveWeights(pulls, zero, ref)).toEqual(recorded);
      },
    ),
  );
});

test('the first pull that was made is dropped, not the first empty row', () => {
  const rows = [
    { key: 0, drawIn: 28, forceLbf: null },
    { key: 1, drawIn: 28, forceLbf: 53 },
    { key: 2, drawIn: 28, forceLbf: 52 },
    { key: 3, drawIn: 28, forceLbf: 52.2 },
    { key: 4, drawIn: 28, forceLbf: Number.NaN },
  ];
  expect(liveWeights(givenPulls(rows), 0, 'amo')).toEqual([
    { drawIn: 28, pulls: 2, text: '52.1# @ 28"' },
  ]);
});

test('a draw that was not measured to AMO never reads like a weight at 28 in', () => {
  const pulls = [
    { drawIn: 28, forceLbf: 53 },
    { drawIn: 28, forceLbf: 52 },
  ];
  expect(liveWeights(pulls, 0, 'to-back')[0]?.text).toBe('52# @ 28" to the back');
});

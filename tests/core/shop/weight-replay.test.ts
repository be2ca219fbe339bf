import { expect, test } from 'vitest';
import { weightSdLbf } from '../../../core/limb/index.ts';
import {
  openSurpriseOf,
  replayWeights,
  type WeightRows,
} from '../../../core/shop/bench/weight-replay.ts';
import {
  minute,
  oneBite,
  planRow,
  readingRow,
  removalRow,
  surpriseRow,
} from '../../support/weight-rows.ts';

const replay = (rows: WeightRows) => replayWeights(planRow, rows);

test('a job is followed from the weighing of its plan over bite and weighing', () => {
  const { state, readings, removals, known, weighedSinceRemoval } = replay(oneBite);
  expect(readings.map(({ id, expectedLbf }) => [id, expectedLbf])).toEqual([
    ['arrival', null],
    ['first', expect.closeTo(52 * 0.96, 9)],
  ]);
  expect(removals.map(({ id }) => id)).toEqual(['bite']);
  expect({ known, weighedSinceRemoval }).toEqual({ known: true, weighedSinceRemoval: true });
  expect(state.weightLbf).toBeGreaterThan(49.9);
  expect(state.weightLbf).toBeLessThan(52 * 0.96);
  // A check that showed 0.2 lb leaves 0.2 / sqrt 3 (even spread), whatever is weighed.
  expect(state.scaleSdLbf).toBeCloseTo(0.2 / Math.sqrt(3), 9);
  expect(weightSdLbf(state)).toBeGreaterThan(state.scaleSdLbf);
});

test('rows count by their time, whatever their order in the list', () => {
  const rows = {
    ...oneBite,
    readings: oneBite.readings.toReversed(),
    removals: [removalRow('later', 40, 0.01), ...oneBite.removals],
  };
  const { state, weighedSinceRemoval } = replay(rows);
  const inOrder = replay({ ...oneBite, removals: rows.removals.toReversed() });
  expect(state).toEqual(inOrder.state);
  expect(weighedSinceRemoval).toBe(false);
});

test('what was struck out, done before the plan, or pulled to another draw has no say', () => {
  const struck = { struck_reason: 'wrong bow' };
  const rows: WeightRows = {
    ...oneBite,
    readings: [
      ...oneBite.readings,
      readingRow('struck', 31, 40, struck),
      readingRow('before the plan', 5, 40),
      readingRow('to the back', 32, 40, { draw_reference: 'to-back' }),
      readingRow('short', 33, 40, { pulls: [1, 2, 3].map(() => ({ drawIn: 26, forceLbf: 40 })) }),
    ],
    removals: [
      ...oneBite.removals,
      removalRow('struck bite', 21, 0.2, struck),
      removalRow('before the plan', 4, 0.2),
      removalRow('only planned', 22, 0.2, { done_at: null }),
    ],
  };
  expect(replay(rows)).toEqual(replay(oneBite));
});

test('a removal of unknown amount is weighed before anything is known again', () => {
  const noted = { ...oneBite, removals: [...oneBite.removals, removalRow('noted', 40, null)] };
  expect(replay(noted)).toMatchObject({ known: false, weighedSinceRemoval: false });
  const weighed = { ...noted, readings: [...noted.readings, readingRow('after', 50, 46)] };
  const { state, known, readings } = replay(weighed);
  expect(known).toBe(true);
  expect(state.weightLbf).toBe(46);
  expect(readings.at(-1)).toMatchObject({ id: 'after', expectedLbf: null, innovation: null });
  expect(openSurpriseOf(weighed)).toBeNull();
});

test('a reading far from its forecast asks until it is answered, struck out, or cut on', () => {
  const odd = { ...oneBite, readings: [...oneBite.readings, readingRow('odd', 35, 47)] };
  const open = openSurpriseOf(odd);
  expect(open).toMatchObject({ readingId: 'odd', readLbf: 47 });
  expect(open?.innovationSe).toBeLessThan(-3);
  expect(open?.expectedLbf).toBeCloseTo(replay(oneBite).state.weightLbf, 9);

  expect(openSurpriseOf({ ...odd, surprises: [surpriseRow('odd')] })).toBeNull();
  const undone = surpriseRow('odd', { struck_reason: 'answered for another bow' });
  expect(openSurpriseOf({ ...odd, surprises: [undone] })?.readingId).toBe('odd');
  expect(openSurpriseOf({ ...odd, surprises: [surpriseRow('first')] })?.readingId).toBe('odd');
  const struck = odd.readings.map((row) =>
    row.id === 'odd' ? { ...row, struck_reason: 'string slipped' } : row,
  );
  expect(openSurpriseOf({ ...odd, readings: struck })).toBeNull();
  const cut = { ...odd, removals: [...odd.removals, removalRow('next', 40, 0.01)] };
  expect(openSurpriseOf(cut)).toBeNull();
  expect(openSurpriseOf({ ...odd, plan: null })).toBeNull();
});

test('a plan whose weighing is gone starts from its own figures', () => {
  const { state, readings } = replay({ ...oneBite, readings: [], removals: [] });
  expect(readings).toEqual([]);
  expect(state).toMatchObject({ weightLbf: 52, weightVarLbf2: 0.3 ** 2, scaleSdLbf: 0 });
  expect(minute(10)).toBe(planRow.accepted_at);
});

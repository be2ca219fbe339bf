import { expect, test } from 'vitest';
import type { LimbProfile } from '../../../../core/limb/limb-profile.ts';
import { nothingTaken } from '../../../../core/limb/removal.ts';
import { weighingSd } from '../../../../core/limb/workdown/spread.ts';
import { JobWorld, slopesOf } from '../../../../demo-data/simulated/job-world.ts';
import { seededRandom } from '../../../support/random.ts';
import { simulatedJob } from '../../../support/simulated-job.ts';
import { bars, countOf, missedBars } from '../../../support/simulated-job-count.ts';
import { naiveJob } from '../../../support/simulated-job-naive.ts';
import { plannedJob } from '../../../support/simulated-job-planned.ts';

const jobs = 80;

/** `npm run bench -- workdown` counts 5,000 of them. */
test('simulated jobs end where they should, and the naive habit does not', () => {
  const planned = [];
  const naive = [];
  for (let seed = 0; seed < jobs; seed += 1) {
    const job = simulatedJob(seed);
    planned.push(plannedJob(job));
    naive.push(naiveJob(job));
  }
  const count = countOf(planned);
  expect(missedBars(count)).toEqual([]);
  expect(count.medianWeighings).toBeLessThanOrEqual(7);
  const habit = countOf(naive);
  expect(habit.withinPound).toBeLessThan(bars.withinPound);
  expect(habit.tiller).toBeLessThan(bars.tiller);
}, 120_000);

test('a job is the same job whenever it is run', () => {
  const [one, two] = [plannedJob(simulatedJob(7)), plannedJob(simulatedJob(7))];
  expect(one).toEqual(two);
});

const rootMeanSquare = (values: readonly number[]) =>
  Math.sqrt(values.reduce((sum, value) => sum + value ** 2, 0) / values.length);

/** With 4,000 readings a standard deviation is known to 1.1 %; four such are allowed. */
test('readings of one bow spread as its bench does, about the weight and the bias of the scale', () => {
  const { bow } = simulatedJob(1);
  const world = new JobWorld(bow, seededRandom(2));
  const { perDrawIn, perBraceIn } = slopesOf(bow.truth);
  const { sessionLbf } = weighingSd({
    resolutionLbf: 0,
    checkSdLbf: 0.15,
    perPullSdLbf: Math.hypot(0.15, (perDrawIn * bow.arrivalLbf) / 32),
    pulls: 3,
    drawSdIn: 1 / 16,
    slopeLbfPerIn: perDrawIn * bow.arrivalLbf,
    braceSdIn: 1 / 16,
    braceLbfPerIn: perBraceIn * bow.arrivalLbf,
  });
  const readings = Array.from({ length: 4000 }, () => world.weigh());
  const mean = readings.reduce((sum, reading) => sum + reading, 0) / readings.length;
  const spread = rootMeanSquare(readings.map((reading) => reading - mean));
  expect(Math.abs(spread / sessionLbf - 1)).toBeLessThan(0.045);
  expect(Math.abs(mean - bow.arrivalLbf)).toBeLessThan(4 * 0.15);
  expect(Math.abs(mean - bow.arrivalLbf)).toBeGreaterThan(0.01);
  expect(world.weighings).toBe(4000);
});

test('a cut misses its line by a hundredth a side and a calliper reads to five thousandths', () => {
  const { bow } = simulatedJob(1);
  const cuts = bow.placesIn.map((fromFadeIn, i) => {
    const sideIn = i >= 2 && i <= 5 ? 0.05 : 0;
    return { fromFadeIn, leftIn: sideIn, rightIn: sideIn };
  });
  const misses: number[] = [];
  const readings: number[] = [];
  for (let seed = 0; seed < 40; seed += 1) {
    const world = new JobWorld(bow, seededRandom(seed));
    const limb = { ...nothingTaken, cuts };
    world.cut({ upper: limb, lower: limb });
    const read = world.widthsIn();
    for (const name of ['upper', 'lower'] as const) {
      for (const [i, place] of bow.placesIn.entries()) {
        const at = (profile: LimbProfile) =>
          profile.stations.find(({ fromFadeIn }) => fromFadeIn === place)?.bellyWidthIn ?? 0;
        const [before, after] = [bow.truth, world.truth].map((one) => at(one[name].profile));
        if (before === undefined || after === undefined) throw new Error('no such place');
        if (i >= 2 && i <= 5) misses.push(before - after - 0.1);
        readings.push((read[name][i] ?? 0) - after);
      }
    }
  }
  // 320 misses know their spread to 4 %, 640 readings to 3 %; four such are allowed.
  expect(Math.abs(rootMeanSquare(misses) / (0.01 * Math.SQRT2) - 1)).toBeLessThan(0.16);
  expect(Math.abs(rootMeanSquare(readings) / 0.005 - 1)).toBeLessThan(0.12);
});

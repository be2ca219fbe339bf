import { refuseField } from '../../shared/errors.ts';
import { decimal, weightAtDraw } from '../../shared/measure.ts';

export interface ForceReading {
  /** AMO, inches. */
  drawIn: number;
  forceLbf: number;
}

export const longestDrawIn = 60;

export const inches = (lengthIn: number) => `${decimal(lengthIn, 4)} in`;

function refuseOdd(readings: readonly ForceReading[]): void {
  if (readings.length === 0) refuseField('readings', 'Weigh the bow at one draw length at least.');
  for (const { drawIn, forceLbf } of readings) {
    if (!(drawIn > 0 && drawIn <= longestDrawIn)) {
      refuseField(
        'readings',
        `A draw length must lie between 0 and ${longestDrawIn} in, not ${drawIn}.`,
      );
    }
    if (!(forceLbf > 0 && Number.isFinite(forceLbf))) {
      refuseField('readings', `The weight at ${inches(drawIn)} must be over 0 lb.`);
    }
  }
}

/** Repeats at one draw averaged, shortest draw first. */
function averaged(readings: readonly ForceReading[]): ForceReading[] {
  return [...Map.groupBy(readings, ({ drawIn }) => drawIn)]
    .sort(([a], [b]) => a - b)
    .map(([drawIn, at]) => ({
      drawIn,
      forceLbf: at.reduce((sum, { forceLbf }) => sum + forceLbf, 0) / at.length,
    }));
}

function refuseFalling(readings: readonly ForceReading[]): void {
  for (const [i, after] of readings.entries()) {
    const before = readings[i - 1] ?? after;
    if (after.forceLbf >= before.forceLbf) continue;
    const [from, to] = [before, after].map((one) => weightAtDraw(one.forceLbf, one.drawIn));
    refuseField('readings', `The weight falls from ${from} to ${to}: weigh again at both.`);
  }
}

/**
 * Readings in order of draw, repeats at one draw averaged.
 * @throws ShopError BAD_INPUT naming a draw or weight out of bounds, or two readings that fall
 */
export function readingsInOrder(given: readonly ForceReading[]): ForceReading[] {
  refuseOdd(given);
  const readings = averaged(given);
  refuseFalling(readings);
  return readings;
}

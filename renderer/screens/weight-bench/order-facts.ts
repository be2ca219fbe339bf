import type { Reading } from '../../../shared/contract/readings.ts';
import { phaseLabels } from '../orders/words.ts';
import type { StoryWeighing } from './weight-story.ts';

type Weighed = Pick<Reading, 'phase' | 'weighedAt' | 'drawReference' | 'struckReason' | 'weights'>;

/** Weighings that count and tell the weight at this draw, AMO, oldest first. */
export function weighingsOf(readings: readonly Weighed[], drawIn: number): StoryWeighing[] {
  return readings
    .filter(({ struckReason, drawReference }) => struckReason === null && drawReference === 'amo')
    .toSorted((a, b) => a.weighedAt.localeCompare(b.weighedAt))
    .flatMap(({ phase, weights }) => {
      const there = weights.find((weight) => Math.abs(weight.drawIn - drawIn) < 1e-6);
      return there === undefined ? [] : [{ name: phaseLabels[phase], lbf: there.forceLbf }];
    });
}

import { decimal } from '../../../shared/measure.ts';
import type { Sandings } from './bite-method.ts';
import { sandingInAll } from './strokes-so-far.ts';

/** What the strokes on record say beside the allowance, one sentence each; empty without any. */
export function strokeWords({ strokes, allowance }: Pick<Sandings, 'strokes' | 'allowance'>) {
  if (strokes === null || allowance === null) return [];
  const { mean, sd } = strokes.thou;
  const took = `The strokes on record took about ${decimal(mean, 2)} ± ${decimal(sd, 2)} thou a face, by ${strokes.jobs} closed jobs of this shop`;
  const planned = `${decimal(allowance.mean, 2)} planned`;
  if (strokes.isDone) {
    const inAll = decimal(sandingInAll(allowance, strokes).mean, 2);
    return [`${took}; with the ${planned}, sanding counts as ${inAll}.`];
  }
  return mean > allowance.mean
    ? [`${took}: more than the ${planned}.`, 'Weigh it before another stroke.']
    : [`${took}, of ${planned}.`];
}

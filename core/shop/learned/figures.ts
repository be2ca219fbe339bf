import type { BenchPolicy } from '../../../shared/bench-policy.ts';
import { decimal } from '../../../shared/measure.ts';
import type { LearnedFigure, Sanding } from '../../../shared/weight-plan.ts';
import { measuredBareEffectiveness, unknownEffectiveness } from '../../limb/index.ts';
import type { ClosedJob, Construction } from './jobs.ts';
import { type Learned, priorJobs, type Spread, shrunk } from './shrink.ts';

type Teaching = Pick<
  ClosedJob,
  'construction' | 'sanding' | 'section' | 'allowanceThou' | 'effectiveness'
>;

function restsOn({ jobs }: Learned, what: string): string {
  if (jobs === 0) return `Common practice: no closed job of this shop tells yet ${what}.`;
  const count = jobs === 1 ? '1 closed job' : `${jobs} closed jobs`;
  return `Rests on ${count} of this shop ${what}, with common practice counted as ${priorJobs} jobs.`;
}

function figure(learned: Learned, unit: string, what: string): LearnedFigure {
  const text = `${decimal(learned.mean, 2)} ± ${decimal(learned.sd, 2)}${unit}`;
  return { ...learned, words: `${text}. ${restsOn(learned, what)}` };
}

export function usualAllowance(policy: BenchPolicy, sanding: Sanding): Spread {
  const { meanThou, sdThou } = policy.allowances[sanding];
  return { mean: meanThou, sd: sdThou };
}

/** What sanding takes off each face, thousandths, for bows of this construction. */
export function allowanceFrom(
  jobs: readonly Teaching[],
  of: { construction: Construction; sanding: Sanding },
  policy: BenchPolicy,
): LearnedFigure {
  const seen = jobs
    .filter((job) => job.construction === of.construction && job.sanding === of.sanding)
    .flatMap(({ allowanceThou }) => (allowanceThou === null ? [] : [allowanceThou]));
  const learned = shrunk(usualAllowance(policy, of.sanding), seen);
  return figure(learned, ' thou a face', `for ${of.sanding} on ${of.construction} bows`);
}

export function usualEffectiveness(section: ClosedJob['section']): Spread {
  return section === 'measured' ? measuredBareEffectiveness : unknownEffectiveness;
}

/** Real over modelled drop, for bows measured bare or not. */
export function effectivenessFrom(
  jobs: readonly Teaching[],
  section: ClosedJob['section'],
): LearnedFigure {
  const seen = jobs
    .filter((job) => job.section === section)
    .flatMap(({ effectiveness }) => (effectiveness === null ? [] : [effectiveness]));
  const how = section === 'measured' ? 'measured bare' : 'of unknown section';
  return figure(shrunk(usualEffectiveness(section), seen), '', `for bows ${how}`);
}

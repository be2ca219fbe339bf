import { leastStrokeJobs } from '../../../shared/weight-plan.ts';
import { abrasive } from '../../finish/grit.ts';
import { strokeWork } from '../../finish/stroke-work.ts';
import type { SandingRow } from '../../storage/tables.ts';
import { gritOfRow } from '../finish/last-grits.ts';
import type { Construction } from './jobs.ts';
import type { Spread } from './shrink.ts';

/** What a sanding must tell to be counted by its strokes. */
export type CountedSanding = Pick<
  SandingRow,
  'section' | 'substrate' | 'grit_json' | 'strokes' | 'at' | 'struck_reason'
>;

/** After the first instant, up to and with the second, ISO-8601 UTC. */
export interface Span {
  after: string;
  upTo: string;
}

const limbSections = ['upper-limb', 'lower-limb'] as const;

/** The faces that bear the weight. */
const facesAre = (substrate: CountedSanding['substrate'], construction: Construction): boolean => {
  if (construction === 'glass-laminated') return substrate === 'glass';
  if (construction === 'all-wood') return substrate === 'wood';
  return substrate !== 'overlay';
};

/**
 * Strokes over each face of the limbs in a span, as strokes of coarse grain, both limbs' mean.
 * @returns null where a limb was not sanded on record, or a grit was used without counting: part
 * of the strokes would tell too little
 */
export function strokesOver(
  sandings: readonly CountedSanding[],
  construction: Construction,
  { after, upTo }: Span,
): number | null {
  const faces = sandings.filter(
    ({ struck_reason, at, substrate }) =>
      struck_reason === null && at > after && at <= upTo && facesAre(substrate, construction),
  );
  let sum = 0;
  for (const limb of limbSections) {
    const rows = faces.filter(({ section }) => section === limb);
    if (rows.length === 0) return null;
    for (const row of rows) {
      if (row.strokes === null) return null;
      sum += strokeWork(row.strokes, abrasive(gritOfRow(row)).micrometres);
    }
  }
  return sum / limbSections.length;
}

/** Thousandths that a stroke of coarse grain takes off each face. */
export interface StrokeFigure extends Spread {
  /** How many closed jobs it rests on. */
  jobs: number;
}

/** Part of the amount that two sandings by one hand lie apart (common practice), worth so many jobs. */
const usualPart = 0.3;
const usualJobs = 5;

/** One closed job as far as its strokes tell. */
export interface StrokeJob {
  construction: Construction;
  allowanceThou: number | null;
  /** Between the weighings on both sides of its sanding. */
  strokes: number | null;
}

/** What each job's sanding took over its strokes; jobs that do not tell are left out. */
const perStroke = (jobs: readonly StrokeJob[], construction: Construction): number[] =>
  jobs.flatMap((job) => {
    const { allowanceThou, strokes } = job;
    if (job.construction !== construction || allowanceThou === null || strokes === null) return [];
    return allowanceThou > 0 && strokes > 0 ? [allowanceThou / strokes] : [];
  });

/** How many closed jobs tell what a stroke takes on bows of this construction. */
export const strokeJobs = (jobs: readonly StrokeJob[], construction: Construction): number =>
  perStroke(jobs, construction).length;

/**
 * What a stroke takes, by the shop's own closed jobs: their mean, with the spread of the next one.
 * @returns null under three such jobs
 */
export function strokeFigureFrom(
  jobs: readonly StrokeJob[],
  construction: Construction,
): StrokeFigure | null {
  const seen = perStroke(jobs, construction);
  if (seen.length < leastStrokeJobs) return null;
  const mean = seen.reduce((sum, one) => sum + one, 0) / seen.length;
  const about = seen.reduce((sum, one) => sum + (one - mean) ** 2, 0);
  const variance = (usualJobs * (usualPart * mean) ** 2 + about) / (usualJobs + seen.length - 1);
  return { mean, sd: Math.sqrt(variance * (1 + 1 / seen.length)), jobs: seen.length };
}

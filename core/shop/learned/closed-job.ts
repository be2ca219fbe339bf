import type { RemovalRow, WeightPlanRow } from '../../storage/tables.ts';
import type { StoredReading } from '../readings/stored.ts';
import { weightAtAmoDraw } from '../readings/weights.ts';
import type { Construction } from './jobs.ts';
import { type CountedSanding, strokesOver } from './stroke-figure.ts';

/** The rows of one order that its figures are worked out from. */
export interface JobRows {
  plan: Pick<
    WeightPlanRow,
    'draw_in' | 'drop_per_thou' | 'reading_id' | 'accepted_at' | 'weight_lbf'
  >;
  /** Oldest first. */
  readings: readonly StoredReading[];
  /** Those of the readings that stand, at the plan's draw. */
  weighings: readonly Weighing[];
  removals: readonly RemovalRow[];
  sandings: readonly CountedSanding[];
}

export interface Weighing {
  id: string;
  at: string;
  phase: StoredReading['phase'];
  lbf: number;
}

/** Removals that are weight work; sanding is what the allowance is for. */
const bites: readonly RemovalRow['method'][] = ['narrow', 'thin', 'scrape', 'noted'];
/** A drop smaller than this is lost in the scale: it tells nothing of effectiveness. */
const leastDrop = 0.03;

/** What the standing readings of a job say at its plan's draw, oldest first. */
export function weighingsOf({ plan, readings }: Pick<JobRows, 'plan' | 'readings'>): Weighing[] {
  return readings.flatMap((reading) => {
    if (reading.struck_reason !== null) return [];
    const lbf = weightAtAmoDraw(reading.pulls, reading.draw_reference, plan.draw_in);
    if (lbf === null) return [];
    return [{ id: reading.id, at: reading.weighed_at, phase: reading.phase, lbf }];
  });
}

function doneBetween(rows: JobRows, from: string, to: string): RemovalRow[] {
  return rows.removals.filter(
    ({ struck_reason, done_at }) =>
      struck_reason === null && done_at !== null && done_at > from && done_at <= to,
  );
}

/** The last weighing before sanding and the first after it. */
function aroundSanding(rows: JobRows): { before: Weighing; after: Weighing } | null {
  const { weighings } = rows;
  const at = weighings.findIndex(({ phase }) => phase === 'after-sanding');
  const [before, after] = [weighings[at - 1], weighings[at]];
  return before === undefined || after === undefined ? null : { before, after };
}

/**
 * What sanding took off each face in one job, thousandths: the part of the weight that went
 * between the weighings before and after it, over the part that a thousandth takes.
 * @returns null where the job was not weighed on both sides of its sanding, or was cut in between
 */
export function allowanceOf(rows: JobRows): number | null {
  const around = aroundSanding(rows);
  const perThou = rows.plan.drop_per_thou;
  if (around === null || !(perThou > 0)) return null;
  const { before, after } = around;
  const other = doneBetween(rows, before.at, after.at).filter(({ method }) => method !== 'strip');
  if (other.length > 0) return null;
  return (before.lbf - after.lbf) / before.lbf / perThou;
}

/**
 * Strokes over each face between the weighings on both sides of the sanding.
 * @returns null where they do not tell: not weighed on both sides, or not counted throughout
 */
export function strokesOf(rows: JobRows, construction: Construction): number | null {
  const around = aroundSanding(rows);
  if (around === null) return null;
  return strokesOver(rows.sandings, construction, {
    after: around.before.at,
    upTo: around.after.at,
  });
}

/**
 * Measured over modelled drop of all bites of one job, from the weighing its plan rests on to the
 * last one before sanding.
 * @returns null where a bite has no modelled drop, or all together took too little to tell
 */
export function effectivenessOf(rows: JobRows): number | null {
  const { weighings } = rows;
  const first = weighings.find(({ id }) => id === rows.plan.reading_id);
  const last = weighings.filter(({ phase }) => phase === 'work' || phase === 'arrival').at(-1);
  if (first === undefined || last === undefined || last.at <= first.at) return null;
  const taken = doneBetween(rows, first.at, last.at);
  if (taken.some(({ method }) => !bites.includes(method))) return null;
  let left = 1;
  for (const { modelled_drop } of taken) {
    if (modelled_drop === null) return null;
    left *= 1 - modelled_drop;
  }
  const modelled = 1 - left;
  return modelled < leastDrop ? null : (1 - last.lbf / first.lbf) / modelled;
}

/** Bites that count, in the order they were done. */
export function bitesOf({ removals }: JobRows): RemovalRow[] {
  return removals.filter(
    ({ method, struck_reason, done_at }) =>
      struck_reason === null && done_at !== null && bites.includes(method),
  );
}

/** Weight at the plan's draw when the bow left: its last standing weighing; null where there is none after the plan. */
export function endWeightOf(rows: JobRows): number | null {
  const last = rows.weighings.at(-1);
  const isLater = last !== undefined && last.phase !== 'arrival' && last.phase !== 'work';
  return isLater ? last.lbf : null;
}

/** Weight when it came, at the plan's draw; the weight the plan began from where it was not weighed then. */
export function arrivalWeightOf(rows: JobRows): number {
  const arrival = rows.weighings.find(({ phase }) => phase === 'arrival');
  return arrival?.lbf ?? rows.plan.weight_lbf;
}

/** What a plan reckoned with, and what it said. */
type PlanFigures = Pick<
  WeightPlanRow,
  | 'weight_lbf'
  | 'effectiveness_mean'
  | 'drop_per_thou'
  | 'allowance_mean_thou'
  | 'forecast_lbf'
  | 'forecast_low_lbf'
  | 'forecast_high_lbf'
>;

export interface Forecast {
  lbf: number;
  bandLbf: [number, number];
}

/**
 * Where the bow should have ended by the figures of its plan, for what was really taken off it,
 * lbf. A plan keeps a reserve above the target that light passes take in the end, and its cut
 * stops where the next bite may be too much: held against the plan's own aim every bow would seem
 * to end too light. The plan's own forecast where a removal has no figure.
 */
export function forecastOfTaken(plan: PlanFigures, { removals }: JobRows): Forecast {
  const taken = removals.filter(
    ({ struck_reason, done_at }) => struck_reason === null && done_at !== null,
  );
  const band: Forecast = {
    lbf: plan.forecast_lbf,
    bandLbf: [plan.forecast_low_lbf, plan.forecast_high_lbf],
  };
  let lbf = plan.weight_lbf;
  for (const { modelled_drop } of taken) {
    if (modelled_drop === null) return band;
    lbf *= 1 - plan.effectiveness_mean * modelled_drop;
  }
  if (!taken.some(({ method }) => method === 'strip')) {
    lbf *= 1 - plan.drop_per_thou * plan.allowance_mean_thou;
  }
  const off = lbf - plan.forecast_lbf;
  return { lbf, bandLbf: [band.bandLbf[0] + off, band.bandLbf[1] + off] };
}

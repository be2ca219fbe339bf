import type { PastCheck } from '../../../shared/contract/scales.ts';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { decimal, difference } from '../../../shared/measure.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { ScaleCheckRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';
import { notFound } from '../record.ts';
import { scaleErrorLimitLbf, worstErrorLbf } from './scale-check.ts';

type Checks = ContractOutputs['scales']['checks'];
type Drift = NonNullable<Checks['drift']>;

/** Daily checks of more than a year; older ones tell nothing of the scale as it is. */
const mostChecks = 500;

function pastCheckOf(row: ScaleCheckRow & { person_name: string }): PastCheck {
  return {
    id: row.id,
    checkedAt: row.checked_at,
    checkedBy: row.person_name,
    lowLoadLbf: row.low_load_lbf,
    lowReadingLbf: row.low_reading_lbf,
    highLoadLbf: row.high_load_lbf,
    highReadingLbf: row.high_reading_lbf,
    lowErrorLbf: difference(row.low_reading_lbf, row.low_load_lbf),
    highErrorLbf: difference(row.high_reading_lbf, row.high_load_lbf),
    worstErrorLbf: worstErrorLbf(row),
  };
}

/**
 * How far the error moved from the first to the last check of the year that the given day is in.
 * @param checks newest first
 */
export function driftOf(checks: readonly PastCheck[], day: string): Drift | null {
  const ofYear = checks.filter(({ checkedAt }) => dayOf(checkedAt).slice(0, 4) === day.slice(0, 4));
  const [last, first] = [ofYear.at(0), ofYear.at(-1)];
  if (last === undefined || first === undefined || ofYear.length < 2) return null;
  return {
    since: first.checkedAt,
    checks: ofYear.length,
    lowLbf: difference(last.lowErrorLbf, first.lowErrorLbf),
    highLbf: difference(last.highErrorLbf, first.highErrorLbf),
  };
}

const moved = (lbf: number) =>
  lbf === 0 ? 'not at all' : `${decimal(Math.abs(lbf), 2)} lb ${lbf > 0 ? 'up' : 'down'}`;

/** The drift in one or two sentences. */
export function driftWords(drift: Drift | null, resolutionLbf: number): string {
  if (drift === null)
    return 'Fewer than two checks this year: nothing can be said of its drift yet.';
  const { lowLbf, highLbf, checks } = drift;
  const most = Math.max(Math.abs(lowLbf), Math.abs(highLbf));
  // One step of the display either way is what a scale that stands still shows.
  if (most <= resolutionLbf) {
    return `Over ${checks} checks this year it has not moved beyond one step of its display.`;
  }
  const words = `Over ${checks} checks this year its error moved ${moved(lowLbf)} at the low load and ${moved(highLbf)} at the high load.`;
  return most > scaleErrorLimitLbf / 2
    ? `${words} That is more than half of the ${scaleErrorLimitLbf} lb it may be off: have it adjusted before it is refused.`
    : words;
}

/** @see contract.scales.checks */
export async function scaleChecks(shop: OpenShop, id: string): Promise<Checks> {
  const scale = await shop.read
    .selectFrom('scale')
    .select('resolution_lbf')
    .where('id', '=', id)
    .executeTakeFirstOrThrow(() => notFound('scale', id));
  const rows = await shop.read
    .selectFrom('scale_check')
    .innerJoin('person', 'person.id', 'scale_check.checked_by')
    .selectAll('scale_check')
    .select('person.name as person_name')
    .where('scale_id', '=', id)
    .orderBy('checked_at', 'desc')
    .orderBy('scale_check.id', 'desc')
    .limit(mostChecks)
    .execute();
  const checks = rows.map(pastCheckOf);
  const drift = driftOf(checks, dayOf(shop.now()));
  return { checks, drift, words: driftWords(drift, scale.resolution_lbf) };
}

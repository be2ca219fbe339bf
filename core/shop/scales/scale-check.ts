import { difference } from '../../../shared/measure.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { ScaleCheckRow } from '../../storage/tables.ts';

/** A scale further out than this is refused for weighing; shop practice, not a standard. */
export const scaleErrorLimitLbf = 0.5;

/** Larger of the errors at the two check loads, reading minus load, pound-force. */
export function worstErrorLbf(check: ScaleCheckRow): number {
  const low = difference(check.low_reading_lbf, check.low_load_lbf);
  const high = difference(check.high_reading_lbf, check.high_load_lbf);
  return Math.abs(low) > Math.abs(high) ? low : high;
}

/** A check counts for one working day: 24 hours, so that no time zone cuts an afternoon off. */
const checkHoldsMs = 24 * 60 * 60 * 1000;

/** Why a scale may not be used at this instant, or null when it may. */
export function scaleTrouble(last: ScaleCheckRow | null, now: string): string | null {
  if (last === null) return 'It has never been checked. Hang two known loads on it.';
  if (Date.parse(now) - Date.parse(last.checked_at) > checkHoldsMs) {
    return 'It was not checked in the last 24 hours. Hang two known loads on it.';
  }
  const error = worstErrorLbf(last);
  if (Math.abs(error) > scaleErrorLimitLbf) {
    return `It reads ${error.toFixed(2)} lb off. Over ${scaleErrorLimitLbf} lb it is not used.`;
  }
  return null;
}

export async function lastCheck(
  db: OpenShop['read'],
  scaleId: string,
): Promise<ScaleCheckRow | null> {
  const row = await db
    .selectFrom('scale_check')
    .selectAll()
    .where('scale_id', '=', scaleId)
    .orderBy('checked_at', 'desc')
    .orderBy('id', 'desc')
    .limit(1)
    .executeTakeFirst();
  return row ?? null;
}

import { type CureStep, cureSteps } from '../../../shared/finish.ts';
import { cureInstants } from '../../finish/cure.ts';
import type { FinishRows } from './stored.ts';
import { lastCoat } from './window-of.ts';

/** When each time after the last coat has passed, by the sheet it was put on by; null uncoated. */
export function cureOf(rows: Pick<FinishRows, 'coats'>): Record<CureStep, string> | null {
  const coat = lastCoat(rows);
  return coat === null ? null : cureInstants(coat.sheet.cure, coat.at);
}

/** In the order they pass. */
export function cureTimes(rows: Pick<FinishRows, 'coats'>): { step: CureStep; at: string }[] {
  const cure = cureOf(rows);
  if (cure === null) return [];
  return cureSteps
    .map((step) => ({ step, at: cure[step] }))
    .toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : 0));
}

/**
 * Times that have passed. None while the computer's clock cannot be trusted.
 * @param trouble with the clock, see `clockTrouble`
 */
export function passedOf(
  rows: Pick<FinishRows, 'coats'>,
  now: string,
  trouble: string | null,
): CureStep[] {
  if (trouble !== null) return [];
  return cureTimes(rows)
    .filter(({ at }) => at <= now)
    .map(({ step }) => step);
}

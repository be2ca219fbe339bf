import type { LotPick } from '../../../shared/contract/finish.ts';
import { minutesBetween, spanText } from '../../finish/instant.ts';
import { batchState } from '../../finish/pot-life.ts';
import { expired } from '../../schedule/issue.ts';
import type { BatchRow } from '../../storage/tables.ts';
import { dayOf } from '../day.ts';

/** Why a batch may not be used at an instant: past, standing, discarded; null where it may. */
export function potLifeTrouble(batch: BatchRow, at: string): string | null {
  if (batch.discarded_at !== null && batch.discarded_at <= at) {
    return `Batch ${batch.name} was discarded.`;
  }
  if (batch.mixed_at > at) return `Batch ${batch.name} was not mixed yet then.`;
  const times = { usableFrom: batch.usable_from, usableUntil: batch.usable_until };
  const state = batchState(times, at);
  if (state === 'past') {
    const since = minutesBetween(batch.usable_until, at);
    return `Batch ${batch.name} is past its pot life${since < 1 ? '' : ` by ${spanText(since)}`}: mix a new one. Thinner does not bring it back.`;
  }
  if (state === 'standing') {
    const left = Math.ceil(minutesBetween(at, batch.usable_from));
    return `Batch ${batch.name} must stand another ${spanText(left)} before it is used.`;
  }
  return null;
}

/** Which lots have expired on the day of the coat: one sentence, or null where all are in date. */
export function lotsTrouble(
  lots: readonly Pick<LotPick, 'part' | 'lotNumber' | 'expiresOn'>[],
  at: string,
): string | null {
  const old = lots.filter((lot) => expired(lot, dayOf(at)));
  if (old.length === 0) return null;
  const named = old.map((lot) => `${lot.part} ${lot.lotNumber} (until ${lot.expiresOn})`);
  return `Expired: ${[...new Set(named)].join(', ')}.`;
}

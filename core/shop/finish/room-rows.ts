import type { Kysely } from 'kysely';
import type { LotPick } from '../../../shared/contract/finish.ts';
import type { AirReadingRow, BatchRow, Tables } from '../../storage/tables.ts';
import { latestAir } from './air.ts';
import { lotsOfBatches } from './batches.ts';
import { clockTrouble, lastRecordedAt } from './clock-trouble.ts';
import { airSince, type FinishRows } from './stored.ts';
import { lastCoat } from './window-of.ts';

export type StandingBatch = BatchRow & { lots: readonly LotPick[] };

/** What the finish room shares among all bows at an instant. */
export interface RoomRows {
  /** ISO-8601 UTC. */
  now: string;
  /** Why no time counts as passed; null where the computer's clock can be trusted. */
  clockTrouble: string | null;
  /** Latest reading of the air that stands. */
  air: AirReadingRow | null;
  /** Readings since the oldest of the last coats asked for. */
  airs: readonly AirReadingRow[];
  /** Not discarded, and not past. */
  batches: readonly StandingBatch[];
}

async function standingBatches(db: Kysely<Tables>, now: string): Promise<StandingBatch[]> {
  const rows = await db
    .selectFrom('batch')
    .selectAll()
    .where('discarded_at', 'is', null)
    .where('usable_until', '>', now)
    .where('mixed_at', '<=', now)
    .orderBy('mixed_at', 'desc')
    .execute();
  const lots = await lotsOfBatches(
    db,
    rows.map((row) => row.id),
  );
  return rows.map((row) => ({ ...row, lots: lots.get(row.id) ?? [] }));
}

/** @param coated orders whose recoat windows are asked for. */
export async function roomRows(
  db: Kysely<Tables>,
  now: string,
  coated: readonly Pick<FinishRows, 'coats'>[],
): Promise<RoomRows> {
  const coatedAt = coated.flatMap((rows) => lastCoat(rows)?.at ?? []).sort();
  const [oldest] = coatedAt;
  return {
    now,
    clockTrouble: clockTrouble(now, await lastRecordedAt(db)),
    air: await latestAir(db, now),
    airs: oldest === undefined ? [] : await airSince(db, oldest),
    batches: await standingBatches(db, now),
  };
}

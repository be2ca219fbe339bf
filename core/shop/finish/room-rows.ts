import type { Kysely } from 'kysely';
import type { AirReadingRow, Tables } from '../../storage/tables.ts';
import { latestAir } from './air.ts';
import { readClockTrouble } from './clock-trouble.ts';

/** What the finish room shares among all bows at an instant. */
export interface RoomRows {
  /** ISO-8601 UTC. */
  now: string;
  /** Why no time counts as passed; null where the computer's clock can be trusted. */
  clockTrouble: string | null;
  /** Latest reading of the air that stands. */
  air: AirReadingRow | null;
}

export async function roomRows(db: Kysely<Tables>, now: string): Promise<RoomRows> {
  return {
    now,
    clockTrouble: await readClockTrouble(db, now),
    air: await latestAir(db, now),
  };
}

import { type Kysely, sql } from 'kysely';
import { instantMs, spanText } from '../../finish/instant.ts';
import type { Tables } from '../../storage/tables.ts';

type Db = Kysely<Tables>;

/** By this command the owner says that the clock of the computer is right. */
export const clockConfirmed = 'clocks.confirm';

/** Computers set their clocks by a few seconds now and then; that is no reason to stop. */
const toleranceMs = 2 * 60_000;

const msPerMinute = 60_000;

/**
 * Whether the computer's clock stands before the last record: then it was set back, and no time
 * that it reckons has really passed. A sentence, or null where all is well.
 */
export function clockTrouble(now: string, lastAt: string | null): string | null {
  if (lastAt === null) return null;
  const behind = instantMs('lastAt', lastAt) - instantMs('now', now);
  if (behind <= toleranceMs) return null;
  return (
    `The clock of the computer stands ${spanText(Math.ceil(behind / msPerMinute))} before the ` +
    'last record. Set it right: until then no time counts as passed. If it is right, the owner ' +
    'says so in the finish room.'
  );
}

async function lastRecordedAt(db: Db): Promise<string | null> {
  const last = await db
    .selectFrom('command')
    .select((eb) => eb.fn.max('at').as('at'))
    .executeTakeFirst();
  return last?.at ?? null;
}

/** Place of the latest confirmation among the commands, in the order they were written. */
async function lastConfirmed(db: Db): Promise<number | null> {
  const { place } = await db
    .selectFrom('command')
    .select(sql<number | null>`max(rowid)`.as('place'))
    .where('name', '=', clockConfirmed)
    .executeTakeFirstOrThrow();
  return place;
}

async function lastRecordedSince(db: Db, place: number): Promise<string | null> {
  const last = await db
    .selectFrom('command')
    .select('at')
    // The sign keeps SQLite on the index by instant, where it finds the first at once.
    .where(sql<number>`+rowid`, '>=', place)
    .orderBy('at', 'desc')
    .limit(1)
    .executeTakeFirst();
  return last?.at ?? null;
}

/**
 * Why no time counts as passed at an instant; null where the computer's clock can be trusted. What
 * was recorded before the owner last confirmed the clock is no measure of it: a clock that once
 * ran ahead has left records that lie after now.
 * @param now ISO-8601 UTC.
 */
export async function readClockTrouble(db: Db, now: string): Promise<string | null> {
  const trouble = clockTrouble(now, await lastRecordedAt(db));
  if (trouble === null) return null;
  const place = await lastConfirmed(db);
  return place === null ? trouble : clockTrouble(now, await lastRecordedSince(db, place));
}

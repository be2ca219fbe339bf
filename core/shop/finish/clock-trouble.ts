import type { Kysely } from 'kysely';
import { instantMs, spanText } from '../../finish/instant.ts';
import type { Tables } from '../../storage/tables.ts';

/** Computers set their clocks by a few seconds now and then; that is no reason to stop. */
const toleranceMs = 2 * 60_000;

const msPerMinute = 60_000;

/** Instant of the last command on record; null in a shop that has none. */
export async function lastRecordedAt(db: Kysely<Tables>): Promise<string | null> {
  const last = await db
    .selectFrom('command')
    .select((eb) => eb.fn.max('at').as('at'))
    .executeTakeFirst();
  return last?.at ?? null;
}

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
    'last record. Set it right: until then no time counts as passed.'
  );
}

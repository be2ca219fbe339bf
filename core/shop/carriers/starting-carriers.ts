import { startingProfiles } from '../../parcel/index.ts';
import type { CommandTransaction } from '../../storage/commands.ts';
import { carrierColumns, usualClaimDays } from './carrier-row.ts';

/** Adds the generic profiles whose names the shop does not keep yet; answers how many. */
export async function addStartingCarriers(
  trx: CommandTransaction,
  newId: () => string,
): Promise<number> {
  const kept = await trx.db.selectFrom('carrier').select('name').execute();
  const names = new Set(kept.map((row) => row.name));
  const missing = startingProfiles.filter((profile) => !names.has(profile.name));
  for (const profile of missing) {
    await trx.insert('carrier', {
      id: newId(),
      ...carrierColumns(profile, usualClaimDays),
      active: 1,
    });
  }
  return missing.length;
}

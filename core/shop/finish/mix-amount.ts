import type { Kysely } from 'kysely';
import type { MixWanted } from '../../../shared/contract/finish.ts';
import { refuseField } from '../../../shared/errors.ts';
import { readyAmountMl } from '../../finish/amount.ts';
import type { Wanted } from '../../finish/mix.ts';
import type { OnePartSheet, TwoPartSheet } from '../../finish/sheet.ts';
import type { Tables } from '../../storage/tables.ts';
import { readOrder } from '../orders/order-row.ts';
import { areaOf, type OrderArea } from './area-of.ts';

/** How much ready mix is wanted, and what that was reckoned from. */
export interface MixAmount {
  wanted: Wanted;
  areas: OrderArea[];
  areaIn2: number | null;
  wetMil: number | null;
}

/** Middle of the range a sheet gives. */
export function usualWetMil({ film }: TwoPartSheet | OnePartSheet): number {
  return (film.wetMil.from + film.wetMil.to) / 2;
}

/**
 * @param transferPercent what reaches the work, as the shop has set it.
 * @throws ShopError NOT_FOUND for an unknown order; BAD_INPUT where nothing is to be coated.
 */
export async function mixAmount(
  db: Kysely<Tables>,
  sheet: TwoPartSheet | OnePartSheet,
  asked: MixWanted,
  transferPercent: number,
): Promise<MixAmount> {
  if (asked.by === 'volume') {
    return { wanted: { readyMl: asked.ml }, areas: [], areaIn2: null, wetMil: null };
  }
  if (asked.by === 'weight') {
    return { wanted: { readyG: asked.g }, areas: [], areaIn2: null, wetMil: null };
  }
  const areas: OrderArea[] = [];
  for (const id of new Set(asked.orderIds)) areas.push(await areaOf(db, await readOrder(db, id)));
  const areaIn2 = areas.reduce((sum, each) => sum + (each.areaIn2 ?? 0), asked.moreAreaIn2);
  if (areaIn2 <= 0) {
    refuseField('moreAreaIn2', 'Choose bows whose limbs are measured, or type an area.');
  }
  const wetMil = asked.wetMil ?? usualWetMil(sheet);
  const { coats, leftInGunMl } = asked;
  const readyMl = readyAmountMl({ areaIn2, wetMil, coats, transferPercent, leftInGunMl });
  return { wanted: { readyMl }, areas, areaIn2, wetMil };
}

import { ShopError } from '../../../shared/errors.ts';
import { dryFilm } from '../../finish/film.ts';
import { recipeBy } from '../../finish/mix-recipe.ts';
import type { FinishSheet } from '../../finish/sheet.ts';
import { usualWetMil } from './mix-amount.ts';
import type { FinishRows } from './stored.ts';
import { standingCoats } from './window-of.ts';

/** One coat's film, mil; null where it cannot be gauged. */
export interface CoatFilm {
  wetMil: number | null;
  dryMil: number | null;
}

/** Thinner by volume; null where the sheet mixes by weight and gives no densities. */
function thinnerPercent(sheet: Extract<FinishSheet, { film: unknown }>): number | null {
  if (sheet.mix.thinnerPercent === 0) return 0;
  try {
    return recipeBy('volume', sheet.mix).thinnerPercent;
  } catch (error) {
    if (error instanceof ShopError) return null;
    throw error;
  }
}

/**
 * Film of a coat: as given, else as last time with the same finish, else the middle of the
 * sheet's range.
 */
export function coatFilm(
  sheet: FinishSheet,
  systemId: string,
  given: number | null,
  rows: Pick<FinishRows, 'coats'>,
): CoatFilm {
  if (sheet.kind === 'aerosol' || sheet.kind === 'hand-rubbed-oil') {
    return { wetMil: given, dryMil: null };
  }
  const before = standingCoats(rows).findLast(
    (coat) => coat.finish_system_id === systemId && coat.wet_mil !== null,
  );
  const wetMil = given ?? before?.wet_mil ?? usualWetMil(sheet);
  const thinner = thinnerPercent(sheet);
  const { solidsPercent } = sheet.film;
  const solids = thinner === null ? null : { solidsPercent, thinnerPercent: thinner };
  return { wetMil, dryMil: solids === null ? null : dryFilm(wetMil, solids) };
}

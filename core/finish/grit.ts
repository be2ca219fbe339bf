import { refuseField } from '../../shared/errors.ts';
import { type Grit, type GritScale, gritText } from '../../shared/grit.ts';
import { type GritTableId, gritTables } from './abrasive-tables.ts';

export interface Abrasive extends Grit {
  /** Average grain size, micrometres. */
  micrometres: number;
  /** Table the size was read from. */
  table: GritTableId;
}

/**
 * A grit with its grain size, from the scale's default table or from the one asked for.
 * @throws ShopError BAD_INPUT where that table does not print the grit.
 */
export function abrasive(wanted: Grit, table?: GritTableId): Abrasive {
  const found = gritTables
    .filter((each) => each.scale === wanted.scale && (table === undefined || each.id === table))
    .flatMap((each) => {
      const micrometres = each.micrometres.get(wanted.grit);
      return micrometres === undefined
        ? []
        : [{ grit: wanted.grit, scale: wanted.scale, micrometres, table: each.id }];
    })[0];
  return (
    found ?? refuseField('grit', `${gritText(wanted)} is in no grit table. Choose another grit.`)
  );
}

/** All grits of a scale that a table prints, coarsest first. */
export function gritsOf(scale: GritScale): Abrasive[] {
  const grits = new Set(
    gritTables
      .filter((each) => each.scale === scale)
      .flatMap((each) => [...each.micrometres.keys()]),
  );
  return [...grits]
    .map((grit) => abrasive({ grit, scale }))
    .sort((a, b) => b.micrometres - a.micrometres);
}

/** The grit of the other scale whose grain is nearest in size, by ratio; default tables. */
export function nearestOn(scale: GritScale, { micrometres }: Abrasive): Abrasive {
  const distance = (each: Abrasive) => Math.abs(Math.log(each.micrometres / micrometres));
  return gritsOf(scale).reduce((best, each) => (distance(each) < distance(best) ? each : best));
}

import { ShopError } from '../../shared/errors.ts';
import type { Changed } from '../../shared/fields.ts';

/** Answer of a command that made or changed one record. */
export function changedOf(row: { id: string; row_version: number }): Changed {
  return { id: row.id, rowVersion: row.row_version };
}

/** Refusal for an id that leads nowhere. */
export function notFound(what: string, id: string): ShopError {
  return new ShopError('NOT_FOUND', `This ${what} does not exist.`, { [what]: id });
}

import { refuseField } from '../../../shared/errors.ts';
import { instantMs } from '../../finish/instant.ts';

/**
 * When something was done: as given, else now. Written down later is fine, written down before
 * it happened is not. All instants are kept in one form, so that they sort as text.
 * @param now instant of the command, ISO-8601 UTC.
 * @throws ShopError BAD_INPUT where it lies after now.
 */
export function doneAt(at: string | null, now: string): string {
  if (at === null) return now;
  const ms = instantMs('at', at);
  if (ms > instantMs('now', now)) {
    refuseField('at', 'This time has not come yet. Give when it was done.');
  }
  return new Date(ms).toISOString();
}

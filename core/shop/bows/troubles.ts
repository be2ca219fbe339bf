import type { FieldTrouble } from '../../../shared/bow-checks.ts';
import { ShopError } from '../../../shared/errors.ts';

/** @throws ShopError BAD_INPUT naming the field and what to do about it. */
export function refuseTroubles(troubles: readonly FieldTrouble[]): void {
  const [first] = troubles;
  if (first === undefined) return;
  throw new ShopError(
    'BAD_INPUT',
    first.sentence,
    Object.fromEntries(troubles.toReversed().map(({ field, sentence }) => [field, sentence])),
  );
}

import { contract } from '../../../shared/contract/index.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import { inputErrors } from '../../parts/input-schema.ts';
import { type Source, type SprayFields, sprayInput } from './spray-fields.ts';

/** What is wrong with the session's fields, by path. */
export function sprayErrors(
  fields: SprayFields,
  source: Source | undefined,
): Record<string, string> {
  const errors = inputErrors(contract.finish.spray, sprayInput(fields, source));
  return source === undefined ? { ...errors, finishSystemId: 'Choose what is put on.' } : errors;
}

/** All that stands against it may be let pass by the owner. */
export function mayBeLetPass(
  session: readonly MissingItem[],
  orders: readonly { missing: readonly MissingItem[] }[],
): boolean {
  const all = [...session, ...orders.flatMap(({ missing }) => missing)];
  return all.length > 0 && all.every(({ override }) => override === 'owner');
}

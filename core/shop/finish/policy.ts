import type { Kysely } from 'kysely';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { Tables } from '../../storage/tables.ts';
import { changeShop } from '../setup/change-shop.ts';

type Policy = ContractOutputs['finish']['policy'];

/** Places on the rack, and the part of a sprayed finish that reaches the work. */
export async function finishPolicy(db: Kysely<Tables>): Promise<Policy> {
  const row = await db
    .selectFrom('shop')
    .select(['row_version', 'rack_slots', 'transfer_efficiency'])
    .executeTakeFirst();
  if (row === undefined) {
    throw new ShopError('NOT_FOUND', 'The shop has no name yet. Set it up first.');
  }
  return {
    rowVersion: row.row_version,
    rackSlots: row.rack_slots,
    transferPercent: Number((row.transfer_efficiency * 100).toFixed(6)),
  };
}

/** @see contract.finish.editPolicy */
export function editFinishPolicy(
  ctx: ShopContext,
  input: ContractInputs['finish']['editPolicy'],
): Promise<Changed> {
  return changeShop(ctx, input, 'finish.editPolicy', {
    rack_slots: input.rackSlots,
    transfer_efficiency: input.transferPercent / 100,
  });
}

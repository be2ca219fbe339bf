import type { Carrier } from '../../../shared/contract/carriers.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { changedOf } from '../record.ts';
import { carrierColumns, carrierOf } from './carrier-row.ts';
import { addStartingCarriers } from './starting-carriers.ts';

export async function listCarriers(shop: OpenShop): Promise<Carrier[]> {
  const rows = await shop.read
    .selectFrom('carrier')
    .selectAll()
    .orderBy('active', 'desc')
    .orderBy('name')
    .orderBy('id')
    .limit(100)
    .execute();
  return rows.map(carrierOf);
}

/** Two carriers of one name could not be told apart on a parcel. */
async function refuseTakenName(trx: CommandTransaction, name: string, except: string | null) {
  const taken = await trx.db
    .selectFrom('carrier')
    .select('id')
    .where('name', '=', name)
    .where('id', '!=', except ?? '')
    .executeTakeFirst();
  if (taken === undefined) return;
  throw new ShopError('CONFLICT', `There is already a carrier named ${name}.`, {
    name: 'Choose another name, or change that one.',
  });
}

export function addCarrier(
  ctx: ShopContext,
  input: ContractInputs['carriers']['add'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'carriers.add' }, async (trx) => {
    await refuseTakenName(trx, input.profile.name, null);
    return changedOf(
      await trx.insert('carrier', {
        id: ctx.newId(),
        ...carrierColumns(input.profile, input.claimDays),
        active: 1,
      }),
    );
  });
}

/** Parcels that were measured keep what the limits were then. */
export function editCarrier(
  ctx: ShopContext,
  input: ContractInputs['carriers']['edit'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'carriers.edit' }, async (trx) => {
    await refuseTakenName(trx, input.profile.name, input.id);
    return changedOf(
      await trx.update('carrier', input.id, input.rowVersion, {
        ...carrierColumns(input.profile, input.claimDays),
        active: input.active ? 1 : 0,
      }),
    );
  });
}

export function addUsualCarriers(
  ctx: ShopContext,
  input: ContractInputs['carriers']['addUsual'],
): Promise<{ added: number }> {
  return runCommand(ctx, { id: input.commandId, name: 'carriers.addUsual' }, async (trx) => ({
    added: await addStartingCarriers(trx, ctx.newId),
  }));
}

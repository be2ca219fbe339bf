import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import { changedOf } from '../record.ts';
import { barcodeFor } from './barcodes.ts';
import { consumableColumns } from './consumable-row.ts';
import { stockedLots } from './stocked-lot.ts';
import { readConsumable } from './write-move.ts';

type Inputs = ContractInputs['stores'];

/** Two consumables of one name could not be told apart on a shopping list. */
async function refuseTakenName(trx: CommandTransaction, name: string, except: string | null) {
  const taken = await trx.db
    .selectFrom('consumable')
    .select('id')
    .where('name', '=', name)
    .where('id', '!=', except ?? '')
    .executeTakeFirst();
  if (taken === undefined) return;
  throw new ShopError('CONFLICT', `There is already a consumable named ${name}.`, {
    name: 'Choose another name, or change that one.',
  });
}

export function addConsumable(ctx: ShopContext, input: Inputs['addConsumable']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.addConsumable' }, async (trx) => {
    await refuseTakenName(trx, input.name, null);
    const columns = consumableColumns(input);
    const row = await trx.insert('consumable', {
      id: ctx.newId(),
      ...columns,
      unit: input.unit,
      barcode: await barcodeFor(trx.db, input.barcode, null),
      on_order: 0,
      active: 1,
    });
    return changedOf(row);
  });
}

/** What is put away must not still stand on the shelf. */
async function refuseWithStock(trx: CommandTransaction, id: string): Promise<void> {
  const lots = await stockedLots(trx.db, { consumableId: id });
  const holding = lots.filter((lot) => lot.onHand > 0);
  if (holding.length === 0) return;
  const names = holding
    .slice(0, 5)
    .map((lot) => lot.name)
    .join(', ');
  const sentence = `There is still some on hand (lot ${names}). Issue, discard or count it to nothing first.`;
  throw new ShopError('CONFLICT', sentence, { active: sentence });
}

export function editConsumable(
  ctx: ShopContext,
  input: Inputs['editConsumable'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.editConsumable' }, async (trx) => {
    const before = await readConsumable(trx, input.id);
    await refuseTakenName(trx, input.name, before.id);
    if (!input.active && before.active === 1) await refuseWithStock(trx, before.id);
    const row = await trx.update('consumable', before.id, input.rowVersion, {
      ...consumableColumns(input),
      barcode: await barcodeFor(trx.db, input.barcode, before.id),
      active: input.active ? 1 : 0,
    });
    return changedOf(row);
  });
}

export function noteOrdered(ctx: ShopContext, input: Inputs['noteOrdered']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.noteOrdered' }, async (trx) => {
    const before = await readConsumable(trx, input.id);
    return changedOf(
      await trx.update('consumable', before.id, input.rowVersion, { on_order: input.onOrder }),
    );
  });
}

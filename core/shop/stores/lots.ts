import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { refuseField } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { dayOf } from '../day.ts';
import { changedOf, notFound } from '../record.ts';
import { refuseOddDays } from './receive.ts';
import { lotAnswers, stockedLots } from './stocked-lot.ts';
import { readStockedLot } from './write-move.ts';

type Inputs = ContractInputs['stores'];

export function editLot(ctx: ShopContext, input: Inputs['editLot']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.editLot' }, async (trx) => {
    const { lot } = await readStockedLot(trx, input.id);
    refuseOddDays(input, dayOf(trx.at));
    return changedOf(
      await trx.update('lot', lot.id, input.rowVersion, {
        number: input.number,
        received_on: input.receivedOn,
        expires_on: input.expiresOn,
        opened_on: input.openedOn,
        cost_cents: input.costCents,
        note: input.note,
      }),
    );
  });
}

export function openLot(ctx: ShopContext, input: Inputs['openLot']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.openLot' }, async (trx) => {
    const { lot } = await readStockedLot(trx, input.id);
    if (lot.row.opened_on !== null) {
      refuseField('openedOn', `It was opened on ${lot.row.opened_on}. Change that day in the lot.`);
    }
    const { openedOn } = input;
    refuseOddDays({ receivedOn: lot.receivedOn, expiresOn: null, openedOn }, dayOf(trx.at));
    return changedOf(
      await trx.update('lot', lot.id, input.rowVersion, { opened_on: input.openedOn }),
    );
  });
}

/** @throws ShopError NOT_FOUND */
export async function getLot(
  shop: OpenShop,
  id: string,
): Promise<ContractOutputs['stores']['lot']> {
  const [alone] = await stockedLots(shop.read, { lotId: id });
  if (alone === undefined) throw notFound('lot', id);
  const consumable = await shop.read
    .selectFrom('consumable')
    .select(['id', 'name', 'unit'])
    .where('id', '=', alone.row.consumable_id)
    .executeTakeFirstOrThrow();
  const lots = await stockedLots(shop.read, { consumableId: consumable.id });
  const lot = lotAnswers(lots, dayOf(shop.now())).find((each) => each.id === id);
  if (lot === undefined) throw notFound('lot', id);
  return { consumableId: consumable.id, name: consumable.name, unit: consumable.unit, lot };
}

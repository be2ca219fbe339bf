import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { quantityText } from '../../../shared/stores.ts';
import { runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import { dayOf } from '../day.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { notFound } from '../record.ts';
import { issueFirstExpired, issueFromLot, reckonIssue } from './issue-stock.ts';
import { countedAmount } from './receive.ts';
import { stockedLots } from './stocked-lot.ts';
import { readConsumable } from './write-move.ts';

type Inputs = ContractInputs['stores'];
type Outputs = ContractOutputs['stores'];

export function issueStock(ctx: ShopContext, input: Inputs['issue']): Promise<Outputs['issue']> {
  return runCommand(ctx, { id: input.commandId, name: 'stores.issue' }, async (trx) => {
    const consumable = await readConsumable(trx, input.consumableId);
    const order = input.orderId === null ? null : await readOrder(trx.db, input.orderId);
    const quantity = countedAmount(input, consumable.unit);
    const issue = {
      consumableId: consumable.id,
      quantity,
      today: dayOf(trx.at),
      orderId: order?.id ?? null,
      batchId: null,
      reason: input.reason,
    };
    const taken =
      input.lotId === null
        ? await issueFirstExpired(trx, ctx, issue)
        : await issueFromLot(trx, ctx, input.lotId, issue);
    if (order !== null) {
      trx.about({ orderId: order.id, bowId: order.bow_id });
      const lots = taken.picks.map(({ lotName }) => lotName).join(', ');
      await note(trx, ctx, order.id, {
        kind: 'stock',
        summary: `Issued: ${quantityText(quantity, consumable.unit)} of ${consumable.name}, lot ${lots}`,
        reason: input.reason === '' ? null : input.reason,
      });
    }
    return taken;
  });
}

/** What would be taken, lot by lot; writes nothing. @throws ShopError NOT_FOUND or BAD_INPUT. */
export async function wouldIssue(
  shop: OpenShop,
  input: Inputs['wouldIssue'],
): Promise<Outputs['wouldIssue']> {
  const consumable = await shop.read
    .selectFrom('consumable')
    .select(['id', 'name', 'unit'])
    .where('id', '=', input.consumableId)
    .executeTakeFirst();
  if (consumable === undefined) throw notFound('consumable', input.consumableId);
  const quantity = countedAmount(input, consumable.unit);
  const lots = await stockedLots(shop.read, { consumableId: consumable.id });
  const reckoned = reckonIssue(consumable, lots, quantity, dayOf(shop.now()));
  return { unit: consumable.unit, ...reckoned };
}

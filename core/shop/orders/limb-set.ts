import type { OrderDetail } from '../../../shared/contract/orders.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { limbSetOf, limbSetOfBow } from '../bows/limb-sets.ts';
import { changedOf } from '../record.ts';
import { note } from './history.ts';
import { readOrder } from './order-row.ts';

type Input = ContractInputs['orders']['setLimbSet'];
type Limbs = Pick<OrderDetail, 'limbSet' | 'cameAs' | 'weighedOnRisers'>;

/** Which limbs an order is about, how they came, and on which risers they were weighed. */
export async function limbsOf(shop: OpenShop, order: OrderRow): Promise<Limbs> {
  const set = await shop.read
    .selectFrom('limb_set')
    .selectAll()
    .where('id', '=', order.limb_set_id ?? '')
    .executeTakeFirst();
  const risers = await shop.read
    .selectFrom('reading')
    .select('riser_note')
    .distinct()
    .where('order_id', '=', order.id)
    .where('struck_reason', 'is', null)
    .where('riser_note', '!=', '')
    .orderBy('riser_note')
    .limit(500)
    .execute();
  return {
    limbSet: set === undefined ? null : limbSetOf(set),
    cameAs: order.came_as,
    weighedOnRisers: risers.map((row) => row.riser_note),
  };
}

/** Name of the chosen limbs, for the history. */
async function namedLimbs(trx: CommandTransaction, order: OrderRow, input: Input): Promise<string> {
  if (order.bow_id === null) {
    throw new ShopError('CONFLICT', 'Identify the bow before its limbs are named.', {
      limbSetId: 'Say which bow it is first.',
    });
  }
  if (input.limbSetId !== null) {
    return (await limbSetOfBow(trx.db, input.limbSetId, order.bow_id)).name;
  }
  if (input.cameAs === 'limbs-only') {
    throw new ShopError('BAD_INPUT', 'Say which limbs came.', {
      limbSetId: 'Add the limb set to the bow, then choose it here.',
    });
  }
  return "the bow's own";
}

/** Weighings of one pair of limbs do not pass to another. */
export async function refuseWeighed(
  trx: CommandTransaction,
  order: OrderRow,
  limbSetId: string | null,
): Promise<void> {
  const weighed = await trx.db
    .selectFrom('reading')
    .select('limb_set_id')
    .where('order_id', '=', order.id)
    .where('struck_reason', 'is', null)
    .where('limb_set_id', 'is not', null)
    .execute();
  if (weighed.every((reading) => reading.limb_set_id === limbSetId)) return;
  throw new ShopError('CONFLICT', 'The limbs on this order were already weighed.', {
    limbSetId: 'Strike out the weighings of the wrong limbs first.',
  });
}

/** @see contract.orders.setLimbSet */
export function setLimbSet(ctx: ShopContext, input: Input): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.setLimbSet' }, async (trx) => {
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    const limbs = await namedLimbs(trx, order, input);
    await refuseWeighed(trx, order, input.limbSetId);
    const row = await trx.update('shop_order', order.id, order.row_version, {
      limb_set_id: input.limbSetId,
      came_as: input.cameAs,
    });
    const came = input.cameAs === 'limbs-only' ? ', came without a riser' : '';
    await note(trx, ctx, order.id, {
      kind: 'limb-set',
      summary: `Limbs on this order: ${limbs}${came}`,
    });
    return changedOf(row);
  });
}

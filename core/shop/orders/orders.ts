import type { ContractInputs } from '../../../shared/contract/types.ts';
import type { EntryItem } from '../../../shared/entries.ts';
import { refuseField, ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type Stage, stageLabels } from '../../../shared/stages.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { storedPriceLines } from '../prices/stored.ts';
import { changedOf, notFound } from '../record.ts';
import { note } from './history.ts';
import { routeOf } from './order-json.ts';
import { orderColumns, readOrder, refuseOddTarget } from './order-row.ts';
import { routeAfterEdit } from './reroute.ts';
import { optionsOf } from './route.ts';
import { safeDrawOf } from './safe-target.ts';

type Inputs = ContractInputs['orders'];

/** Where the price is made up of lines they alone say what it comes to. */
async function refuseOtherTotal(
  trx: CommandTransaction,
  order: OrderRow,
  estimateCents: number | null,
): Promise<void> {
  if (estimateCents === order.estimate_cents) return;
  if ((await storedPriceLines(trx.db, [order.id])).length === 0) return;
  refuseField('estimateCents', 'The price is made up of lines: change the lines.');
}

export function editOrder(ctx: ShopContext, input: Inputs['edit']): Promise<Changed> {
  const { commandId, id, rowVersion, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'orders.edit' }, async (trx) => {
    trx.about({ orderId: id });
    const order = await readOrder(trx.db, id, rowVersion);
    refuseOddTarget(fields, await safeDrawOf(trx, order));
    await refuseOtherTotal(trx, order, fields.estimateCents);
    const route = routeAfterEdit(order, fields.services);
    const columns = {
      ...orderColumns(fields, optionsOf(routeOf(order))),
      route_json: JSON.stringify(route),
    };
    const row = await trx.update('shop_order', id, rowVersion, columns);
    await note(trx, ctx, id, { kind: 'edit', summary: 'Order changed' });
    return changedOf(row);
  });
}

/** Notes about the box rather than about the bow in it. */
const aboutTheBox: readonly EntryItem[] = ['arrived-on', 'condition', 'belongings'];
const beforeAgreement: readonly Stage[] = ['requested', 'in-mail', 'arrived'];

/** What was agreed, weighed and noted belongs to the bow it was about; it does not pass to another. */
export async function refuseExchange(trx: CommandTransaction, order: OrderRow): Promise<void> {
  if (!beforeAgreement.includes(order.stage)) {
    throw new ShopError('CONFLICT', 'Work was agreed for the bow on this order.', {
      bowId: `Move it back to "${stageLabels.arrived}" first.`,
    });
  }
  const weighed = await trx.db
    .selectFrom('reading')
    .select('id')
    .where('order_id', '=', order.id)
    .where('struck_reason', 'is', null)
    .executeTakeFirst();
  const noted = await trx.db
    .selectFrom('entry')
    .select('id')
    .where('order_id', '=', order.id)
    .where('struck_reason', 'is', null)
    .where('item', 'not in', aboutTheBox)
    .executeTakeFirst();
  const checked = await trx.db
    .selectFrom('arrival')
    .select('id')
    .where('order_id', '=', order.id)
    .where((eb) => eb.or([eb('looked_over', '=', 1), eb('strung', '!=', 'not-yet')]))
    .executeTakeFirst();
  if (weighed === undefined && noted === undefined && checked === undefined) return;
  throw new ShopError('CONFLICT', 'The bow on this order was already weighed or looked over.', {
    bowId:
      'Strike out what was weighed and noted of the wrong bow, and take its check back at the unpacking table, first.',
  });
}

export function identifyBow(ctx: ShopContext, input: Inputs['identifyBow']): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.identifyBow' }, async (trx) => {
    trx.about({ orderId: input.id, bowId: input.bowId });
    const order = await readOrder(trx.db, input.id, input.rowVersion);
    const bow = await trx.db
      .selectFrom('bow')
      .select(['id', 'customer_id', 'max_safe_draw_in'])
      .where('id', '=', input.bowId)
      .executeTakeFirst();
    if (bow === undefined) throw notFound('bow', input.bowId);
    if (bow.customer_id !== order.customer_id) {
      throw new ShopError('CONFLICT', 'This bow belongs to somebody else than the order.', {
        bowId: 'Choose a bow of this customer, or add it to the customer.',
      });
    }
    const { target_draw_in: draw } = order;
    if (draw !== null && bow.max_safe_draw_in !== null && draw > bow.max_safe_draw_in) {
      throw new ShopError(
        'CONFLICT',
        "The order's target draw is past this bow's maximum safe draw.",
        {
          bowId: 'Change the target draw first.',
        },
      );
    }
    if (order.bow_id === bow.id) return changedOf(order);
    if (order.bow_id !== null) await refuseExchange(trx, order);
    const row = await trx.update('shop_order', order.id, order.row_version, {
      bow_id: bow.id,
      // Limbs named on the order were those of the bow it had before.
      limb_set_id: null,
      came_as: order.bow_id === null ? order.came_as : 'whole-bow',
    });
    await note(trx, ctx, order.id, { kind: 'bow', summary: 'Bow identified' });
    return changedOf(row);
  });
}

export function setInscription(
  ctx: ShopContext,
  input: Inputs['setInscription'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'orders.setInscription' }, async (trx) => {
    trx.about({ orderId: input.id });
    const row = await trx.update('shop_order', input.id, input.rowVersion, {
      inscription: input.inscription,
    });
    await note(trx, ctx, input.id, {
      kind: 'inscription',
      summary: `To be written on the bow: ${input.inscription.replaceAll('\n', ' / ')}`,
    });
    return changedOf(row);
  });
}

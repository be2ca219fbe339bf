import { bowTroubles } from '../../../shared/bow-checks.ts';
import type { BowFields } from '../../../shared/contract/bows.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { closedStages } from '../../../shared/stages.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { BowRow } from '../../storage/tables.ts';
import { matchingIds } from '../find/find.ts';
import { cardsWhere } from '../orders/cards.ts';
import { noteOnOpenOrders } from '../orders/history.ts';
import { changedOf, notFound } from '../record.ts';
import { bowColumns, bowOf } from './bow-row.ts';
import { limbSetsOf } from './limb-sets.ts';
import { refuseTroubles } from './troubles.ts';

export async function searchBows(
  shop: OpenShop,
  text: string,
): Promise<ContractOutputs['bows']['search']> {
  const ids = text === '' ? null : await matchingIds(shop, 'bow', text, 50);
  if (ids?.length === 0) return [];
  const rows = await shop.read
    .selectFrom('bow')
    .leftJoin('customer', 'customer.id', 'bow.customer_id')
    .selectAll('bow')
    .select('customer.name as owner_name')
    .$if(ids !== null, (query) => query.where('bow.id', 'in', ids ?? []))
    .orderBy('bow.created_at', 'desc')
    .limit(50)
    .execute();
  return rows.map((row) => ({ ...bowOf(row), ownerName: row.owner_name ?? 'the shop' }));
}

export async function getBow(shop: OpenShop, id: string): Promise<ContractOutputs['bows']['get']> {
  const row = await shop.read
    .selectFrom('bow')
    .leftJoin('customer', 'customer.id', 'bow.customer_id')
    .selectAll('bow')
    .select('customer.name as owner_name')
    .where('bow.id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('bow', id);
  const orders = await cardsWhere(shop, (query) => query.where('shop_order.bow_id', '=', id));
  return {
    bow: bowOf(row),
    ownerName: row.owner_name ?? 'the shop',
    limbSets: await limbSetsOf(shop, id),
    orders: orders.slice(0, 500),
  };
}

export async function insertBow(
  trx: CommandTransaction,
  id: string,
  customerId: string | null,
  fields: BowFields,
): Promise<BowRow> {
  refuseTroubles(bowTroubles(fields));
  trx.about({ bowId: id, customerId });
  return trx.insert('bow', {
    id,
    customer_id: customerId,
    ...bowColumns(fields),
    created_at: trx.at,
  });
}

export function addBow(ctx: ShopContext, input: ContractInputs['bows']['add']): Promise<Changed> {
  const { commandId, customerId, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'bows.add' }, async (trx) => {
    if (customerId !== null) {
      const owner = await trx.db
        .selectFrom('customer')
        .select('id')
        .where('id', '=', customerId)
        .executeTakeFirst();
      if (owner === undefined) throw notFound('customer', customerId);
    }
    return changedOf(await insertBow(trx, ctx.newId(), customerId, fields));
  });
}

/** A safe draw found to be shorter must not leave an open order planning past it. */
export async function refusePlannedPast(
  trx: CommandTransaction,
  bowId: string,
  maxSafeDrawIn: number | null,
): Promise<void> {
  if (maxSafeDrawIn === null) return;
  const order = await trx.db
    .selectFrom('shop_order')
    .select(['number', 'target_draw_in'])
    .where('bow_id', '=', bowId)
    .where('target_draw_in', '>', maxSafeDrawIn)
    .where('stage', 'not in', closedStages)
    .executeTakeFirst();
  if (order === undefined) return;
  throw new ShopError(
    'CONFLICT',
    `Order ${order.number} plans a draw of ${order.target_draw_in}" for this bow.`,
    { maxSafeDrawIn: 'Change the target of that order first.' },
  );
}

export async function refuseLimbSets(trx: CommandTransaction, bowId: string): Promise<void> {
  const set = await trx.db
    .selectFrom('limb_set')
    .select('name')
    .where('bow_id', '=', bowId)
    .executeTakeFirst();
  if (set === undefined) return;
  throw new ShopError('CONFLICT', `This bow has limbs that come off ("${set.name}").`, {
    takeDown: 'A one-piece bow has none: keep it a take-down.',
  });
}

export function editBow(ctx: ShopContext, input: ContractInputs['bows']['edit']): Promise<Changed> {
  const { commandId, id, rowVersion, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'bows.edit' }, async (trx) => {
    refuseTroubles(bowTroubles(fields));
    trx.about({ bowId: id });
    if (fields.takeDown === 'one-piece') await refuseLimbSets(trx, id);
    await refusePlannedPast(trx, id, fields.maxSafeDrawIn);
    const row = await trx.update('bow', id, rowVersion, bowColumns(fields));
    const line = { kind: 'bow-details', summary: 'Bow details changed' };
    await noteOnOpenOrders(trx, ctx, { bowId: id }, line);
    return changedOf(row);
  });
}

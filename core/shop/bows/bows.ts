import type { BowFields } from '../../../shared/contract/bows.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { BowRow } from '../../storage/tables.ts';
import { matchingIds } from '../find/find.ts';
import { cardsWhere } from '../orders/cards.ts';
import { changedOf, notFound } from '../record.ts';
import { bowColumns, bowOf } from './bow-row.ts';

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
  return { bow: bowOf(row), ownerName: row.owner_name ?? 'the shop', orders };
}

/** A marking must say at which draw, and a bow is not marked past its own safe draw. */
function refuseOddMarking(fields: BowFields): void {
  const { markedWeightLbf, markedDrawIn, maxSafeDrawIn } = fields;
  if (markedWeightLbf === null && markedDrawIn !== null) {
    throw new ShopError('BAD_INPUT', 'A marked draw length needs the marked weight.', {
      markedWeightLbf: 'Give the weight as marked, or leave both empty.',
    });
  }
  if (markedDrawIn !== null && maxSafeDrawIn !== null && markedDrawIn > maxSafeDrawIn) {
    throw new ShopError('BAD_INPUT', 'The marked draw is past the maximum safe draw.', {
      maxSafeDrawIn: 'Check which of the two is right.',
    });
  }
}

export async function insertBow(
  trx: CommandTransaction,
  id: string,
  customerId: string | null,
  fields: BowFields,
): Promise<BowRow> {
  refuseOddMarking(fields);
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

export function editBow(ctx: ShopContext, input: ContractInputs['bows']['edit']): Promise<Changed> {
  const { commandId, id, rowVersion, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'bows.edit' }, async (trx) => {
    refuseOddMarking(fields);
    trx.about({ bowId: id });
    return changedOf(await trx.update('bow', id, rowVersion, bowColumns(fields)));
  });
}

import type { CustomerFields } from '../../../shared/contract/customers.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import type { Changed } from '../../../shared/fields.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { OpenShop, ShopContext } from '../../storage/context.ts';
import type { CustomerRow } from '../../storage/tables.ts';
import { bowOf } from '../bows/bow-row.ts';
import { matchingIds } from '../find/find.ts';
import { cardsWhere } from '../orders/cards.ts';
import { noteOnOpenOrders } from '../orders/history.ts';
import { changedOf, notFound } from '../record.ts';
import { customerColumns, customerOf } from './customer-row.ts';

export async function searchCustomers(
  shop: OpenShop,
  text: string,
): Promise<ContractOutputs['customers']['search']> {
  const ids = text === '' ? null : await matchingIds(shop, 'customer', text, 50);
  if (ids?.length === 0) return [];
  const rows = await shop.read
    .selectFrom('customer')
    .selectAll()
    .$if(ids !== null, (query) => query.where('id', 'in', ids ?? []))
    .orderBy('created_at', 'desc')
    .limit(50)
    .execute();
  return rows.map(customerOf);
}

export async function getCustomer(
  shop: OpenShop,
  id: string,
): Promise<ContractOutputs['customers']['get']> {
  const row = await shop.read
    .selectFrom('customer')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirst();
  if (row === undefined) throw notFound('customer', id);
  const bows = await shop.read
    .selectFrom('bow')
    .selectAll()
    .where('customer_id', '=', id)
    .orderBy('created_at', 'desc')
    .limit(500)
    .execute();
  const orders = await cardsWhere(shop, (query) => query.where('shop_order.customer_id', '=', id));
  return { customer: customerOf(row), bows: bows.map(bowOf), orders: orders.slice(0, 500) };
}

export async function insertCustomer(
  trx: CommandTransaction,
  id: string,
  fields: CustomerFields,
): Promise<CustomerRow> {
  trx.about({ customerId: id });
  return trx.insert('customer', { id, ...customerColumns(fields), created_at: trx.at });
}

export function addCustomer(
  ctx: ShopContext,
  input: ContractInputs['customers']['add'],
): Promise<Changed> {
  const { commandId, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'customers.add' }, async (trx) =>
    changedOf(await insertCustomer(trx, ctx.newId(), fields)),
  );
}

export function editCustomer(
  ctx: ShopContext,
  input: ContractInputs['customers']['edit'],
): Promise<Changed> {
  const { commandId, id, rowVersion, ...fields } = input;
  return runCommand(ctx, { id: commandId, name: 'customers.edit' }, async (trx) => {
    trx.about({ customerId: id });
    const row = await trx.update('customer', id, rowVersion, customerColumns(fields));
    const line = { kind: 'customer', summary: 'Customer details changed' };
    await noteOnOpenOrders(trx, ctx, { customerId: id }, line);
    return changedOf(row);
  });
}

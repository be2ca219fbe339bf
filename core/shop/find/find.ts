import { sql } from 'kysely';
import type { Found } from '../../../shared/contract/find.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { SearchRow } from '../../storage/tables.ts';
import { bowLine } from '../bows/bow-line.ts';
import { foundConsumables, scannedLabel } from './found-stores.ts';
import { ftsQuery } from './fts-query.ts';

type Kind = SearchRow['kind'];

/** Ids of records of one kind that hold every word, best first. */
export async function matchingIds(
  shop: OpenShop,
  kind: Kind,
  text: string,
  limit: number,
): Promise<string[]> {
  const query = ftsQuery(text);
  if (query === null) return [];
  const rows = await shop.read
    .selectFrom('search')
    .select('ref')
    .where('kind', '=', kind)
    .where(sql<boolean>`search MATCH ${query}`)
    .orderBy('rank')
    .limit(limit)
    .execute();
  return rows.map((row) => row.ref);
}

async function foundOrders(shop: OpenShop, text: string): Promise<Found[]> {
  const ids = await matchingIds(shop, 'order', text, 10);
  if (ids.length === 0) return [];
  const rows = await shop.read
    .selectFrom('shop_order')
    .leftJoin('customer', 'customer.id', 'shop_order.customer_id')
    .select(['shop_order.id', 'shop_order.number', 'customer.name'])
    .where('shop_order.id', 'in', ids)
    .orderBy('shop_order.number', 'desc')
    .execute();
  return rows.map((row) => ({
    kind: 'order',
    id: row.id,
    title: row.number,
    subtitle: row.name ?? 'the shop',
  }));
}

async function foundCustomers(shop: OpenShop, text: string): Promise<Found[]> {
  const ids = await matchingIds(shop, 'customer', text, 12);
  if (ids.length === 0) return [];
  const rows = await shop.read
    .selectFrom('customer')
    .select(['id', 'name', 'city', 'phone'])
    .where('id', 'in', ids)
    .orderBy('name')
    .execute();
  return rows.map((row) => ({
    kind: 'customer',
    id: row.id,
    title: row.name,
    subtitle: [row.city, row.phone].filter((part) => part !== '').join(', '),
  }));
}

async function foundBows(shop: OpenShop, text: string): Promise<Found[]> {
  const ids = await matchingIds(shop, 'bow', text, 12);
  if (ids.length === 0) return [];
  const rows = await shop.read
    .selectFrom('bow')
    .leftJoin('customer', 'customer.id', 'bow.customer_id')
    .selectAll('bow')
    .select('customer.name as owner_name')
    .where('bow.id', 'in', ids)
    .execute();
  return rows.map((row) => ({
    kind: 'bow',
    id: row.id,
    title: bowLine(row),
    subtitle: row.owner_name ?? "the shop's own",
  }));
}

/** Everything that holds all the words typed: orders, then people, bows, consumables. */
export async function findAnything(shop: OpenShop, text: string): Promise<Found[]> {
  const label = await scannedLabel(shop, text);
  if (label !== null) return [label];
  const lists = await Promise.all([
    foundOrders(shop, text),
    foundCustomers(shop, text),
    foundBows(shop, text),
    foundConsumables(shop, text),
  ]);
  return lists.flat();
}

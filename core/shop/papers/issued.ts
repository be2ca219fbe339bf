import { sql } from 'kysely';
import { type ListedPaper, type Paper, papersPerPage } from '../../../shared/contract/papers.ts';
import type { ContractInputs, ContractOutputs } from '../../../shared/contract/types.ts';
import { closedStages } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow, PaperRow } from '../../storage/tables.ts';
import { openStops, stopsOf } from '../findings/open-stops.ts';
import { cardsWhere } from '../orders/cards.ts';
import { readOrder } from '../orders/order-row.ts';
import { aboutLines } from './about-line.ts';

/** Instant of the last thing that happened to the order and was not itself a paper; empty where there is none. */
async function lastChangeAt(shop: OpenShop, orderId: string): Promise<string> {
  const row = await shop.read
    .selectFrom('order_history')
    .select((eb) => eb.fn.max('at').as('at'))
    .where('order_id', '=', orderId)
    .where('kind', 'not in', ['paper', 'file', 'belonging-back', 'task', 'message', 'stock'])
    .executeTakeFirst();
  return row?.at ?? '';
}

/** Instant of the last stop finding that keeps the bow of this order, noted on any of its orders. */
async function lastStopAt(shop: OpenShop, order: OrderRow): Promise<string> {
  const stops = stopsOf(await openStops(shop.read), order);
  return (
    stops
      .map((stop) => stop.foundAt)
      .sort()
      .at(-1) ?? ''
  );
}

/** What an order's papers are held against. */
interface Against {
  order: OrderRow;
  /** Last change of anything that is printed. */
  changedAt: string;
  stopAt: string;
}

async function againstOf(shop: OpenShop, order: OrderRow): Promise<Against> {
  const stopAt = await lastStopAt(shop, order);
  const changedAt = [await lastChangeAt(shop, order.id), stopAt].sort().at(-1) ?? '';
  return { order, changedAt, stopAt };
}

/**
 * Once the bow has left nobody works by its papers any more, and leaving itself changed the order:
 * only a stop finding since, which a tag would have to tell, makes one out of date.
 */
function isOutdated(row: PaperRow, { order, changedAt, stopAt }: Against): boolean {
  if (closedStages.includes(order.stage)) return stopAt > row.made_at;
  return row.order_row_version !== order.row_version || changedAt > row.made_at;
}

function paperOf(row: PaperRow & { person_name: string }, outdated: boolean): Paper {
  return {
    id: row.id,
    kind: row.kind,
    format: row.format as Paper['format'],
    copy: row.copy as Paper['copy'],
    action: row.action,
    fileName: row.file_name,
    pages: row.pages,
    madeAt: row.made_at,
    personName: row.person_name,
    outdated,
  };
}

/** Papers handed out for an order, newest first; marked where what they tell has changed since. */
export async function papersOf(shop: OpenShop, order: OrderRow): Promise<Paper[]> {
  const against = await againstOf(shop, order);
  const rows = await shop.read
    .selectFrom('paper')
    .innerJoin('person', 'person.id', 'paper.person_id')
    .selectAll('paper')
    .select('person.name as person_name')
    .where('order_id', '=', order.id)
    .orderBy('made_at', 'desc')
    .orderBy('paper.id', 'desc')
    .limit(1000)
    .execute();
  return rows.map((row) => paperOf(row, isOutdated(row, against)));
}

type ListInput = ContractInputs['papers']['list'];

function listedRows(shop: OpenShop, { kind, orderNumber, page }: ListInput) {
  // Written as typed: % and _ are no wildcards in an order number.
  const part = `%${orderNumber.replaceAll(/[%_\\]/g, '\\$&')}%`;
  return shop.read
    .selectFrom('paper')
    .innerJoin('person', 'person.id', 'paper.person_id')
    .leftJoin('shop_order', 'shop_order.id', 'paper.order_id')
    .selectAll('paper')
    .select('person.name as person_name')
    .$if(kind !== null, (query) => query.where('paper.kind', '=', kind ?? 'work-order'))
    .$if(orderNumber !== '', (query) =>
      query.where(sql<boolean>`shop_order.number LIKE ${part} ESCAPE '\\'`),
    )
    .orderBy('paper.made_at', 'desc')
    .orderBy('paper.id', 'desc')
    .offset(page * papersPerPage)
    .limit(papersPerPage + 1)
    .execute();
}

/** Every paper that went out, newest first. */
export async function listPapers(
  shop: OpenShop,
  input: ListInput,
): Promise<ContractOutputs['papers']['list']> {
  const rows = await listedRows(shop, input);
  const shown = rows.slice(0, papersPerPage);
  const orderIds = [...new Set(shown.flatMap(({ order_id }) => order_id ?? []))];
  const cards = await cardsWhere(shop, (query) => query.where('shop_order.id', 'in', orderIds));
  const orders = new Map<string, Against>();
  for (const id of orderIds) {
    orders.set(id, await againstOf(shop, await readOrder(shop.read, id)));
  }
  const ofNone = shown.filter(({ order_id }) => order_id === null);
  const lines = await aboutLines(
    shop,
    ofNone.flatMap(({ about_id }) => about_id ?? []),
  );
  const papers = shown.map((row): ListedPaper => {
    const about = orders.get(row.order_id ?? '');
    const card = cards.find(({ id }) => id === row.order_id);
    const outdated = about !== undefined && isOutdated(row, about);
    return {
      ...paperOf(row, outdated),
      aboutId: row.about_id,
      orderId: row.order_id,
      orderNumber: card?.number ?? null,
      orderLine: (row.order_id === null
        ? [lines.get(row.about_id ?? '') ?? '']
        : [card?.customerName ?? '', card?.bowLine ?? '']
      )
        .filter((text) => text !== '')
        .join(', ')
        .slice(0, 400),
    };
  });
  return { papers, more: rows.length > papersPerPage };
}

import { type Kysely, sql } from 'kysely';
import type { ReorderFacts } from '../../../shared/contract/stores.ts';
import type { StockMark } from '../../../shared/stores.ts';
import { expired, onHandInDate } from '../../schedule/issue.ts';
import { onHand } from '../../schedule/stock.ts';
import type { ConsumableRow, Tables } from '../../storage/tables.ts';
import { addDays, dayOf } from '../day.ts';
import { expiringLots } from './expiring.ts';
import { reorderFacts } from './reorder-facts.ts';
import { type StockedLot, stockedLots } from './stocked-lot.ts';
import { type DatedMove, usageFrom, usageWeeks, useKinds } from './usage.ts';

/** One consumable as it stands: its lots in the order they are used, and what follows from them. */
export interface Shelf {
  row: ConsumableRow;
  lots: StockedLot[];
  onHand: number;
  inDate: number;
  marks: StockMark[];
  reorder: ReorderFacts;
}

async function usesSince(
  db: Kysely<Tables>,
  today: string,
  id: string | null,
): Promise<Map<string, DatedMove[]>> {
  // Local days: a day more is read than is looked at.
  const from = `${addDays(today, -usageWeeks * 7 - 1)}T00:00:00.000Z`;
  const rows = await db
    .selectFrom('stock_move')
    .select(['consumable_id', 'at', 'kind', 'quantity'])
    .where('kind', 'in', useKinds)
    .where('at', '>=', from)
    .$if(id !== null, (query) => query.where('consumable_id', '=', id ?? ''))
    .execute();
  const byConsumable = Map.groupBy(rows, (row) => row.consumable_id);
  return new Map(
    [...byConsumable].map(([key, own]) => [
      key,
      own.map(({ at, kind, quantity }) => ({ day: dayOf(at), kind, quantity })),
    ]),
  );
}

async function firstMoves(db: Kysely<Tables>, id: string | null): Promise<Map<string, string>> {
  const rows = await db
    .selectFrom('stock_move')
    .select('consumable_id')
    .select(sql<string>`MIN(at)`.as('first'))
    .$if(id !== null, (query) => query.where('consumable_id', '=', id ?? ''))
    .groupBy('consumable_id')
    .execute();
  return new Map(rows.map((row) => [row.consumable_id, dayOf(row.first)]));
}

function marksOf(
  { lots, inDate, reorder }: Pick<Shelf, 'lots' | 'inDate' | 'reorder'>,
  active: boolean,
  today: string,
): StockMark[] {
  const near = expiringLots(lots, today);
  const marks: [StockMark, boolean][] = [
    ['out', active && inDate <= 0],
    ['expired', near.some((lot) => expired(lot, today))],
    ['order', active && reorder.toOrder],
    ['expiring', near.some((lot) => !expired(lot, today))],
  ];
  return marks.filter(([, shown]) => shown).map(([mark]) => mark);
}

/** All consumables as they stand, or one of them. */
export async function readShelves(
  db: Kysely<Tables>,
  today: string,
  id: string | null = null,
): Promise<Shelf[]> {
  const rows = await db
    .selectFrom('consumable')
    .selectAll()
    .$if(id !== null, (query) => query.where('id', '=', id ?? ''))
    .limit(2000)
    .execute();
  const uses = await usesSince(db, today, id);
  const firsts = await firstMoves(db, id);
  const lots = Map.groupBy(
    await stockedLots(db, id === null ? 'all' : { consumableId: id }),
    (lot) => lot.row.consumable_id,
  );
  return rows.map((row) => {
    const own = lots.get(row.id) ?? [];
    const inDate = onHandInDate(own, today);
    const since = firsts.get(row.id);
    const usage = since === undefined ? null : usageFrom(uses.get(row.id) ?? [], since, today);
    const reorder = reorderFacts(row, { lots: own, inDate, today }, usage);
    return {
      row,
      lots: own,
      onHand: onHand(own.map((lot) => ({ lotId: lot.id, quantity: lot.onHand }))),
      inDate,
      reorder,
      marks: marksOf({ lots: own, inDate, reorder }, row.active === 1, today),
    };
  });
}

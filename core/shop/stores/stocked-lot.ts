import { type Kysely, sql } from 'kysely';
import type { Lot as LotAnswer } from '../../../shared/contract/stores.ts';
import { lotName } from '../../../shared/stores.ts';
import { expired, type Lot, usedBefore } from '../../schedule/issue.ts';
import { onHand } from '../../schedule/stock.ts';
import type { LotRow, Tables } from '../../storage/tables.ts';
import { addDays } from '../day.ts';

/** A lot with what is left of it and the last day it may be used. */
export interface StockedLot extends Lot {
  row: LotRow;
  name: string;
}

/**
 * Last day a lot may be used: the printed one or, where it is earlier, the last of the days it
 * keeps once opened, counted from the day after.
 */
export function lastDayOf(
  lot: Pick<LotRow, 'expires_on' | 'opened_on'>,
  openedDays: number | null,
): string | null {
  const { expires_on: printed, opened_on: opened } = lot;
  if (opened === null || openedDays === null) return printed;
  const once = addDays(opened, openedDays);
  return printed === null || once < printed ? once : printed;
}

type Which = { consumableId: string } | { lotId: string } | 'all';

/** Sums of the moves, in the database: a shop of years has many of them. */
function rowsOf(db: Kysely<Tables>, which: Which) {
  return db
    .selectFrom('lot')
    .innerJoin('consumable', 'consumable.id', 'lot.consumable_id')
    .leftJoin('stock_move', 'stock_move.lot_id', 'lot.id')
    .selectAll('lot')
    .select('consumable.opened_days')
    .select(sql<number>`COALESCE(SUM(stock_move.quantity), 0)`.as('left'))
    .$if(which !== 'all' && 'consumableId' in which, (query) =>
      query.where('lot.consumable_id', '=', (which as { consumableId: string }).consumableId),
    )
    .$if(which !== 'all' && 'lotId' in which, (query) =>
      query.where('lot.id', '=', (which as { lotId: string }).lotId),
    )
    .groupBy('lot.id')
    .execute();
}

/** Lots in the order they are used. */
export async function stockedLots(db: Kysely<Tables>, which: Which): Promise<StockedLot[]> {
  const rows = await rowsOf(db, which);
  return rows
    .map(({ left, opened_days: openedDays, ...row }) => ({
      id: row.id,
      row,
      name: lotName({ number: row.number, receivedOn: row.received_on }),
      expiresOn: lastDayOf(row, openedDays),
      receivedOn: row.received_on,
      onHand: onHand([{ lotId: row.id, quantity: left }]),
    }))
    .sort(usedBefore);
}

/** As it is answered; `lots` are those of the same consumable, in the order they are used. */
export function lotAnswers(lots: readonly StockedLot[], today: string): LotAnswer[] {
  const next = lots.find((lot) => lot.onHand > 0 && !expired(lot, today));
  return lots.map((lot) => ({
    id: lot.id,
    rowVersion: lot.row.row_version,
    consumableId: lot.row.consumable_id,
    number: lot.row.number,
    barcode: lot.row.barcode,
    receivedOn: lot.receivedOn,
    expiresOn: lot.row.expires_on,
    openedOn: lot.row.opened_on,
    lastDay: lot.expiresOn,
    expired: expired(lot, today),
    next: lot.id === next?.id,
    costCents: lot.row.cost_cents,
    note: lot.row.note,
    onHand: lot.onHand,
  }));
}

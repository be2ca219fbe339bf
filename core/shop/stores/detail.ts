import type { ConsumableDetail, StockMove } from '../../../shared/contract/stores.ts';
import { hazardCaution, whoDecides } from '../../../shared/hazards.ts';
import { lotName } from '../../../shared/stores.ts';
import type { OpenShop } from '../../storage/context.ts';
import { dayOf } from '../day.ts';
import { notFound } from '../record.ts';
import { consumableFieldsOf, hazardsOf } from './consumable-row.ts';
import { readShelves, type Shelf } from './shelf.ts';
import { lotAnswers } from './stocked-lot.ts';

const shownMoves = 300;

async function latestMoves(shop: OpenShop, consumableId: string): Promise<StockMove[]> {
  const rows = await shop.read
    .selectFrom('stock_move')
    .innerJoin('lot', 'lot.id', 'stock_move.lot_id')
    .innerJoin('person', 'person.id', 'stock_move.person_id')
    .leftJoin('shop_order', 'shop_order.id', 'stock_move.order_id')
    .leftJoin('batch', 'batch.id', 'stock_move.batch_id')
    .selectAll('stock_move')
    .select(['lot.number as lot_number', 'lot.received_on', 'person.name as person_name'])
    .select(['shop_order.number as order_number', 'batch.name as batch_name'])
    .where('stock_move.consumable_id', '=', consumableId)
    .orderBy('stock_move.at', 'desc')
    .orderBy('stock_move.id', 'desc')
    .limit(shownMoves + 1)
    .execute();
  return rows.map((row) => ({
    id: row.id,
    at: row.at,
    personName: row.person_name,
    kind: row.kind,
    quantity: row.quantity,
    lotId: row.lot_id,
    lotName: lotName({ number: row.lot_number, receivedOn: row.received_on }),
    orderId: row.order_id,
    orderNumber: row.order_number,
    batchName: row.batch_name,
    reason: row.reason,
  }));
}

/** What is left first, in the order it is used; then the empty ones, latest first. */
function inOrderOfUse(shelf: Shelf, today: string) {
  const lots = lotAnswers(shelf.lots, today);
  const holding = lots.filter((lot) => lot.onHand > 0);
  const empty = lots.filter((lot) => lot.onHand <= 0).toReversed();
  return [...holding, ...empty].slice(0, 1000);
}

/** @throws ShopError NOT_FOUND */
export async function getConsumable(shop: OpenShop, id: string): Promise<ConsumableDetail> {
  const today = dayOf(shop.now());
  const [shelf] = await readShelves(shop.read, today, id);
  if (shelf === undefined) throw notFound('consumable', id);
  const { row } = shelf;
  const moves = await latestMoves(shop, id);
  const hazards = hazardsOf(row);
  return {
    id: row.id,
    rowVersion: row.row_version,
    ...consumableFieldsOf(row),
    active: row.active === 1,
    onHand: shelf.onHand,
    inDate: shelf.inDate,
    onOrder: row.on_order,
    marks: shelf.marks,
    reorder: shelf.reorder,
    lots: inOrderOfUse(shelf, today),
    moves: moves.slice(0, shownMoves),
    moreMoves: moves.length > shownMoves,
    cautions:
      hazards.length === 0 ? [] : [...hazards.map((hazard) => hazardCaution[hazard]), whoDecides],
  };
}

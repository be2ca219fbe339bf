import type {
  ConsumableSummary,
  ExpiringLot,
  ShoppingItem,
} from '../../../shared/contract/stores.ts';
import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { gritScales, type SizedGrit } from '../../../shared/grit.ts';
import { whoDecides } from '../../../shared/hazards.ts';
import { categories } from '../../../shared/stores.ts';
import { gritsOf } from '../../finish/grit.ts';
import { expired } from '../../schedule/issue.ts';
import type { OpenShop } from '../../storage/context.ts';
import { dayOf } from '../day.ts';
import { storesCautions } from './cautions.ts';
import { gritOf, hazardsOf, sizedGrit } from './consumable-row.ts';
import { expiringLots } from './expiring.ts';
import { readShelves, type Shelf } from './shelf.ts';

type Outputs = ContractOutputs['stores'];

function summaryOf(shelf: Shelf, today: string): ConsumableSummary {
  const { row, lots, reorder } = shelf;
  const next = lots.find((lot) => lot.onHand > 0 && !expired(lot, today));
  return {
    id: row.id,
    rowVersion: row.row_version,
    name: row.name,
    category: row.category,
    unit: row.unit,
    grit: gritOf(row),
    barcode: row.barcode,
    shelf: row.shelf,
    hazards: hazardsOf(row),
    active: row.active === 1,
    onHand: shelf.onHand,
    inDate: shelf.inDate,
    onOrder: row.on_order,
    nextLastDay: next?.expiresOn ?? null,
    coverageWeeks: reorder.coverageWeeks,
    marks: shelf.marks,
  };
}

const byText = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });

/** By category; abrasives by the size of the grain, never by the number on the sheet. */
function inShelfOrder(a: ConsumableSummary, b: ConsumableSummary): number {
  if (a.active !== b.active) return a.active ? -1 : 1;
  const category = categories.indexOf(a.category) - categories.indexOf(b.category);
  if (category !== 0) return category;
  const grain = (b.grit?.micrometres ?? 0) - (a.grit?.micrometres ?? 0);
  return grain === 0 ? byText.compare(a.name, b.name) : grain;
}

function expiringOf(shelves: readonly Shelf[], today: string): ExpiringLot[] {
  return shelves
    .flatMap(({ row, lots }) =>
      expiringLots(lots, today).map((lot) => ({
        consumableId: row.id,
        name: row.name,
        unit: row.unit,
        lotId: lot.id,
        lotName: lot.name,
        lastDay: lot.expiresOn,
        expired: expired(lot, today),
        onHand: lot.onHand,
      })),
    )
    .sort((a, b) => (a.lastDay < b.lastDay ? -1 : 1))
    .slice(0, 2000);
}

export async function listStores(shop: OpenShop): Promise<Outputs['list']> {
  const today = dayOf(shop.now());
  const shelves = await readShelves(shop.read, today);
  return {
    today,
    consumables: shelves.map((shelf) => summaryOf(shelf, today)).sort(inShelfOrder),
    expiring: expiringOf(shelves, today),
    cautions: storesCautions(shelves),
    whoDecides,
  };
}

export async function shoppingList(shop: OpenShop): Promise<Outputs['shoppingList']> {
  const today = dayOf(shop.now());
  const shelves = await readShelves(shop.read, today);
  const wanted = shelves.filter(({ marks }) => marks.includes('order'));
  const order = wanted.map((shelf) => summaryOf(shelf, today)).sort(inShelfOrder);
  const items = order.flatMap(({ id }): ShoppingItem[] => {
    const shelf = wanted.find(({ row }) => row.id === id);
    if (shelf === undefined) return [];
    const { row, reorder, inDate } = shelf;
    return [
      {
        consumableId: row.id,
        rowVersion: row.row_version,
        name: row.name,
        category: row.category,
        unit: row.unit,
        quantity: reorder.orderQuantity,
        inDate,
        onOrder: row.on_order,
        why: reorder.sentence,
      },
    ];
  });
  return { today, items };
}

/** Every grit of both scales, coarsest first, whatever its number. */
export function listGrits(): SizedGrit[] {
  return gritScales
    .flatMap((scale) => gritsOf(scale))
    .sort((a, b) => b.micrometres - a.micrometres)
    .map(sizedGrit);
}

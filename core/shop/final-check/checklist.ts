import type { Entry } from '../../../shared/contract/entries.ts';
import type { FinalCheckRow } from '../../../shared/contract/final-check.ts';
import {
  type ChecklistRow,
  checklistFor,
  type FinalCheckSubject,
} from '../../../shared/final-checklist.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { BowRow, OrderRow } from '../../storage/tables.ts';
import { routeOf, servicesOf } from '../orders/order-json.ts';
import { lastBiteAt } from './last-bite.ts';

type CheckedBow = Pick<BowRow, 'construction' | 'take_down' | 'back_facing' | 'belly_facing'>;

/** A bow that nobody has identified is checked as if it were anything. */
function subjectOf(
  order: OrderRow,
  bow: CheckedBow | undefined,
  bitten: boolean,
): FinalCheckSubject {
  return {
    construction: bow?.construction ?? 'other',
    takeDown: bow?.take_down ?? 'one-piece',
    backFacing: bow?.back_facing ?? 'unknown',
    bellyFacing: bow?.belly_facing ?? 'unknown',
    services: servicesOf(order),
    cameAs: order.came_as,
    finished: routeOf(order).includes('finish'),
    bitten,
  };
}

/** The checks that the bow of an order gets, in the order they are made. */
export async function checklistOf(db: OpenShop['read'], order: OrderRow): Promise<ChecklistRow[]> {
  const bow = await db
    .selectFrom('bow')
    .select(['construction', 'take_down', 'back_facing', 'belly_facing'])
    .where('id', '=', order.bow_id ?? '')
    .executeTakeFirst();
  return checklistFor(subjectOf(order, bow, (await lastBiteAt(db, order.id)) !== null));
}

/**
 * The checklist with the last entry of each item that was not struck out.
 * @param entries of the order, newest first
 */
export async function finalCheckOf(
  shop: OpenShop,
  order: OrderRow,
  entries: readonly Entry[],
): Promise<FinalCheckRow[]> {
  const alive = entries.filter((entry) => entry.struckReason === null);
  const lastBite = (await lastBiteAt(shop.read, order.id)) ?? '';
  return (await checklistOf(shop.read, order)).map((row) => {
    const entry = alive.find((each) => each.item === row.item) ?? null;
    return { ...row, entry, outdated: entry !== null && entry.recordedAt <= lastBite };
  });
}

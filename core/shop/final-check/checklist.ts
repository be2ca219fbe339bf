import type { Entry } from '../../../shared/contract/entries.ts';
import type { FinalCheckRow } from '../../../shared/contract/final-check.ts';
import { type ChecklistRow, checklistFor } from '../../../shared/final-checklist.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { lastBiteAt, lastWorkAt } from './last-work.ts';
import { checkSubjectOf } from './subject.ts';

/** The checks that the bow of an order gets, in the order they are made. */
export async function checklistOf(db: OpenShop['read'], order: OrderRow): Promise<ChecklistRow[]> {
  const bow = await db
    .selectFrom('bow')
    .select(['construction', 'take_down', 'back_facing', 'belly_facing'])
    .where('id', '=', order.bow_id ?? '')
    .executeTakeFirst();
  return checklistFor(
    checkSubjectOf(order, bow ?? null, (await lastBiteAt(db, order.id)) !== null),
  );
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
  const lastWork = (await lastWorkAt(shop.read, order.id)) ?? '';
  return (await checklistOf(shop.read, order)).map((row) => {
    const entry = alive.find((each) => each.item === row.item) ?? null;
    return { ...row, entry, outdated: entry !== null && entry.recordedAt <= lastWork };
  });
}

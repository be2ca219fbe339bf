import type { EntryItem } from '../../shared/entries.ts';
import { newCommandId } from './new-command-id.ts';
import type { Flow } from './whole-flow.ts';

/**
 * An entry as a version wrote it that had no records for the same yet. Straight into the table:
 * no door writes one any more.
 */
export async function oldNote(
  { shop, orderId }: Flow,
  item: EntryItem,
  note = 'seen and noted',
  outcome: 'ok' | 'not-ok' = 'ok',
): Promise<{ id: string; rowVersion: number }> {
  const at = shop.clock.now();
  const id = newCommandId();
  await shop.core
    .shop()
    .write.insertInto('entry')
    .values({
      id,
      order_id: orderId,
      item,
      outcome,
      done_on: at.slice(0, 10),
      person_id: shop.owner.actor.personId,
      note,
      override_reason: null,
      recorded_at: at,
      struck_reason: null,
      row_version: 1,
    })
    .execute();
  return { id, rowVersion: 1 };
}

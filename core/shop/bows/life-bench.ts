import type { LifeEvent } from '../../../shared/contract/bow-life.ts';
import type { OpenShop } from '../../storage/context.ts';
import { lifeEvent } from './life-event.ts';

/** Findings on this bow, also those noted before anybody knew which bow it was. */
export async function findingEvents(shop: OpenShop, bowId: string): Promise<LifeEvent[]> {
  const rows = await shop.read
    .selectFrom('finding')
    .innerJoin('person', 'person.id', 'finding.found_by')
    .innerJoin('shop_order', 'shop_order.id', 'finding.order_id')
    .selectAll('finding')
    .select(['person.name as person_name', 'shop_order.number as order_number'])
    .where((eb) =>
      eb.or([
        eb('finding.bow_id', '=', bowId),
        eb.and([eb('finding.bow_id', 'is', null), eb('shop_order.bow_id', '=', bowId)]),
      ]),
    )
    .execute();
  return rows.map((row) =>
    lifeEvent({
      id: row.id,
      at: row.found_at,
      kind: 'finding',
      title: `Finding (${row.grade}): ${row.place}`,
      text: row.resolved_how === null ? row.note : `${row.note}\nResolved: ${row.resolved_how}`,
      personName: row.person_name,
      order: { id: row.order_id, number: row.order_number },
    }),
  );
}

/** Bites taken off the limbs. */
export async function removalEvents(shop: OpenShop, bowId: string): Promise<LifeEvent[]> {
  const rows = await shop.read
    .selectFrom('entry')
    .innerJoin('person', 'person.id', 'entry.person_id')
    .innerJoin('shop_order', 'shop_order.id', 'entry.order_id')
    .selectAll('entry')
    .select(['person.name as person_name', 'shop_order.number as order_number'])
    .where('shop_order.bow_id', '=', bowId)
    .where('entry.item', '=', 'removal')
    .execute();
  return rows.map((row) =>
    lifeEvent({
      id: row.id,
      at: row.recorded_at,
      kind: 'removal',
      title: row.outcome === 'ok' ? 'Bite taken' : 'Bite taken, not in order',
      text: row.note,
      personName: row.person_name,
      order: { id: row.order_id, number: row.order_number },
      struckReason: row.struck_reason,
    }),
  );
}

import { removalMethodLabels } from '../../../shared/bench.ts';
import type { LifeEvent } from '../../../shared/contract/bow-life.ts';
import type { OpenShop } from '../../storage/context.ts';
import { storedRemovalWords } from '../bench/removal-words.ts';
import { lifeEvent } from './life-event.ts';
import { removalRows } from './life-removed.ts';

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

/** Everything taken off the limbs, in words; what is only planned has not happened. */
export async function removalEvents(shop: OpenShop, bowId: string): Promise<LifeEvent[]> {
  const { rows, cuts, faces } = await removalRows(shop.read, bowId);
  const orders = await shop.read
    .selectFrom('shop_order')
    .select(['id', 'number'])
    .where(
      'id',
      'in',
      rows.map(({ order_id }) => order_id),
    )
    .execute();
  const people = await shop.read.selectFrom('person').select(['id', 'name']).execute();
  const numbers = new Map(orders.map(({ id, number }) => [id, number]));
  const names = new Map(people.map(({ id, name }) => [id, name]));
  return rows.flatMap((row) => {
    if (row.done_at === null) return [];
    const isNoted = row.method === 'noted';
    return lifeEvent({
      id: row.id,
      at: row.done_at,
      kind: 'removal',
      title: isNoted ? removalMethodLabels.noted : storedRemovalWords(row, cuts, faces),
      text: row.note,
      personName: names.get(row.person_id) ?? '',
      order: { id: row.order_id, number: numbers.get(row.order_id) ?? '' },
      struckReason: row.struck_reason,
    });
  });
}

import { lotName } from '../../../shared/stores.ts';
import type { OpenShop } from '../../storage/context.ts';

/** What a paper of no order is about, by the id it was made for: a shelf, a lot, a batch. */
export async function aboutLines(
  { read }: OpenShop,
  ids: readonly string[],
): Promise<Map<string, string>> {
  const consumables = await read
    .selectFrom('consumable')
    .select(['id', 'name'])
    .where('id', 'in', ids)
    .execute();
  const lots = await read
    .selectFrom('lot')
    .innerJoin('consumable', 'consumable.id', 'lot.consumable_id')
    .select(['lot.id', 'lot.number', 'lot.received_on', 'consumable.name'])
    .where('lot.id', 'in', ids)
    .execute();
  const batches = await read
    .selectFrom('batch')
    .select(['id', 'name'])
    .where('id', 'in', ids)
    .execute();
  return new Map([
    ...consumables.map(({ id, name }) => [id, name] as const),
    ...lots.map(({ id, name, number, received_on: receivedOn }) => {
      return [id, `${name}, lot ${lotName({ number, receivedOn })}`] as const;
    }),
    ...batches.map(({ id, name }) => [id, name] as const),
  ]);
}

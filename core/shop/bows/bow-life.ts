import type { ContractOutputs } from '../../../shared/contract/types.ts';
import type { OpenShop } from '../../storage/context.ts';
import { storedReadingsOfBow } from '../readings/stored.ts';
import { getBow } from './bows.ts';
import { geometryOf } from './geometry.ts';
import { findingEvents, removalEvents } from './life-bench.ts';
import type { LifeNames } from './life-event.ts';
import { glassEvents } from './life-glass.ts';
import { glassLeftOf } from './life-glass-left.ts';
import { geometryEvents, lifeWeights, weighingEvents } from './life-measured.ts';
import { incidentEvents, markingEvents, moveEvents, shipmentEvents } from './life-orders.ts';
import { countedRemovals, lifetimeOf, removalRows } from './life-removed.ts';

/** Most events one page is sent; a bow would have to be worked on for decades. */
const mostEvents = 5000;

async function namesFor(shop: OpenShop, known: ContractOutputs['bows']['get']): Promise<LifeNames> {
  const people = await shop.read.selectFrom('person').select(['id', 'name']).execute();
  // A weighing may stand on an order that another bow was put on since.
  const orders = await shop.read
    .selectFrom('shop_order')
    .select(['id', 'number'])
    .where((eb) =>
      eb.or([
        eb('bow_id', '=', known.bow.id),
        eb(
          'id',
          'in',
          eb.selectFrom('reading').select('order_id').where('bow_id', '=', known.bow.id),
        ),
      ]),
    )
    .execute();
  return {
    people: new Map(people.map((row) => [row.id, row.name])),
    orders: new Map(orders.map((row) => [row.id, row.number])),
    limbSets: new Map(known.limbSets.map((set) => [set.id, set.name])),
  };
}

/** @see contract.bows.life */
export async function bowLifeOf(
  shop: OpenShop,
  id: string,
): Promise<ContractOutputs['bows']['life']> {
  const known = await getBow(shop, id);
  const names = await namesFor(shop, known);
  const readings = await storedReadingsOfBow(shop.read, id);
  const geometry = await geometryOf(shop, id);
  const ofOrders = await Promise.all(
    [findingEvents, removalEvents, glassEvents, shipmentEvents, incidentEvents].map((read) =>
      read(shop, id),
    ),
  );
  const removals = countedRemovals(await removalRows(shop.read, id));
  const events = [
    ...weighingEvents(readings, names),
    ...geometryEvents(geometry),
    ...ofOrders.flat(),
    ...(await markingEvents(shop, id)),
    ...(await moveEvents(shop, id)),
  ];
  return {
    ...known,
    geometry,
    lifetime: lifetimeOf(removals, names.limbSets),
    glassLeft: await glassLeftOf(shop, id, removals, names.limbSets),
    weights: lifeWeights(readings, names),
    events: events
      .toSorted((a, b) => b.at.localeCompare(a.at) || b.id.localeCompare(a.id))
      .slice(0, mostEvents),
  };
}

import type { ContractOutputs } from '../../../shared/contract/types.ts';
import { closedStages } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import { readClockTrouble } from './clock-trouble.ts';
import { batchClocks, inOrder, orderClocks } from './clocks.ts';
import { airSince, noFinishRows, storedFinish } from './stored.ts';
import { lastCoat } from './window-of.ts';

const dayMs = 24 * 60 * 60_000;

/** Batches whose pot life ended not longer than a day ago. */
function batchesSince(shop: OpenShop, now: string) {
  return shop.read
    .selectFrom('batch')
    .selectAll()
    .where('discarded_at', 'is', null)
    .where('usable_until', '>', new Date(Date.parse(now) - dayMs).toISOString())
    .execute();
}

/** Bows in the house with a coat on them. */
function coatedOrders(shop: OpenShop) {
  return shop.read
    .selectFrom('shop_order')
    .select(['id', 'number', 'stage'])
    .where('stage', 'not in', closedStages)
    .where('id', 'in', (from) =>
      from.selectFrom('coat').select('order_id').where('struck_reason', 'is', null),
    )
    .execute();
}

/** Reckoned afresh from the records each time: nothing runs in memory. @see contract.clocks.list */
export async function listClocks(shop: OpenShop): Promise<ContractOutputs['clocks']['list']> {
  const now = shop.now();
  const orders = await coatedOrders(shop);
  const rows = await storedFinish(
    shop.read,
    orders.map((order) => order.id),
  );
  const oldest = orders
    .filter((order) => order.stage === 'finish')
    .flatMap((order) => lastCoat(rows.get(order.id) ?? noFinishRows)?.at ?? [])
    .sort()[0];
  const airs = oldest === undefined ? [] : await airSince(shop.read, oldest);
  const ofOrders = orders.flatMap((order) =>
    orderClocks(
      {
        id: order.id,
        number: order.number,
        inFinish: order.stage === 'finish',
        rows: rows.get(order.id) ?? noFinishRows,
      },
      airs,
      now,
    ),
  );
  const ofBatches = (await batchesSince(shop, now)).flatMap((batch) => batchClocks(batch, now));
  return {
    now,
    clocks: inOrder([...ofBatches, ...ofOrders]).slice(0, 1000),
    trouble: await readClockTrouble(shop.read, now),
  };
}

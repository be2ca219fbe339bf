import { closedStages } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { readManyFacts } from '../gates/facts.ts';
import { openQuestions } from './open-questions.ts';

/** How many questions to the customer are open, by order; none once the bow has left. */
export async function questionCounts(
  shop: Pick<OpenShop, 'read' | 'now'>,
  orders: readonly OrderRow[],
): Promise<(orderId: string) => number> {
  const asked = await shop.read
    .selectFrom('consent')
    .select('order_id')
    .distinct()
    .where(
      'order_id',
      'in',
      orders.map(({ id }) => id),
    )
    .execute();
  const ids = new Set(asked.map(({ order_id }) => order_id));
  const inWork = orders.filter(({ id, stage }) => ids.has(id) && !closedStages.includes(stage));
  const facts = await readManyFacts(shop.read, inWork, shop.now());
  return (orderId) => {
    const its = facts.get(orderId);
    return its === undefined ? 0 : openQuestions(its.rows.consents, its.facts).length;
  };
}

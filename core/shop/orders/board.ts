import type { OrderCard } from '../../../shared/contract/order-card.ts';
import { closedStages } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import { cardsWhere } from './cards.ts';

const keptOnBoardMs = 14 * 24 * 60 * 60 * 1000;

/** Orders in work; with `includeClosed` also those that left in the last two weeks. */
export async function boardCards(shop: OpenShop, includeClosed: boolean): Promise<OrderCard[]> {
  const since = new Date(Date.parse(shop.now()) - keptOnBoardMs).toISOString();
  return cardsWhere(shop, (query) =>
    query.where((eb) =>
      includeClosed
        ? eb.or([
            eb('shop_order.stage', 'not in', closedStages),
            eb('shop_order.stage_since', '>=', since),
          ])
        : eb('shop_order.stage', 'not in', closedStages),
    ),
  );
}

import type { Core } from '../../../core/host/core.ts';
import { addFinding } from '../../../core/shop/findings/findings.ts';
import { getOrder } from '../../../core/shop/orders/detail.ts';
import { holdOrder } from '../../../core/shop/orders/holds.ts';
import type { OrderDetail } from '../../../shared/contract/orders.ts';
import { furnishShop } from '../../support/furnish-shop.ts';
import { checkedScale, newCommandId, takeIn } from '../../support/test-shop.ts';
import { Flow } from '../../support/whole-flow.ts';

export interface FrozenStory {
  orders: OrderDetail[];
}

/** Every order of a shop, as the program tells it, without what depends on the present moment. */
export async function storyOf(core: Core): Promise<FrozenStory> {
  const shop = core.shop();
  const ids = await shop.read.selectFrom('shop_order').select('id').orderBy('number').execute();
  const orders = await Promise.all(ids.map(({ id }) => getOrder(shop, id)));
  return { orders };
}

/** A row in every table that an order touches. */
export async function fillShop(dataFolder: string): Promise<{ core: Core; story: FrozenStory }> {
  const shop = await furnishShop(dataFolder);
  const scaleId = await checkedScale(shop);
  const { id } = await takeIn(shop);
  const flow = new Flow(shop, id);
  await flow.move('arrived', { override: { reason: 'on the table' } });
  await flow.note('condition', 'finish worn at the grip');
  await flow.weigh(scaleId, 'arrival', 52.3);
  await flow.grant('price-and-scope');
  await flow.ask('alteration-acknowledgement');
  const held = await takeIn(shop);
  await addFinding(shop.owner, {
    commandId: newCommandId(),
    orderId: held.id,
    grade: 'watch',
    place: 'lower tip',
    note: 'overlay hairline',
  });
  await holdOrder(shop.owner, {
    commandId: newCommandId(),
    id: held.id,
    rowVersion: (await getOrder(shop.owner, held.id)).card.rowVersion,
    kind: 'customer',
    reason: 'waits for an answer',
    remindOn: '2026-04-01',
  });
  return { core: shop.core, story: await storyOf(shop.core) };
}

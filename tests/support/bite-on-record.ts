import { getOrder } from '../../core/shop/orders/detail.ts';
import type { TestShop } from './test-shop.ts';

/** A bite that got on record, past its gates: where only its instant matters. */
export async function biteOnRecord(shop: TestShop, orderId: string): Promise<void> {
  const at = shop.clock.now();
  const { bow } = await getOrder(shop.owner, orderId);
  await shop.core
    .shop()
    .write.insertInto('removal')
    .values({
      id: `bite-${at.replaceAll(/\W/g, '-')}`,
      row_version: 1,
      order_id: orderId,
      bow_id: bow?.id ?? '',
      limb_set_id: null,
      plan_id: null,
      method: 'noted',
      tool: '',
      edge_radius_in: null,
      modelled_drop: null,
      drop_sd: null,
      forecast_lbf: null,
      forecast_sd_lbf: null,
      planned_at: at,
      done_at: at,
      remeasured_at: null,
      note: 'a stroke on both limbs',
      person_id: shop.owner.actor.personId,
      struck_reason: null,
    })
    .execute();
}

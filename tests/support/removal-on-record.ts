import { getOrder } from '../../core/shop/orders/detail.ts';
import type { RemovalCutRow, RemovalFaceRow, RemovalRow } from '../../core/storage/tables.ts';
import type { TestShop } from './test-shop.ts';

type Cut = Pick<RemovalCutRow, 'limb' | 'from_fade_in'> & Partial<RemovalCutRow>;
type Face = Pick<RemovalFaceRow, 'limb' | 'face' | 'planned_thou'> & Partial<RemovalFaceRow>;

/** A removal that got on record, done now, past every gate; with its cuts and faces. */
export async function removalOnRecord(
  shop: TestShop,
  orderId: string,
  row: Partial<RemovalRow> & Pick<RemovalRow, 'id' | 'method'>,
  { cuts = [], faces = [] }: { cuts?: readonly Cut[]; faces?: readonly Face[] } = {},
): Promise<void> {
  const at = shop.clock.now();
  const { bow } = await getOrder(shop.owner, orderId);
  const { write } = shop.core.shop();
  await write
    .insertInto('removal')
    .values({
      row_version: 1,
      order_id: orderId,
      bow_id: bow?.id ?? '',
      limb_set_id: null,
      plan_id: null,
      tool: 'scraper',
      edge_radius_in: null,
      modelled_drop: 0.05,
      drop_sd: 0.004,
      forecast_lbf: null,
      forecast_sd_lbf: null,
      planned_at: at,
      done_at: at,
      remeasured_at: null,
      note: '',
      person_id: shop.owner.actor.personId,
      struck_reason: null,
      ...row,
    })
    .execute();
  for (const [i, cut] of cuts.entries()) {
    await write
      .insertInto('removal_cut')
      .values({
        id: `${row.id}-cut-${i}`,
        removal_id: row.id,
        row_version: 1,
        planned_left_in: 0,
        planned_right_in: 0,
        done_left_in: null,
        done_right_in: null,
        width_before_in: null,
        width_after_in: null,
        ...cut,
      })
      .execute();
  }
  for (const [i, face] of faces.entries()) {
    await write
      .insertInto('removal_face')
      .values({
        id: `${row.id}-face-${i}`,
        removal_id: row.id,
        row_version: 1,
        done_thou: null,
        measured_thou: null,
        ...face,
      })
      .execute();
  }
}

import type { Kysely } from 'kysely';
import type { OrderFields } from '../../../shared/contract/orders.ts';
import { ShopError } from '../../../shared/errors.ts';
import { stageLabels } from '../../../shared/stages.ts';
import type { OrderRow, Tables } from '../../storage/tables.ts';
import { notFound } from '../record.ts';
import type { RouteOptions } from './route.ts';
import { routeFor } from './route.ts';

/** @throws ShopError NOT_FOUND, or STALE where the caller saw an older version. */
export async function readOrder(
  db: Kysely<Tables>,
  id: string,
  expected?: number,
): Promise<OrderRow> {
  const row = await db.selectFrom('shop_order').selectAll().where('id', '=', id).executeTakeFirst();
  if (row === undefined) throw notFound('order', id);
  if (expected !== undefined && row.row_version !== expected) {
    throw new ShopError(
      'STALE',
      `Somebody changed order ${row.number} in the meantime; it stands in "${stageLabels[row.stage]}". Look again, then repeat.`,
      { order: id },
    );
  }
  return row;
}

/** A weight means nothing without its draw, and nothing is planned past a bow's safe draw. */
export function refuseOddTarget(
  fields: Pick<OrderFields, 'targetWeightLbf' | 'targetDrawIn'>,
  maxSafeDrawIn: number | null,
): void {
  const { targetWeightLbf, targetDrawIn } = fields;
  if ((targetWeightLbf === null) !== (targetDrawIn === null)) {
    throw new ShopError('BAD_INPUT', 'A target needs both its weight and its draw length.', {
      [targetWeightLbf === null ? 'targetWeightLbf' : 'targetDrawIn']: 'Give both or neither.',
    });
  }
  if (targetDrawIn !== null && maxSafeDrawIn !== null && targetDrawIn > maxSafeDrawIn) {
    throw new ShopError(
      'BAD_INPUT',
      `The target draw of ${targetDrawIn}" is past the bow's maximum safe draw of ${maxSafeDrawIn}".`,
      { targetDrawIn: 'Choose a draw the bow can take.' },
    );
  }
}

/** Columns of an order that the office may change, with the route its services need. */
export function orderColumns(fields: OrderFields, options: RouteOptions) {
  return {
    services_json: JSON.stringify(fields.services),
    route_json: JSON.stringify(routeFor(fields.services, options)),
    target_weight_lbf: fields.targetWeightLbf,
    target_draw_in: fields.targetDrawIn,
    tiller_target: fields.tillerTarget,
    promised_on: fields.promisedOn,
    estimate_cents: fields.estimateCents,
    ship_to: fields.shipTo,
    private_notes: fields.privateNotes,
    customer_notes: fields.customerNotes,
  };
}

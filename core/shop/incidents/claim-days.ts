import type { IncidentKind } from '../../../shared/incidents.ts';
import { closedStages } from '../../../shared/stages.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { OrderRow } from '../../storage/tables.ts';
import { addDays } from '../day.ts';

export interface ClaimDays {
  /** The parcel's carrier. */
  claimWith: string;
  /** Last day of the claim; null where the carrier's profile is not known. */
  claimUntil: string | null;
}

/**
 * Where a claim goes for what happened on the way, by the newest parcel of that way: out once the
 * bow has left the shop, else in. Null where no parcel is recorded, and for what the shop did itself.
 */
export async function claimOf(
  db: OpenShop['read'],
  order: OrderRow,
  incident: { kind: IncidentKind; happenedOn: string },
): Promise<ClaimDays | null> {
  if (incident.kind === 'damaged-here') return null;
  const parcel = await db
    .selectFrom('shipment')
    .leftJoin('carrier', 'carrier.id', 'shipment.carrier_id')
    .select(['shipment.carrier_name', 'carrier.claim_days'])
    .where('shipment.order_id', '=', order.id)
    .where('shipment.direction', '=', closedStages.includes(order.stage) ? 'out' : 'in')
    .where('shipment.struck_reason', 'is', null)
    .orderBy('shipment.recorded_at', 'desc')
    .orderBy('shipment.id', 'desc')
    .limit(1)
    .executeTakeFirst();
  if (parcel === undefined) return null;
  const days = parcel.claim_days;
  return {
    claimWith: parcel.carrier_name,
    claimUntil: days === null ? null : addDays(incident.happenedOn, days),
  };
}

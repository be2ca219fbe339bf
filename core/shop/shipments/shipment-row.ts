import type { Shipment } from '../../../shared/contract/shipments.ts';
import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Assessment } from '../../../shared/parcel.ts';
import type { OpenShop } from '../../storage/context.ts';
import type { CarrierRow, ShipmentRow } from '../../storage/tables.ts';

export type ShipmentFields = Omit<
  ContractInputs['shipments']['edit'],
  'commandId' | 'id' | 'rowVersion'
>;

/** @throws ShopError BAD_INPUT where the fields contradict each other. */
export function refuseOddShipment(fields: ShipmentFields): void {
  if (fields.carrierId === null && fields.carrierName === '') {
    throw new ShopError('BAD_INPUT', 'Say who carries the parcel.', {
      carrierName: 'Choose a carrier, or write its name.',
    });
  }
  if (fields.insured && fields.declaredCents === null) {
    throw new ShopError('BAD_INPUT', 'An insured parcel needs its declared value.', {
      declaredCents: 'Write the value that is insured.',
    });
  }
  const { shippedOn, deliveredOn } = fields;
  if (shippedOn !== null && deliveredOn !== null && deliveredOn < shippedOn) {
    throw new ShopError('BAD_INPUT', 'A parcel is not delivered before it is shipped.', {
      deliveredOn: 'Look at both days again.',
    });
  }
}

/** A carrier of the shop gives its own name; a tube has no height. */
export function shipmentColumns(fields: ShipmentFields, carrier: CarrierRow | null) {
  return {
    carrier_id: carrier?.id ?? null,
    carrier_name: carrier?.name ?? fields.carrierName,
    shape: fields.shape,
    length_in: fields.lengthIn,
    width_in: fields.widthIn,
    height_in: fields.shape === 'box' ? fields.heightIn : null,
    weight_lb: fields.weightLb,
    declared_cents: fields.declaredCents,
    value_evidence: fields.valueEvidence,
    insured: fields.insured ? (1 as const) : (0 as const),
    tracking: fields.tracking,
    shipped_on: fields.shippedOn,
    delivered_on: fields.deliveredOn,
    note: fields.note,
  };
}

function shipmentOf(row: ShipmentRow & { person_name: string }): Shipment {
  return {
    id: row.id,
    rowVersion: row.row_version,
    direction: row.direction,
    carrierId: row.carrier_id,
    carrierName: row.carrier_name,
    shape: row.shape,
    lengthIn: row.length_in,
    widthIn: row.width_in,
    heightIn: row.height_in,
    weightLb: row.weight_lb,
    declaredCents: row.declared_cents,
    valueEvidence: row.value_evidence,
    insured: row.insured === 1,
    tracking: row.tracking,
    shippedOn: row.shipped_on,
    deliveredOn: row.delivered_on,
    note: row.note,
    assessment:
      row.assessment_json === null ? null : (JSON.parse(row.assessment_json) as Assessment),
    recordedAt: row.recorded_at,
    personName: row.person_name,
    struckReason: row.struck_reason,
  };
}

/** Parcels of an order, newest first, the struck-out ones too. */
export async function shipmentsOf(shop: OpenShop, orderId: string): Promise<Shipment[]> {
  const rows = await shop.read
    .selectFrom('shipment')
    .innerJoin('person', 'person.id', 'shipment.person_id')
    .selectAll('shipment')
    .select('person.name as person_name')
    .where('order_id', '=', orderId)
    .orderBy('recorded_at', 'desc')
    .orderBy('shipment.id', 'desc')
    .limit(200)
    .execute();
  return rows.map(shipmentOf);
}

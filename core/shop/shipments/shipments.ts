import type { ContractInputs } from '../../../shared/contract/types.ts';
import { ShopError } from '../../../shared/errors.ts';
import type { Changed } from '../../../shared/fields.ts';
import type { Assessment } from '../../../shared/parcel.ts';
import { type CommandTransaction, runCommand } from '../../storage/commands.ts';
import type { ShopContext } from '../../storage/context.ts';
import type { CarrierRow, ShipmentRow } from '../../storage/tables.ts';
import { profileOf } from '../carriers/carrier-row.ts';
import { note } from '../orders/history.ts';
import { readOrder } from '../orders/order-row.ts';
import { changedOf, notFound } from '../record.ts';
import { assessmentOf, readCarrier } from './assess.ts';
import { parcelOf } from './parcel-of.ts';
import { refuseOddShipment, type ShipmentFields, shipmentColumns } from './shipment-row.ts';
import { parcelWords } from './words.ts';

type Columns = ReturnType<typeof shipmentColumns>;

/** Only what the shop sends is measured against its carrier's limits. */
function assessedFor(
  direction: ShipmentRow['direction'],
  columns: Columns,
  carrier: CarrierRow | null,
): Assessment | null {
  const parcel = parcelOf(columns);
  if (direction === 'in' || carrier === null || parcel === null) return null;
  return assessmentOf(parcel, profileOf(carrier));
}

async function refuseSecondParcel(trx: CommandTransaction, orderId: string): Promise<void> {
  const live = await trx.db
    .selectFrom('shipment')
    .select('id')
    .where('order_id', '=', orderId)
    .where('direction', '=', 'out')
    .where('struck_reason', 'is', null)
    .executeTakeFirst();
  if (live === undefined) return;
  throw new ShopError(
    'CONFLICT',
    'This order already has a parcel going out. Change that one, or strike it out first.',
  );
}

async function carrierFor(
  trx: CommandTransaction,
  fields: ShipmentFields,
): Promise<CarrierRow | null> {
  return fields.carrierId === null ? null : readCarrier(trx.db, fields.carrierId);
}

export function recordShipment(
  ctx: ShopContext,
  input: ContractInputs['shipments']['record'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'shipments.record' }, async (trx) => {
    const order = await readOrder(trx.db, input.orderId);
    trx.about({ orderId: order.id, bowId: order.bow_id });
    refuseOddShipment(input);
    if (input.direction === 'out') await refuseSecondParcel(trx, order.id);
    const carrier = await carrierFor(trx, input);
    const columns = shipmentColumns(input, carrier);
    const assessed = assessedFor(input.direction, columns, carrier);
    const row = await trx.insert('shipment', {
      id: ctx.newId(),
      order_id: order.id,
      direction: input.direction,
      ...columns,
      assessment_json: assessed === null ? null : JSON.stringify(assessed),
      recorded_at: trx.at,
      person_id: ctx.actor.personId,
      struck_reason: null,
    });
    await note(trx, ctx, order.id, { kind: 'shipment', summary: parcelWords(row, assessed) });
    return changedOf(row);
  });
}

async function readLive(trx: CommandTransaction, id: string): Promise<ShipmentRow> {
  const row = await trx.db
    .selectFrom('shipment')
    .selectAll()
    .where('id', '=', id)
    .executeTakeFirstOrThrow(() => notFound('parcel', id));
  if (row.struck_reason !== null) {
    throw new ShopError('CONFLICT', 'This parcel is struck out. Record a new one.');
  }
  return row;
}

const measuredColumns = [
  'carrier_id',
  'shape',
  'length_in',
  'width_in',
  'height_in',
  'weight_lb',
] as const;

export function editShipment(
  ctx: ShopContext,
  input: ContractInputs['shipments']['edit'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'shipments.edit' }, async (trx) => {
    const before = await readLive(trx, input.id);
    trx.about({ orderId: before.order_id });
    refuseOddShipment(input);
    const carrier = await carrierFor(trx, input);
    const columns = shipmentColumns(input, carrier);
    const remeasured = measuredColumns.some((column) => before[column] !== columns[column]);
    const assessed = remeasured
      ? assessedFor(before.direction, columns, carrier)
      : ((JSON.parse(before.assessment_json ?? 'null') as Assessment | null) ?? null);
    const row = await trx.update('shipment', before.id, input.rowVersion, {
      ...columns,
      assessment_json: assessed === null ? null : JSON.stringify(assessed),
    });
    await note(trx, ctx, before.order_id, {
      kind: 'shipment',
      summary: `Changed: ${parcelWords(row, assessed)}`,
    });
    return changedOf(row);
  });
}

export function strikeOutShipment(
  ctx: ShopContext,
  input: ContractInputs['shipments']['strikeOut'],
): Promise<Changed> {
  return runCommand(ctx, { id: input.commandId, name: 'shipments.strikeOut' }, async (trx) => {
    const before = await readLive(trx, input.id);
    trx.about({ orderId: before.order_id });
    const row = await trx.update('shipment', before.id, input.rowVersion, {
      struck_reason: input.reason,
    });
    await note(trx, ctx, before.order_id, {
      kind: 'strike-out',
      summary: `Struck out: ${parcelWords(before, null)}`,
      reason: input.reason,
    });
    return changedOf(row);
  });
}

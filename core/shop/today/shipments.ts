import type { TodayItem } from '../../../shared/contract/today.ts';
import type { ShipmentRow } from '../../storage/tables.ts';
import { addDays } from '../day.ts';
import { daysBetween, daysText, onceDue } from './calendar.ts';
import { about, type TodayOrder } from './item.ts';

/** Days on the way after which somebody looks a parcel up; common practice. */
export const deliveryDays = 10;

/** A parcel that left and is not noted as delivered. */
export function notDelivered(shipment: ShipmentRow, order: TodayOrder, day: string): TodayItem[] {
  const { direction, shipped_on: shippedOn, delivered_on: deliveredOn } = shipment;
  if (direction !== 'out' || shipment.struck_reason !== null) return [];
  if (shippedOn === null || deliveredOn !== null) return [];
  const dueOn = addDays(shippedOn, deliveryDays);
  const group = onceDue(dueOn, day);
  if (group === null) return [];
  const tracking = shipment.tracking === '' ? '' : ` (${shipment.tracking})`;
  const what = `Sent ${daysText(daysBetween(shippedOn, day))} ago with ${shipment.carrier_name || 'a carrier'}${tracking}, not noted as delivered: look it up.`;
  return [
    about(order, {
      kind: 'shipment',
      group,
      what,
      dueOn,
      since: shippedOn,
      room: 'shipping',
      opens: 'shipping',
    }),
  ];
}

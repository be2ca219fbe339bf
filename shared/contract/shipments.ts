import {
  between,
  cents,
  changed,
  day,
  id,
  instant,
  line,
  reason,
  rowVersion,
  text,
} from '../fields.ts';
import { assessment, parcelShape } from '../parcel.ts';
import { z } from '../zod.ts';
import { command, commandInput, query } from './base.ts';

const outside = between(0.5, 400, 'Outside sizes are between 1/2 and 400 inches.');
const weight = between(0.1, 500, 'A parcel weighs between 0.1 and 500 pounds.');

/** Outside of the closed parcel, inches and pounds. A tube's width is its diameter or side; it has no height. */
const parcelFields = {
  shape: parcelShape,
  lengthIn: outside.nullable(),
  widthIn: outside.nullable(),
  heightIn: outside.nullable(),
  weightLb: weight.nullable(),
};

const shipmentFields = {
  /** One of the shop's carriers, or null where its name is given in words. */
  carrierId: id.nullable(),
  carrierName: line(120),
  ...parcelFields,
  declaredCents: cents.nullable(),
  /** What proves the declared value: a receipt, an appraisal, photographs. */
  valueEvidence: text(1000),
  insured: z.boolean(),
  tracking: line(120),
  shippedOn: day.nullable(),
  deliveredOn: day.nullable(),
  note: text(1000),
};

export const direction = z.enum(['in', 'out']);

export const shipment = z.object({
  id,
  rowVersion,
  direction,
  ...shipmentFields,
  /** Frozen when the parcel was measured; null where sizes, weight or the carrier's limits are unknown. */
  assessment: assessment.nullable(),
  recordedAt: instant,
  personName: line(120),
  struckReason: line(400).nullable(),
});
export type Shipment = z.infer<typeof shipment>;

export const shipments = {
  /** One outbound parcel an order: a second needs the first struck out. */
  record: command()
    .input(commandInput({ orderId: id, direction, ...shipmentFields }))
    .output(changed),
  /** Other sizes, weight or carrier are assessed again, by the carrier's limits as they are now. */
  edit: command()
    .input(commandInput({ id, rowVersion, ...shipmentFields }))
    .output(changed),
  /** What a carrier would make of a parcel, before anything is recorded. */
  assess: query()
    .input(
      z.strictObject({
        carrierId: id,
        shape: parcelShape,
        lengthIn: outside,
        widthIn: outside,
        heightIn: outside.nullable(),
        weightLb: weight,
      }),
    )
    .output(
      assessment.extend({
        /** Limits the parcel is inside of, but not by much; one sentence each. */
        near: z.array(line(200)).max(100),
      }),
    ),
  /** The parcel stays readable, with the reason; no gate counts it any more. */
  strikeOut: command().input(commandInput({ id, rowVersion, reason })).output(changed),
};

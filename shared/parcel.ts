import { between, day, line, requiredLine } from './fields.ts';
import { z } from './zod.ts';

export const parcelShapes = ['box', 'round-tube', 'three-sided-tube'] as const;
export const parcelShape = z.enum(parcelShapes);
export type ParcelShape = z.infer<typeof parcelShape>;

export const parcelShapeLabels: Record<ParcelShape, string> = {
  box: 'Box',
  'round-tube': 'Round tube',
  'three-sided-tube': 'Three-sided tube',
};

const inches = between(0.5, 1000, 'Give inches between 1/2 and 1000.');
const cubicInches = between(1, 1_000_000, 'Give cubic inches between 1 and 1,000,000.');
const pounds = between(0.1, 5000, 'Give pounds between 0.1 and 5000.');

/** How a carrier rounds each side before it calculates: 10.5 in stays, becomes 11, becomes 11; 10.4 in stays, 10, 11. */
export const sideRounding = z.enum(['none', 'nearest-inch', 'next-inch']);
export type SideRounding = z.infer<typeof sideRounding>;

/** A limit that is broken only by going over it; exactly at it is still inside. */
export const over = z.strictObject({
  longestIn: inches.exactOptional(),
  secondIn: inches.exactOptional(),
  lengthPlusGirthIn: inches.exactOptional(),
  volumeIn3: cubicInches.exactOptional(),
  weightLb: pounds.exactOptional(),
});
export type Over = z.infer<typeof over>;

export const surcharge = z.strictObject({
  name: requiredLine(120),
  over: over.refine((limits) => Object.keys(limits).length > 0, 'Give at least one limit.'),
  /** Charged as at least this many pounds. */
  minimumLb: pounds.exactOptional(),
});
export type Surcharge = z.infer<typeof surcharge>;

/**
 * Limits of one service as they stood on a day. Carriers change them every year: the shop keeps
 * the figures and the day in Settings, and the carrier's own guide decides.
 */
export const carrierProfile = z.strictObject({
  name: requiredLine(120),
  /** Day the figures were looked up, `YYYY-MM-DD`. */
  asOf: day,
  rounding: sideRounding,
  /** Whether girth goes round the tube, or the tube counts as the box around it. */
  tubes: z.enum(['round', 'as-box']),
  /** Over any of these, the parcel is not accepted. */
  accepted: over,
  /** Cubic inches a pound, charged only over this volume where one is given. */
  dimensional: z.strictObject({
    divisor: between(50, 1000, 'A divisor is between 50 and 1000 cubic inches a pound.'),
    overIn3: cubicInches.nullable(),
  }),
  surcharges: z.array(surcharge).max(20),
});
export type CarrierProfile = z.infer<typeof carrierProfile>;

/** What a carrier's limits made of one parcel on the day it was measured. */
export const assessment = z.object({
  carrierName: line(120),
  asOf: day,
  /** One sentence for each limit that is broken; empty means the carrier takes it. */
  refusals: z.array(line(200)).max(10),
  surcharges: z.array(line(120)).max(20),
  /** Whole pounds that are charged. */
  billableLb: z.number(),
  /** Whole pounds the volume counts for; null where this carrier does not ask. */
  dimensionalLb: z.number().nullable(),
  /** As this carrier counts it, inches. */
  lengthPlusGirthIn: z.number(),
});
export type Assessment = z.infer<typeof assessment>;

import { drawReference, glassHow, limb } from '../bows.ts';
import { day, drawIn, id, instant, line, text } from '../fields.ts';
import { z } from '../zod.ts';
import { geometryVersion } from './geometry.ts';

export const lifeKinds = [
  'weighing',
  'finding',
  'geometry',
  'removal',
  'glass',
  'shipment',
  'incident',
  'marking',
  'move',
] as const;

/** One thing that happened to a bow here. */
export const lifeEvent = z.object({
  id: line(80),
  at: instant,
  /** Calendar day at the shop. */
  on: day,
  kind: z.enum(lifeKinds),
  title: line(400),
  text: text(4000),
  personName: line(120),
  orderId: id.nullable(),
  orderNumber: line(20).nullable(),
  /** Why it does not count any more; it stays to be seen. */
  struckReason: line(400).nullable(),
});
export type LifeEvent = z.infer<typeof lifeEvent>;

/** One weight of one weighing session; draws and references are never mixed. */
export const lifeWeight = z.object({
  readingId: id,
  on: day,
  phase: line(40),
  forceLbf: z.number(),
  drawIn,
  drawReference,
  text: line(60),
  orderNumber: line(20),
  limbSetName: line(80).nullable(),
  riserNote: line(200),
});
export type LifeWeight = z.infer<typeof lifeWeight>;

const face = z.enum(['back', 'belly']);

/** Everything this shop took off one pair of limbs; what is struck out or only planned is left out. */
export const lifeRemoval = z.object({
  /** Null where the bow has no named limb sets, or the removal names none. */
  limbSetName: line(80).nullable(),
  removals: z.int().min(0),
  /** Narrowed at each station, from the fade outwards, inches. */
  widths: z
    .array(
      z.object({
        limb,
        fromFadeIn: z.number(),
        leftIn: z.number(),
        rightIn: z.number(),
        totalIn: z.number(),
      }),
    )
    .max(400),
  /** Off each face, thousandths of an inch; `isMeasured` where every part of it was. */
  faces: z.array(z.object({ limb, face, thou: z.number(), isMeasured: z.boolean() })).max(4),
  /** Bites written down in words only, oldest first: they are in none of the figures. */
  noted: z.array(z.object({ on: day, words: text(4000) })).max(200),
});
export type LifeRemoval = z.infer<typeof lifeRemoval>;

/** Glass left on one face of one limb, reckoned from the last figure that somebody measured or was told. */
export const glassLeft = z.object({
  limbSetName: line(80).nullable(),
  limb,
  face,
  leftThou: z.number(),
  fromThou: z.number(),
  basis: z.enum(['measured', 'made']),
  how: glassHow,
  /** Day the figure was written down; null where that is older than the records. */
  measuredOn: day.nullable(),
  /** Came off since, thousandths. */
  offSinceThou: z.number(),
  /** Bites in words since: the glass may be thinner than reckoned. */
  notedSince: z.int().min(0),
});
export type GlassLeft = z.infer<typeof glassLeft>;

/** What `bows.life` adds to the bow and its orders. */
export const bowLife = {
  geometry: z.array(geometryVersion).max(500),
  /** Every weighing that stands, newest first. */
  weights: z.array(lifeWeight).max(4000),
  lifetime: z.array(lifeRemoval).max(50),
  glassLeft: z.array(glassLeft).max(200),
  /** Newest first. */
  events: z.array(lifeEvent).max(5000),
};

import { drawReference } from '../bows.ts';
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

/** What `bows.life` adds to the bow and its orders. */
export const bowLife = {
  geometry: z.array(geometryVersion).max(500),
  /** Every weighing that stands, newest first. */
  weights: z.array(lifeWeight).max(4000),
  /** Newest first. */
  events: z.array(lifeEvent).max(5000),
};

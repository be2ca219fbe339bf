import { cents, day, drawIn, forceLbf, id, instant, line, rowVersion } from '../fields.ts';
import { goingHome, service, stage } from '../stages.ts';
import { z } from '../zod.ts';
import { hold } from './holds.ts';

/** What the weight strip shows. Only weights at the order's own AMO draw take part. */
export const weightStory = z.object({
  arrivalLbf: z.number().nullable(),
  nowLbf: z.number().nullable(),
  targetLbf: z.number().nullable(),
  /** Draw length the three belong to, inches AMO. */
  drawIn: drawIn.nullable(),
});
export type WeightStory = z.infer<typeof weightStory>;

/** A bow under its target while weight work or sanding is still to do. */
export const underTarget = z.object({
  nowLbf: z.number(),
  targetLbf: z.number(),
  /** Pound-force under the target, more than nothing. */
  byLbf: z.number(),
  drawIn,
  /** The weight was taken after sanding: what is offered can be written down. */
  isSanded: z.boolean(),
  /** When it was weighed. */
  since: instant,
});
export type UnderTarget = z.infer<typeof underTarget>;

/** What a list or the board needs of an order, in one row. */
export const orderCard = z.object({
  id,
  number: line(20),
  rowVersion,
  customerId: id.nullable(),
  customerName: line(120),
  bowId: id.nullable(),
  bowLine: line(400),
  services: z.array(service).max(20),
  route: z.array(stage).max(20),
  stage,
  stageSince: instant,
  /** Why the bow goes home without the work being finished; null on the route of work. */
  goingHome: goingHome.nullable(),
  targetWeightLbf: forceLbf.nullable(),
  targetDrawIn: drawIn.nullable(),
  promisedOn: day.nullable(),
  estimateCents: cents.nullable(),
  weights: weightStory,
  underTarget: underTarget.nullable(),
  hold: hold.nullable(),
  openStops: z.int().min(0),
  waitingConsents: z.int().min(0),
});
export type OrderCard = z.infer<typeof orderCard>;

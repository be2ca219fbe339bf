import { day, id, instant, line, rowVersion } from '../fields.ts';
import { room } from '../stages.ts';
import { z } from '../zod.ts';
import { query } from './base.ts';

/**
 * Where an item stands on the list: `waiting` is for somebody else, `stores` is of what the shop
 * works with, `ready` may go on.
 */
export const todayGroups = ['late', 'today', 'waiting', 'soon', 'stores', 'ready'] as const;
export const todayGroup = z.enum(todayGroups);
export type TodayGroup = z.infer<typeof todayGroup>;

/** What an item is about, worst first: what is due is read in this order. */
export const todayKinds = [
  'stop-finding',
  'incident',
  'claim',
  'promised',
  'undershoot',
  'consent',
  'task',
  'hold',
  'unclaimed',
  'storage-fee',
  'scale',
  'arrival-check',
  'in-mail',
  'shipment',
  'expired-lot',
  'time-to-order',
  'expiring-lot',
  'ready',
] as const;
export const todayKind = z.enum(todayKinds);
export type TodayKind = z.infer<typeof todayKind>;

/** One thing that needs somebody. */
export const todayItem = z.object({
  kind: todayKind,
  group: todayGroup,
  orderId: id.nullable(),
  number: line(20).nullable(),
  /** Customer, "the shop" for its own bow; of the stores, what it is about; else empty. */
  who: line(120),
  what: line(600),
  dueOn: day.nullable(),
  /** Day since when it stands like this. */
  since: day.nullable(),
  forRoom: room,
  forPersonId: id.nullable(),
  forPersonName: line(120).nullable(),
  taskId: id.nullable(),
  taskRowVersion: rowVersion.nullable(),
  /** What of the stores it is about. */
  consumableId: id.nullable(),
  /** Part of the order page to open, as `section` or `section:form`. */
  opens: line(80).nullable(),
});
export type TodayItem = z.infer<typeof todayItem>;

export const today = {
  /**
   * Everything that needs somebody on this day, sorted as it is to be read. The day is the
   * calendar day where the client is.
   */
  get: query()
    .input(z.strictObject({ day }))
    .output(
      z.object({
        day,
        readAt: instant,
        items: z.array(todayItem).max(5000),
        ordersInWork: z.int().min(0),
      }),
    ),
};

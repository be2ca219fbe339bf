import { day, id, instant, line, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';

export const holdKinds = ['customer', 'material', 'claim', 'other'] as const;

export const hold = z.object({
  id,
  kind: z.enum(holdKinds),
  reason: line(400),
  since: instant,
  remindOn: day.nullable(),
  /** From these days on the shop's own terms speak of storage fees and of unclaimed goods. */
  storageFeeOn: day.nullable(),
  abandonedOn: day.nullable(),
  releasedAt: instant.nullable(),
  rowVersion,
});
export type Hold = z.infer<typeof hold>;

export const reminder = z.object({
  id,
  sentAt: instant,
  how: line(120),
  note: text(1000),
  personName: line(120),
});
export type Reminder = z.infer<typeof reminder>;

/** A hold with what was sent meanwhile, oldest first, and the days its ladder has. */
export const holdDetail = hold.extend({
  ladder: z.array(day).max(20),
  reminders: z.array(reminder).max(200),
});
export type HoldDetail = z.infer<typeof holdDetail>;

import { bowKind, construction, drawReference, facing, hand, takeDown } from '../bows.ts';
import { changed, drawIn, forceLbf, id, instant, line, rowVersion, text } from '../fields.ts';
import { z } from '../zod.ts';
import { command, commandInput, query } from './base.ts';
import { orderCard } from './order-card.ts';

export const bowFields = z.strictObject({
  kind: bowKind,
  construction,
  takeDown,
  hand,
  maker: line(120),
  model: line(120),
  serial: line(80),
  /** As marked on the bow; never worked out from a string somebody sent. */
  amoLengthIn: z.number().min(36).max(84).nullable(),
  markedWeightLbf: forceLbf.nullable(),
  markedDrawIn: drawIn.nullable(),
  markedDrawReference: drawReference,
  maxSafeDrawIn: drawIn.nullable(),
  facing,
  notes: text(4000),
});
export type BowFields = z.infer<typeof bowFields>;

export const bow = z.object({
  id,
  rowVersion,
  createdAt: instant,
  /** Owner; none means the shop itself. */
  customerId: id.nullable(),
  ...bowFields.shape,
});
export type Bow = z.infer<typeof bow>;

export const bows = {
  search: query()
    .input(z.strictObject({ text: line(200) }))
    .output(z.array(bow.extend({ ownerName: line(120) })).max(50)),
  get: query()
    .input(z.strictObject({ id }))
    .output(z.object({ bow, ownerName: line(120), orders: z.array(orderCard).max(500) })),
  add: command()
    .input(commandInput({ customerId: id.nullable(), ...bowFields.shape }))
    .output(changed),
  edit: command()
    .input(commandInput({ id, rowVersion, ...bowFields.shape }))
    .output(changed),
};

import { commandId, id, instant, line } from '../fields.ts';
import { z } from '../zod.ts';
import { command, keep } from './base.ts';

export const paperKind = z.enum(['work-order', 'shipping-tag']);
export const paperFormat = z.enum(['letter', 'a4', '4x6', 'a6']);
export const paperCopy = z.enum(['bench', 'office', 'parcel']);

export const paper = z.object({
  id,
  kind: paperKind,
  format: paperFormat,
  copy: paperCopy,
  action: z.enum(['printed', 'saved']),
  fileName: line(200),
  pages: z.int(),
  madeAt: instant,
  personName: line(120),
  /** The order has changed since this was made. */
  outdated: z.boolean(),
});
export type Paper = z.infer<typeof paper>;

const choice = { orderId: id, kind: paperKind, format: paperFormat, copy: paperCopy };

export const papers = {
  preview: keep().input(z.strictObject(choice)).output(z.file()),
  /** Makes the paper to hand over and keeps a record of it. */
  issue: command()
    .input(z.strictObject({ commandId, ...choice, action: z.enum(['printed', 'saved']) }))
    .output(z.file()),
};

import { commandId, id, instant, line } from '../fields.ts';
import { paperCopy, paperFormat, paperKind } from '../papers.ts';
import { z } from '../zod.ts';
import { command, keep } from './base.ts';

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

const choice = {
  kind: paperKind,
  format: paperFormat,
  copy: paperCopy,
  orderId: id.nullable(),
  /** The bow, lot or batch it is made for; none where it is made for the order. */
  aboutId: id.nullable(),
};

export const papers = {
  preview: keep().input(z.strictObject(choice)).output(z.file()),
  /** Makes the paper to hand over and keeps a record of it. */
  issue: command()
    .input(z.strictObject({ commandId, ...choice, action: z.enum(['printed', 'saved']) }))
    .output(z.file()),
};

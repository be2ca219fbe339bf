import { id, line } from '../fields.ts';
import { z } from '../zod.ts';
import { query } from './base.ts';

export const found = z.object({
  kind: z.enum(['order', 'customer', 'bow']),
  id,
  title: line(400),
  subtitle: line(300),
});
export type Found = z.infer<typeof found>;

/** Search over everything: numbers, names, makers, serials. A scanned order number finds its order. */
export const find = query()
  .input(z.strictObject({ text: line(200) }))
  .output(z.array(found).max(40));

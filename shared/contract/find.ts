import { id, line } from '../fields.ts';
import { z } from '../zod.ts';
import { query } from './base.ts';

export const found = z.object({
  /** `shelf`, `lot`: a scanned label of the stores; `consumable`: one found by its words. */
  kind: z.enum(['order', 'customer', 'bow', 'consumable', 'shelf', 'lot']),
  id,
  title: line(400),
  subtitle: line(300),
});
export type Found = z.infer<typeof found>;

/**
 * Search over everything: numbers, names, makers, serials, consumables. A scanned order number
 * finds its order, a scanned label of a shelf or a lot that alone.
 */
export const find = query()
  .input(z.strictObject({ text: line(200) }))
  .output(z.array(found).max(40));

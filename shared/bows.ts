import { z } from './zod.ts';

export const bowKind = z.enum(['longbow', 'hybrid', 'recurve']);
export const construction = z.enum(['glass-laminated', 'all-wood', 'other']);
export const takeDown = z.enum(['one-piece', 'sleeve', 'bolted three-piece']);
export const hand = z.enum(['right', 'left', 'unknown']);
/** What a draw length was measured to: AMO (throat + 1 3/4 in), the back of the bow, or nobody knows. */
export const drawReference = z.enum(['amo', 'to-back', 'unknown']);
export type DrawReference = z.infer<typeof drawReference>;
export const facing = z.enum([
  'E-glass',
  'clear over veneer',
  'carbon',
  'wood',
  'bamboo',
  'unknown',
]);
export const shootingStyle = z.enum(['split', 'three-under', 'unknown']);

export const drawReferenceLabels: Record<DrawReference, string> = {
  amo: 'AMO',
  'to-back': 'to the back',
  unknown: 'reference unknown',
};

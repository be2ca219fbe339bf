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
/** How a glass thickness came to be known. A loupe at the limb edge reads to about 3 thou (common practice). */
export const glassHow = z.enum(['not-measured', 'loupe', 'maker', 'calliper']);
export type GlassHow = z.infer<typeof glassHow>;
export const bowProfile = z.enum(['straight', 'reflex-deflex', 'recurve', 'unknown']);
/** Whether the tips bear a low-stretch string; unknown is treated as no. */
export const lowStretchTips = z.enum(['yes', 'no', 'unknown']);
/** Wood, horn or inlay of a species whose trade is controlled, e.g. under CITES. */
export const listedSpecies = z.enum(['none', 'listed', 'unknown']);
export const limbs = ['upper', 'lower'] as const;
export const limb = z.enum(limbs);
export type Limb = z.infer<typeof limb>;
export const stationSurface = z.enum(['bare', 'over-finish']);
/** What came in the box: a take-down often sends only its limbs. */
export const cameAs = z.enum(['whole-bow', 'limbs-only']);
export const shootingStyle = z.enum(['split', 'three-under', 'unknown']);

export const glassHowLabels: Record<GlassHow, string> = {
  'not-measured': 'not measured',
  loupe: 'loupe at the limb edge',
  maker: "maker's figure",
  calliper: 'calliper on a bare edge',
};

export const drawReferenceLabels: Record<DrawReference, string> = {
  amo: 'AMO',
  'to-back': 'to the back',
  unknown: 'reference unknown',
};

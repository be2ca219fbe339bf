import { line } from './fields.ts';
import { z } from './zod.ts';

/** In the order they are tried: what is gentler on the bow comes first. */
export const planMethods = ['sanding', 'narrowing', 'thinning', 'mixed', 'belly-scrape'] as const;
export const planMethod = z.enum(planMethods);
export type PlanMethod = (typeof planMethods)[number];
export const planMethodLabels: Record<PlanMethod, string> = {
  sanding: 'Sanding only',
  narrowing: 'Narrowing',
  thinning: 'Thinning both faces',
  mixed: 'Narrowing and thinning',
  'belly-scrape': 'Scraping the belly',
};

/** What follows the weight work and takes weight itself. */
export const sandings = ['full strip', 'final sanding only'] as const;
export const sanding = z.enum(sandings);
export type Sanding = (typeof sandings)[number];

/** Which face a side cut narrows: both alike, or one more, which traps the section. */
export const cutFaces = ['both', 'back', 'belly'] as const;
export const cutFace = z.enum(cutFaces);
export type CutFace = (typeof cutFaces)[number];

/** Where a fact that a plan lacks is put right. */
export const planFixes = ['bow', 'limb-set', 'geometry', 'weighings', 'arrival', 'order'] as const;
export const planFix = z.enum(planFixes);
export type PlanFix = (typeof planFixes)[number];

/**
 * Closed jobs with counted strokes before what a stroke takes is reckoned with: fewer tell a hand
 * from chance too badly, and nobody publishes a figure to begin with.
 */
export const leastStrokeJobs = 3;

/** A figure with its spread and what it rests on. `jobs` 0: common practice alone. */
export const learnedFigure = z.object({
  mean: z.number(),
  /** One standard deviation of what the next job will show. */
  sd: z.number(),
  jobs: z.int(),
  words: line(400),
});
export type LearnedFigure = z.infer<typeof learnedFigure>;

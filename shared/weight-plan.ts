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

import type { Reckoning } from '../../../shared/plan-answer.ts';

/** A sliding answer with what it leaves out kept from the last full one: the old picture stays. */
export function merged(before: Reckoning | null, sliding: Reckoning): Reckoning {
  if (before?.outcome !== 'reckoned' || sliding.outcome !== 'reckoned') return sliding;
  const { sanding, dropPerThou, forceDraw, warnings } = before;
  return { ...sliding, sanding, dropPerThou, forceDraw, warnings };
}

import { decimal } from '../../../shared/measure.ts';
import type { PlanWish } from './bow.ts';
import type { PlanLimits } from './limits.ts';
import type { TotalDrop } from './types.ts';

/** Binary dust: a drop of exactly 15 % is one of 15 %. */
const dust = 1e-9;

/** How much an order asks for, present weight to target, and what the shop says to that. */
export function totalDrop({ weightLbf, targetLbf }: PlanWish, limits: PlanLimits): TotalDrop {
  const lbf = weightLbf - targetLbf;
  const part = lbf / weightLbf;
  const figure = `${decimal(lbf)} lb or ${decimal(100 * part)} %`;
  const percent = (limit: number) => `${decimal(100 * limit)} %`;
  if (part > limits.refuseDropPart + dust) {
    const sentence = `Total drop: ${figure} is over the ${percent(limits.refuseDropPart)} that a bow may lose.`;
    return { lbf, part, level: 'refused', sentence };
  }
  if (part >= limits.confirmDropPart - dust || lbf >= limits.confirmDropLbf - dust) {
    const sentence = `Total drop: ${figure} is much; confirm it before anything is cut.`;
    return { lbf, part, level: 'confirm', sentence };
  }
  if (part >= limits.noteDropPart - dust) {
    const sentence = `Total drop: ${figure}. From ${percent(limits.noteDropPart)} on, the bow shoots differently.`;
    return { lbf, part, level: 'note', sentence };
  }
  return { lbf, part, level: 'small', sentence: null };
}

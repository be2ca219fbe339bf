import type { WeightStory } from '../../shared/contract/order-card.ts';
import { decimal, weightAtDraw } from '../../shared/measure.ts';

/** The weight story in one line: `52# → now 47.8# → 45# @ 28"`. Empty when nothing is known. */
export function weightsLine({ arrivalLbf, nowLbf, targetLbf, drawIn }: WeightStory): string {
  const steps: string[] = [];
  if (arrivalLbf !== null) steps.push(`${decimal(arrivalLbf)}#`);
  if (nowLbf !== null && nowLbf !== arrivalLbf) steps.push(`now ${decimal(nowLbf)}#`);
  if (targetLbf !== null) {
    steps.push(drawIn === null ? `${decimal(targetLbf)}#` : weightAtDraw(targetLbf, drawIn));
  } else if (steps.length > 0 && drawIn !== null) {
    steps[steps.length - 1] += ` @ ${decimal(drawIn, 2)}"`;
  }
  return steps.join(' → ');
}

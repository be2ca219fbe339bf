import type { OrderCard } from '../../../../shared/contract/order-card.ts';
import { decimal, difference } from '../../../../shared/measure.ts';
import type { Stage } from '../../../../shared/stages.ts';

/** Stages that end with sanding; what comes after it takes no weight off. */
const before: readonly Stage[] = ['arrived', 'agreed', 'weight-work', 'strip-sand'];

/**
 * Said where the last weighing is under the target already, before the customer is asked about it
 * once the bow is sanded; null where it is not, nothing is known, or the sanding is over.
 */
export function underText({ weights, stage }: Pick<OrderCard, 'weights' | 'stage'>): string | null {
  const { nowLbf, targetLbf } = weights;
  if (nowLbf === null || targetLbf === null || !before.includes(stage)) return null;
  const under = difference(targetLbf, nowLbf);
  if (under <= 0) return null;
  return `${decimal(under)} lb under the target. Take nothing more off: material cannot be put back, and sanding still takes some.`;
}

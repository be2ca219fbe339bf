import { drawReferenceLabels } from '../../../../shared/bows.ts';
import type { LifeWeight } from '../../../../shared/contract/bow-life.ts';
import { decimal } from '../../../../shared/measure.ts';

export interface WeightGroup {
  /** `at 28" AMO`, with the limbs and the riser where they matter. */
  title: string;
  /** Oldest first. */
  weights: { weight: LifeWeight; share: number }[];
}

const drawOf = ({ weights }: WeightGroup) => weights[0]?.weight.drawIn ?? 0;

function titleOf(weight: LifeWeight): string {
  return [
    `at ${decimal(weight.drawIn, 4)}" ${drawReferenceLabels[weight.drawReference]}`,
    weight.limbSetName ?? '',
    weight.riserNote === '' ? '' : `on ${weight.riserNote}`,
  ]
    .filter((part) => part !== '')
    .join(', ');
}

/**
 * Weighings that may be set side by side: one draw, one reference, one pair of limbs, one riser.
 * The group with the most weighings first, of as many the longest draw. `share` is of the heaviest in the group, 0 to 1.
 */
export function weightGroups(weights: readonly LifeWeight[]): WeightGroup[] {
  const groups = Map.groupBy(weights.toReversed(), titleOf);
  return [...groups]
    .map(([title, list]) => {
      const heaviest = Math.max(...list.map((weight) => weight.forceLbf));
      const share = (lbf: number) => (heaviest > 0 ? Math.max(0, lbf / heaviest) : 0);
      return {
        title,
        weights: list.map((weight) => ({ weight, share: share(weight.forceLbf) })),
      };
    })
    .toSorted(
      (a, b) =>
        b.weights.length - a.weights.length ||
        drawOf(b) - drawOf(a) ||
        a.title.localeCompare(b.title),
    );
}

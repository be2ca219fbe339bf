import type { OrderCard } from '../../../shared/contract/order-card.ts';
import type { Stage } from '../../../shared/stages.ts';

/** Where a weight plan is made or used, in the order they need it. */
const planningStages: readonly Stage[] = ['arrived', 'agreed', 'weight-work', 'strip-sand'];

/** Orders whose bow is here and is to be lower, nearest to the work first; by number within a stage. */
export function ordersToPlan(cards: readonly OrderCard[]): OrderCard[] {
  const rank = ({ stage }: OrderCard) => planningStages.toReversed().indexOf(stage);
  return cards
    .filter(
      ({ stage, services, goingHome }) =>
        planningStages.includes(stage) && services.includes('reduce-weight') && goingHome === null,
    )
    .toSorted((a, b) => rank(a) - rank(b) || a.number.localeCompare(b.number));
}

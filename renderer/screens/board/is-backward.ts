import type { OrderCard } from '../../../shared/contract/order-card.ts';
import type { Stage } from '../../../shared/stages.ts';

export interface Move {
  card: OrderCard;
  to: Stage;
}

/** By the order's own route: some routes strip before the weight work. */
export function isBackward({ card, to }: Move): boolean {
  return card.route.indexOf(to) < card.route.indexOf(card.stage);
}

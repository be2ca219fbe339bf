import type { FinalCheckSubject } from '../../../shared/final-checklist.ts';
import type { BowRow, OrderRow } from '../../storage/tables.ts';
import { routeOf, servicesOf } from '../orders/order-json.ts';

type CheckedBow = Pick<BowRow, 'construction' | 'take_down' | 'back_facing' | 'belly_facing'>;

/** What decides the checks of an order. A bow that nobody has identified is checked as if it were anything. */
export function checkSubjectOf(
  order: OrderRow,
  bow: CheckedBow | null,
  bitten: boolean,
): FinalCheckSubject {
  return {
    construction: bow?.construction ?? 'other',
    takeDown: bow?.take_down ?? 'one-piece',
    backFacing: bow?.back_facing ?? 'unknown',
    bellyFacing: bow?.belly_facing ?? 'unknown',
    services: servicesOf(order),
    cameAs: order.came_as,
    finished: routeOf(order).includes('finish'),
    bitten,
  };
}

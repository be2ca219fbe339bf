import type { MissingItem } from '../../../shared/gates.ts';
import type { WayTo } from '../../parts/missing-list.tsx';
import { placeOf } from './open-forms.ts';
import { useOrder } from './order-screen.tsx';

/** The form of this page in which a missing item is put right. */
export function useWayTo(): (item: MissingItem) => WayTo {
  const { order, open } = useOrder();
  return ({ item, section, opens }) => ({
    open: () => open(placeOf(section, order.bow !== null || item === 'target'), opens),
  });
}

import type { Clock } from '../../../shared/contract/clocks.ts';
import { ClockLine } from './clock-line.tsx';
import { stripClocks } from './clock-words.ts';
import { type ClockList, useClockList, useShopSecond } from './use-clocks.ts';

interface OrderClocksProps {
  orderId: string;
  className?: string | undefined;
}

interface TickingProps {
  list: ClockList;
  own: readonly Clock[];
  className: string | undefined;
}

/** A component of its own: a card whose bow has no clock does not tick. */
function Ticking({ list, own, className }: TickingProps) {
  const nowMs = useShopSecond(list, true);
  return stripClocks(own, nowMs).map((clock) => (
    <span key={clock.id} className={className}>
      <ClockLine clock={clock} nowMs={nowMs} />
    </span>
  ));
}

/** The clocks of one bow, each second anew; nothing while none runs. */
export function OrderClocks({ orderId, className }: OrderClocksProps) {
  const list = useClockList();
  const own = list.clocks.filter((clock) => clock.orderId === orderId);
  return own.length === 0 ? null : <Ticking list={list} own={own} className={className} />;
}

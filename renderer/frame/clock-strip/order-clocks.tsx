import { ClockLine } from './clock-line.tsx';
import { stripClocks } from './clock-words.ts';
import { useClocks } from './use-clocks.ts';

interface OrderClocksProps {
  orderId: string;
  className?: string | undefined;
}

/** The clocks of one bow, each second anew; nothing while none runs. */
export function OrderClocks({ orderId, className }: OrderClocksProps) {
  const { clocks, nowMs } = useClocks();
  const own = stripClocks(
    clocks.filter((clock) => clock.orderId === orderId),
    nowMs,
  );
  return own.map((clock) => (
    <span key={clock.id} className={className}>
      <ClockLine clock={clock} nowMs={nowMs} />
    </span>
  ));
}

import { useOrder } from '../orders/order-screen.tsx';
import classes from './unpacking.module.css';

/** Big enough to read at arm's length while a stop finding is open; nothing otherwise. */
export function StopSign({
  isFirst = false,
}: {
  /** Read out by the first one of a page only. */ isFirst?: boolean;
}) {
  const { order } = useOrder();
  if (order.card.openStops === 0) return null;
  const stops = order.findings.filter(
    (finding) => finding.grade === 'stop' && finding.resolvedAt === null,
  );
  return (
    <div className={classes.stop} role={isFirst ? 'alert' : undefined}>
      <p className={classes.stopWords}>DO NOT STRING OR DRAW</p>
      {stops.map((finding) => (
        <p key={finding.id} className={classes.stopPlace}>
          {finding.place}
          {finding.note === '' ? '' : `: ${finding.note}`}
        </p>
      ))}
    </div>
  );
}

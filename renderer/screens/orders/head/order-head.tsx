import { goingHomeLine } from '../../../../shared/going-home.ts';
import { fullDay, momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import { holdLabels } from '../holds/hold-words.ts';
import { useOrder } from '../order-screen.tsx';
import classes from './order-head.module.css';
import { StageTimeline } from './stage-timeline.tsx';

function StopBanner() {
  const { order } = useOrder();
  const stops = order.findings.filter(
    (finding) => finding.grade === 'stop' && finding.resolvedAt === null,
  );
  if (order.card.openStops === 0) return null;
  return (
    <div className={classes.stop} role="alert">
      <Mark kind="stop">STOP. Do not string or draw this bow.</Mark>
      {stops.map((finding) => (
        <p key={finding.id} className={classes.line}>
          {finding.place}
          {finding.note === '' ? '' : `: ${finding.note}`}
        </p>
      ))}
      {stops.length === 0 ? (
        <p className={classes.line}>The stop finding was made in another order of this bow.</p>
      ) : null}
    </div>
  );
}

function HoldBanner() {
  const { hold } = useOrder().order.card;
  if (hold === null) return null;
  const reminder = hold.remindOn === null ? '' : ` Remind on ${fullDay(hold.remindOn)}.`;
  return (
    <div className={classes.hold}>
      <Mark kind="attention">On hold: {holdLabels[hold.kind].toLowerCase()}</Mark>
      <p className={classes.line}>{hold.reason}</p>
      <p className={classes.quiet}>
        Since {momentText(hold.since)}.{reminder}
      </p>
    </div>
  );
}

function HomewardBanner() {
  const { card, goingHomeReason } = useOrder().order;
  if (card.goingHome === null) return null;
  return (
    <div className={classes.hold}>
      <Mark kind="attention">{goingHomeLine(card.goingHome)}</Mark>
      <p className={classes.line}>{goingHomeReason}</p>
    </div>
  );
}

/** Which bow, where it stands, and what nobody may overlook. */
export function OrderHead() {
  const { order } = useOrder();
  return (
    <div className={classes.head}>
      <p className={classes.bow}>
        {order.card.bowLine === '' ? 'Bow not identified yet' : order.card.bowLine}
      </p>
      <StageTimeline order={order} />
      <StopBanner />
      <HomewardBanner />
      <HoldBanner />
    </div>
  );
}

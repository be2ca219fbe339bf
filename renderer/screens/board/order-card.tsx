import { Link } from 'wouter';
import type { OrderCard as Card } from '../../../shared/contract/order-card.ts';
import { closedStages, type Stage, serviceLabels } from '../../../shared/stages.ts';
import { OrderClocks } from '../../frame/clock-strip/order-clocks.tsx';
import { daysUntil, dueText, sinceText } from '../../parts/days.ts';
import { Mark } from '../../parts/mark.tsx';
import { WeightStrip } from '../../parts/weight-strip.tsx';
import { weightsLine } from '../../parts/weights-line.ts';
import { type Holding, holdingOf } from './holding.ts';
import { MoveMenu } from './move-menu.tsx';
import classes from './order-card.module.css';

interface OrderCardProps {
  card: Card;
  onMove: (to: Stage) => void;
}

function Due({ card }: { card: Card }) {
  if (card.promisedOn === null || closedStages.includes(card.stage)) return null;
  const text = dueText(card.promisedOn);
  if (daysUntil(card.promisedOn) >= 0) return <span className={classes.due}>{text}</span>;
  return (
    <span className={classes.due}>
      <Mark kind="attention">{text}</Mark>
    </span>
  );
}

function HoldingLine({ holding: { kind, text, href } }: { holding: Holding }) {
  const mark = <Mark kind={kind}>{text}</Mark>;
  return (
    <span className={classes.holding} title={text}>
      {href === undefined ? (
        mark
      ) : (
        <Link href={href} className={classes.place ?? ''} draggable={false}>
          {mark}
        </Link>
      )}
    </span>
  );
}

/** One order on the board: who, which bow, its weight story, and what is holding it. */
export function OrderCard({ card, onMove }: OrderCardProps) {
  const weights = weightsLine(card.weights);
  const weighed = card.weights.arrivalLbf !== null || card.weights.nowLbf !== null;
  const services = card.services.map((service) => serviceLabels[service]).join(', ');
  return (
    <>
      <div className={classes.head}>
        <Link className={classes.number ?? ''} href={`/orders/${card.id}`} draggable={false}>
          {card.number}
        </Link>
        <span className={classes.customer} title={card.customerName}>
          {card.customerName}
        </span>
        <Due card={card} />
      </div>
      <span className={classes.bow} title={card.bowLine}>
        {card.bowLine}
      </span>
      {weighed ? (
        <WeightStrip
          facts={{ ...card.weights, stopBandLbf: null, forecastLbf: null }}
          text={weights}
        />
      ) : null}
      <span className={classes.services}>
        {weighed || weights === '' ? services : `${weights}, ${services}`}
      </span>
      <OrderClocks orderId={card.id} className={classes.clock} />
      {holdingOf(card).map((holding) => (
        <HoldingLine key={holding.text} holding={holding} />
      ))}
      <div className={classes.row}>
        <MoveMenu card={card} onMove={onMove} />
        <span className={classes.since}>here {sinceText(card.stageSince)}</span>
      </div>
    </>
  );
}

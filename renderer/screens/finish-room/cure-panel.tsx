import { Link } from 'wouter';
import type { FinishRoom, RoomBow } from '../../../shared/contract/finish.ts';
import { Mark } from '../../parts/mark.tsx';
import { EmptyNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import { byCure, cureLines } from './cure-words.ts';
import classes from './finish-room.module.css';

function CuringBow({ bow, nowMs }: { bow: RoomBow; nowMs: number }) {
  const { orderId, number, customerName, bowLine, onHold } = bow;
  const lines = cureLines(bow, nowMs);
  const isReady = lines.some(({ step, isPassed }) => step === 'stringAndFlex' && isPassed);
  return (
    <li className={classes.item} aria-label={`${number} ${customerName}`}>
      <span className={classes.head}>
        <Link href={`/orders/${orderId}`} className={classes.strong ?? ''}>
          {number}
        </Link>
        <span>{customerName}</span>
      </span>
      <span className={classes.quiet}>{bowLine}</span>
      {isReady ? <Mark kind="done">Ready for the final check.</Mark> : null}
      {onHold ? <Mark kind="attention">On hold</Mark> : null}
      {lines.length === 0 ? (
        <Mark kind="attention">No coat is recorded: nobody can tell when it is cured.</Mark>
      ) : (
        <ul className={classes.steps}>
          {lines.map(({ step, isPassed, text }) => (
            <li key={step}>{isPassed ? <Mark kind="done">{text}</Mark> : text}</li>
          ))}
        </ul>
      )}
    </li>
  );
}

/** Bows that cure: which of the four times have passed. */
export function CurePanel({ room, nowMs }: { room: FinishRoom; nowMs: number }) {
  const curing = byCure(room.bows.filter(({ stage }) => stage === 'cure'));
  return (
    <Panel title="Curing">
      {curing.length === 0 ? (
        <EmptyNote title="No bow is curing">
          After its last coat a bow is moved to Cure, and its times run here.
        </EmptyNote>
      ) : (
        <ul className={classes.list}>
          {curing.map((bow) => (
            <CuringBow key={bow.orderId} bow={bow} nowMs={nowMs} />
          ))}
        </ul>
      )}
    </Panel>
  );
}

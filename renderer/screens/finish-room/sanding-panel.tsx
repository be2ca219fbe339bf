import { Button } from '@mantine/core';
import { Link } from 'wouter';
import type { RoomBow } from '../../../shared/contract/finish.ts';
import { EmptyNote } from '../../parts/notes.tsx';
import { Panel } from '../../parts/panel.tsx';
import classes from './finish-room.module.css';
import { LastGrits } from './sanding-inputs.tsx';

interface SandingPanelProps {
  /** Bows before their cure. */
  bows: readonly RoomBow[];
  /** Nothing while a sanding is being recorded. */
  onSand: (() => void) | undefined;
}

/** Where sanding stands on the bows that are stripped; on those in finish, once none is. */
export function SandingPanel({ bows, onSand }: SandingPanelProps) {
  const stripped = bows.filter(({ stage }) => stage === 'strip-sand');
  const shown = stripped.length === 0 ? bows : stripped;
  return (
    <Panel
      title="Sanding"
      actions={
        onSand === undefined || bows.length === 0 ? null : (
          <Button variant="default" onClick={onSand}>
            Record sanding
          </Button>
        )
      }
    >
      {shown.length === 0 ? (
        <EmptyNote title="No bow is being sanded">
          Bows in Strip & sand and in Finish show here with their last grits.
        </EmptyNote>
      ) : (
        <ul className={classes.list}>
          {shown.map(({ orderId, number, customerName, lastGrits }) => (
            <li key={orderId} className={classes.item}>
              <span className={classes.head}>
                <Link href={`/orders/${orderId}?open=finish`} className={classes.strong ?? ''}>
                  {number}
                </Link>
                <span>{customerName}</span>
              </span>
              <LastGrits lastGrits={lastGrits} />
            </li>
          ))}
        </ul>
      )}
    </Panel>
  );
}

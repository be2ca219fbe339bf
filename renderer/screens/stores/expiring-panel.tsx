import { Link } from 'wouter';
import type { ExpiringLot } from '../../../shared/contract/stores.ts';
import { quantityText } from '../../../shared/stores.ts';
import { dayText, fullDay } from '../../parts/days.ts';
import { Fold } from '../../parts/fold.tsx';
import { Mark } from '../../parts/mark.tsx';
import { Panel } from '../../parts/panel.tsx';
import classes from './stores.module.css';

const shownFirst = 5;

function Line({ lot }: { lot: ExpiringLot }) {
  return (
    <li>
      <Link href={`/stores/${lot.consumableId}`} className={classes.row ?? ''}>
        <span>
          <span className={classes.name}>{lot.name}</span>{' '}
          <span className={classes.line}>Lot {lot.lotName}</span>
        </span>{' '}
        <span className={classes.amount}>{quantityText(lot.onHand, lot.unit)}</span>{' '}
        {lot.expired ? (
          <Mark kind="stop">Expired {fullDay(lot.lastDay)}: set it aside</Mark>
        ) : (
          <Mark kind="attention">Use by {dayText(lot.lastDay)}</Mark>
        )}
      </Link>
    </li>
  );
}

/** Lots on the shelf that have expired or soon will, soonest first. */
export function ExpiringPanel({ lots }: { lots: readonly ExpiringLot[] }) {
  if (lots.length === 0) return null;
  const rest = lots.slice(shownFirst);
  return (
    <Panel title="Expired or soon">
      <ul className={classes.rows}>
        {lots.slice(0, shownFirst).map((lot) => (
          <Line key={lot.lotId} lot={lot} />
        ))}
      </ul>
      {rest.length === 0 ? null : (
        <Fold title={`${rest.length} more`}>
          <ul className={classes.rows}>
            {rest.map((lot) => (
              <Line key={lot.lotId} lot={lot} />
            ))}
          </ul>
        </Fold>
      )}
    </Panel>
  );
}

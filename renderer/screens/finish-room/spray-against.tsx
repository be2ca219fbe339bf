import { Link } from 'wouter';
import type { OrderMissing } from '../../../shared/contract/finish.ts';
import type { MissingItem } from '../../../shared/gates.ts';
import { Mark } from '../../parts/mark.tsx';
import { placeToFix } from '../board/place-to-fix.ts';
import classes from './finish-room.module.css';

interface SprayAgainstProps {
  session: readonly MissingItem[];
  orders: readonly OrderMissing[];
}

const barred = ({ override }: MissingItem) =>
  override === 'never' ? ' Nobody may let this pass.' : '';

/** What stands against a session: of the cup and the room, then of each bow, with the way to mend it. */
export function SprayAgainst({ session, orders }: SprayAgainstProps) {
  const missing = orders.filter((order) => order.missing.length > 0);
  if (session.length === 0 && missing.length === 0) return null;
  return (
    <div className={classes.against} role="alert">
      <p>
        <Mark kind="stop">No coat like this:</Mark>
      </p>
      {session.map((item) => (
        <p key={item.item}>
          {item.sentence}
          {barred(item)}
        </p>
      ))}
      {missing.map(({ orderId, number, missing: items }) =>
        items.map((item) => (
          <p key={`${orderId} ${item.item} ${item.sentence}`} className={classes.row}>
            <Link href={placeToFix(orderId, item)} className={classes.way ?? ''}>
              {number}
            </Link>
            <span>
              {item.sentence}
              {barred(item)}
            </span>
          </p>
        )),
      )}
    </div>
  );
}

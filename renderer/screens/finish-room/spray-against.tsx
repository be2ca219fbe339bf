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

const sentenceOf = ({ sentence, override }: MissingItem) =>
  override === 'never' ? `${sentence} Nobody may let this pass.` : sentence;

/** Each sentence once, with the bows it is about. */
const bySentence = (orders: readonly OrderMissing[]) =>
  Map.groupBy(
    orders.flatMap(({ orderId, number, missing }) =>
      missing.map((item) => ({ orderId, number, item })),
    ),
    ({ item }) => sentenceOf(item),
  );

/** What stands against a session: of the cup and the room, then of bows, with the way to mend it. */
export function SprayAgainst({ session, orders }: SprayAgainstProps) {
  const ofBows = [...bySentence(orders)];
  if (session.length === 0 && ofBows.length === 0) return null;
  return (
    <div className={classes.against} role="alert">
      <p>
        <Mark kind="stop">No coat like this:</Mark>
      </p>
      {session.map((item) => (
        <p key={item.item}>{sentenceOf(item)}</p>
      ))}
      {ofBows.map(([sentence, bows]) => (
        <div key={sentence}>
          <p>{sentence}</p>
          <span className={classes.ways}>
            {bows.map(({ orderId, number, item }) => (
              <Link
                key={`${orderId} ${item.item}`}
                href={placeToFix(orderId, item)}
                className={classes.way ?? ''}
              >
                {number}
              </Link>
            ))}
          </span>
        </div>
      ))}
    </div>
  );
}

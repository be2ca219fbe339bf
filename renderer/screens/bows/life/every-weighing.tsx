import type { LifeWeight } from '../../../../shared/contract/bow-life.ts';
import { fullDay } from '../../../parts/days.ts';
import { Fold } from '../../../parts/fold.tsx';
import classes from './life.module.css';
import { type WeightGroup, weightGroups } from './weight-groups.ts';

/** Every weighing that stands, in order, only beside those it can be compared with. */
export function EveryWeighing({ weights }: { weights: readonly LifeWeight[] }) {
  return weightGroups(weights).map((group, index) => (
    <Fold
      key={group.title}
      title={`Weighed ${group.title}`}
      said={spanOf(group)}
      startsOpen={index === 0}
    >
      <ol className={classes.weights}>
        {group.weights.map(({ weight, share }) => (
          <li key={weight.readingId} className={classes.weight}>
            <span>{fullDay(weight.on)}</span>
            <span
              className={classes.bar}
              style={{ width: `${Math.round(share * 100)}%` }}
              aria-hidden="true"
            />
            <span>
              <strong>{weight.text}</strong>{' '}
              <span className={classes.quiet}>
                {weight.phase}, {weight.orderNumber}
              </span>
            </span>
          </li>
        ))}
      </ol>
    </Fold>
  ));
}

/** First and last of a group, for its folded line. */
function spanOf({ weights }: WeightGroup): string {
  const first = weights.at(0)?.weight.text ?? '';
  const last = weights.at(-1)?.weight.text ?? '';
  return first === last ? first : `${first} to ${last}`;
}

import type { LifeWeight } from '../../../../shared/contract/bow-life.ts';
import { fullDay } from '../../../parts/days.ts';
import classes from './life.module.css';
import { weightGroups } from './weight-groups.ts';

/** Every weighing that stands, in order, only beside those it can be compared with. */
export function EveryWeighing({ weights }: { weights: readonly LifeWeight[] }) {
  return weightGroups(weights).map((group) => (
    <section key={group.title} className={classes.group}>
      <h3 className={classes.title}>Weighed {group.title}</h3>
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
    </section>
  ));
}

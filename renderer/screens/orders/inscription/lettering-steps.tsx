import { Button } from '@mantine/core';
import type { EntryItem } from '../../../../shared/entries.ts';
import { momentText } from '../../../parts/days.ts';
import { Mark } from '../../../parts/mark.tsx';
import { useOrder } from '../order-screen.tsx';
import classes from './inscription.module.css';

const steps = [
  { item: 'lettering-applied', todo: 'Record lettering applied', not: 'not yet' },
  {
    item: 'lettering-dry',
    todo: 'Record lettering dry',
    not: 'not noted yet; the first clear coat waits for it',
  },
] as const satisfies { item: EntryItem; todo: string; not: string }[];

/** Applied and dry; both are entries of the bench log, behind the gates of lettering and clear coat. */
export function LetteringSteps() {
  const { order, open } = useOrder();
  return (
    <ul className={classes.steps} aria-label="Lettering applied and dry">
      {steps.map(({ item, todo, not }) => {
        const done = order.entries
          .filter((entry) => entry.item === item && entry.struckReason === null)
          .toSorted((a, b) => b.recordedAt.localeCompare(a.recordedAt))[0];
        const name = item === 'lettering-applied' ? 'Applied' : 'Dry';
        const isDone = done?.outcome === 'ok';
        return (
          <li key={item}>
            {isDone ? (
              <Mark kind="done">
                {name}: {momentText(done.recordedAt)}, {done.personName}
              </Mark>
            ) : (
              <span>
                {name}: {not}
              </span>
            )}
            {isDone ? null : (
              <Button variant="default" onClick={() => open('bench-log', item)}>
                {todo}
              </Button>
            )}
          </li>
        );
      })}
    </ul>
  );
}

import { Button } from '@mantine/core';
import { useRef, useState } from 'react';
import type { TodayGroup as Group, TodayItem } from '../../../shared/contract/today.ts';
import { Mark } from '../../parts/mark.tsx';
import { keyOf } from './place.ts';
import classes from './today.module.css';
import { TodayRow } from './today-row.tsx';
import { groupTitles } from './words.ts';

/** More than these would push the next group off the first screen. */
const firstShown = { late: 6, today: 12, waiting: 6, soon: 6, stores: 6, ready: 6 } as const;

export const anchorOf = (group: Group) => `today-${group}`;

interface TodayGroupProps {
  group: Group;
  items: readonly TodayItem[];
}

export function TodayGroup({ group, items }: TodayGroupProps) {
  const [isLong, setLong] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  const title = groupTitles[group];
  const shown = isLong ? items : items.slice(0, firstShown[group]);
  return (
    <section className={classes.group} aria-labelledby={anchorOf(group)}>
      <h2 className={classes.heading} id={anchorOf(group)} tabIndex={-1} ref={heading}>
        {group === 'late' ? <Mark kind="attention">{title}</Mark> : title}{' '}
        <span className={classes.count}>{items.length}</span>
      </h2>
      {items.length === 0 ? <p className={classes.quiet}>Nothing is due today.</p> : null}
      <ul className={classes.list}>
        {shown.map((item) => (
          <TodayRow key={keyOf(item)} item={item} onDone={() => heading.current?.focus()} />
        ))}
      </ul>
      {items.length > shown.length ? (
        <Button variant="default" mt="xs" onClick={() => setLong(true)}>
          Show all {items.length}
        </Button>
      ) : null}
    </section>
  );
}

import { Button, Kbd } from '@mantine/core';
import { useSessionStorage } from '@mantine/hooks';
import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Link } from 'wouter';
import { type TodayItem, todayGroups } from '../../../shared/contract/today.ts';
import { orpc } from '../../api/client.ts';
import { useWho } from '../../api/who.ts';
import { longDay } from '../../parts/days.ts';
import { BusyNote, EmptyNote, ErrorNote } from '../../parts/notes.tsx';
import { Page } from '../../parts/page.tsx';
import { AddTask } from './add-task.tsx';
import { everything, fits, hides, type TodayFilter } from './filter.ts';
import classes from './today.module.css';
import { TodayFilters } from './today-filters.tsx';
import { anchorOf, TodayGroup } from './today-group.tsx';
import { useAddKey } from './use-add-key.ts';
import { useDay } from './use-day.ts';
import { groupTitles } from './words.ts';

/** A scale runs out of its day without anything being written down. */
const readAgainMs = 5 * 60_000;

/** What needs somebody, across all orders: what the shop looks at first. */
export function TodayScreen() {
  const day = useDay();
  const [adding, setAdding] = useState(0);
  const [asked, setAsked] = useState(0);
  const add = () => {
    setAsked(asked + 1);
    setAdding(asked + 1);
  };
  useAddKey(add);
  const list = useQuery({
    ...orpc.today.get.queryOptions({ input: { day } }),
    placeholderData: keepPreviousData,
    refetchInterval: readAgainMs,
  });
  return (
    <Page
      title="Today"
      actions={
        <>
          <span className={classes.day}>{longDay(day)}</span>
          <Button
            variant="default"
            onClick={add}
            rightSection={
              <Kbd visibleFrom="sm" aria-hidden="true">
                n
              </Kbd>
            }
          >
            Add a task
          </Button>
        </>
      }
    >
      {adding === 0 ? null : <AddTask day={day} times={adding} onClose={() => setAdding(0)} />}
      {list.error === null ? null : (
        <ErrorNote error={list.error} onAgain={() => void list.refetch()} busy={list.isFetching} />
      )}
      {list.data === undefined && list.error === null ? <BusyNote /> : null}
      {list.data === undefined ? null : (
        <Body items={list.data.items} ordersInWork={list.data.ordersInWork} />
      )}
    </Page>
  );
}

function Nothing({ ordersInWork }: { ordersInWork: number }) {
  const isBench = useWho()?.role === 'bench';
  if (ordersInWork > 0) {
    return (
      <EmptyNote title="Nothing is due and nobody is waited for">
        <p>
          Look at <Link href="/board">the board</Link>: what stands there may go on.
        </p>
      </EmptyNote>
    );
  }
  return (
    <EmptyNote title="No orders in work">
      <p>
        {isBench ? (
          'The office takes in the first request.'
        ) : (
          <>
            <Link href="/intake">Take in a request</Link>: a call, a letter, or a box on the table.
          </>
        )}
      </p>
    </EmptyNote>
  );
}

function Body({ items, ordersInWork }: { items: readonly TodayItem[]; ordersInWork: number }) {
  const [filter, setFilter] = useSessionStorage<TodayFilter>({
    key: 'tillermark-today-filter',
    defaultValue: everything,
    getInitialValueInEffect: false,
  });
  if (items.length === 0) return <Nothing ordersInWork={ordersInWork} />;
  const shown = items.filter((item) => fits(item, filter));
  return (
    <>
      <TodayFilters filter={filter} onChange={setFilter} />
      {shown.length === 0 && hides(filter) ? (
        <EmptyNote title="Nothing fits the filter">
          <Button variant="default" onClick={() => setFilter(everything)}>
            Clear the filter
          </Button>
        </EmptyNote>
      ) : (
        <Groups items={shown} />
      )}
    </>
  );
}

function Groups({ items }: { items: readonly TodayItem[] }) {
  const of = Map.groupBy(items, ({ group }) => group);
  const used = todayGroups.filter((group) => group === 'today' || of.has(group));
  const isDue = (group: (typeof todayGroups)[number]) => group === 'late' || group === 'today';
  const column = (groups: typeof used) => (
    <div className={classes.column}>
      {groups.map((group) => (
        <TodayGroup key={group} group={group} items={of.get(group) ?? []} />
      ))}
    </div>
  );
  return (
    <>
      <nav className={classes.counts} aria-label="Parts of the list">
        {used.map((group) => (
          <a key={group} href={`#${anchorOf(group)}`}>
            {groupTitles[group]} <strong>{of.get(group)?.length ?? 0}</strong>
          </a>
        ))}
      </nav>
      <div className={classes.columns}>
        {column(used.filter(isDue))}
        {used.some((group) => !isDue(group)) ? column(used.filter((group) => !isDue(group))) : null}
      </div>
    </>
  );
}
